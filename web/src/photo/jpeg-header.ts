import type { ByteReader } from './byte-reader.ts';
import type { PictureHeader } from './picture-header.ts';

export const startOfScan = 0xda;
const endOfImage = 0xd9;
/** Frames: C0 to CF without the tables DHT, JPG and DAC among them. */
const isFrame = (marker: number) => marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);
/** Markers that stand alone: TEM, the restarts, the start. */
const isAlone = (marker: number) => marker === 0x01 || (marker >= 0xd0 && marker <= 0xd8);

/** Size and end of a JPEG. What a camera hangs on behind the end of the picture is not looked at. */
export function jpegHeader(bytes: Uint8Array, file: ByteReader): PictureHeader {
  let [width_px, height_px] = [0, 0];
  let ended = false;
  for (const { marker, at } of segments(bytes, file)) {
    if (isFrame(marker)) [height_px, width_px] = [file.u16(at + 5), file.u16(at + 7)];
    ended = marker === endOfImage;
  }
  return { form: 'jpeg', width_px, height_px, moving: false, cut: !ended };
}

interface Segment {
  readonly marker: number;
  /** Where its marker stands. */
  readonly at: number;
}

/** The segments of a JPEG in their order, as far as they follow each other, up to the end of the picture. */
export function* segments(bytes: Uint8Array, file: ByteReader): Generator<Segment> {
  for (let at = 2; at < bytes.length; ) {
    if (file.u8(at) !== 0xff) return;
    const marker = file.u8(at + 1);
    if (marker === 0xff) {
      at += 1;
      continue;
    }
    const isWhole = isAlone(marker) || marker === endOfImage || at + 2 + file.u16(at + 2) <= bytes.length;
    if (!isWhole) return;
    yield { marker, at };
    if (marker === endOfImage) return;
    at = isAlone(marker) ? at + 2 : at + 2 + file.u16(at + 2);
    if (marker === startOfScan) at = endOfScan(bytes, at);
  }
}

/** Where the next marker stands behind a scan; inside of it FF is followed by 00 or by a restart. */
function endOfScan(bytes: Uint8Array, from: number): number {
  for (let at = bytes.indexOf(0xff, from); at >= 0; at = bytes.indexOf(0xff, at + 1)) {
    const next = bytes[at + 1] ?? 0;
    if (next !== 0 && !(next >= 0xd0 && next <= 0xd7)) return at;
  }
  return bytes.length;
}
