import { prepareZXingModule, type ReaderOptions, readBarcodes } from 'zxing-wasm/reader';
import wasmAddress from 'zxing-wasm/reader/zxing_reader.wasm?url';

// From this page's own server, and kept on the device with its other files.
prepareZXingModule({ overrides: { locateFile: () => wasmAddress } });

const every: ReaderOptions = { formats: ['QRCode'], maxNumberOfSymbols: 4 };
/** A frame of the camera is followed by the next one: speed before thoroughness. */
const quick: ReaderOptions = { ...every, tryRotate: false, tryInvert: false };

/** The texts of all QR codes in a frame of the camera. */
export async function codesInFrame(frame: ImageData): Promise<readonly string[]> {
  return (await readBarcodes(frame, quick)).map(({ text }) => text);
}

/** The texts of all QR codes in a photo, looked at more thoroughly. */
export async function codesInPhoto(photo: ImageData): Promise<readonly string[]> {
  return (await readBarcodes(photo, every)).map(({ text }) => text);
}
