import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader';
import type { Drawing } from '../../src/page/page.ts';

const wasm = readFileSync(createRequire(import.meta.url).resolve('zxing-wasm/reader/zxing_reader.wasm'));
prepareZXingModule({
  overrides: { wasmBinary: wasm.buffer.slice(wasm.byteOffset, wasm.byteOffset + wasm.byteLength) },
});

/** A grey picture as a portable greymap, which readers of pictures take as a file. */
interface Raster {
  readonly width: number;
  readonly height: number;
  readonly grey: Uint8Array;
}

/** The filled bars of a drawing as a camera would see them: `scale` dots a unit, each dot as dark as it is covered. */
export function rasterOf(drawing: Drawing, scale: number): Raster {
  const [width, height] = [Math.ceil(drawing.width * scale), Math.ceil(drawing.height * scale)];
  const dark = new Float64Array(width * height);
  for (const shape of drawing.shapes) {
    if (shape.shape !== 'path' || shape.fill !== 'ink') continue;
    for (const [, ...numbers] of shape.d.matchAll(/M([\d.]+) ([\d.]+) h([\d.]+) v([\d.]+) h-[\d.]+ Z/g)) {
      const [x = 0, y = 0, w = 0, h = 0] = numbers.map((number) => Number(number) * scale);
      cover(dark, width, { x, y, right: x + w, bottom: y + h });
    }
  }
  return { width, height, grey: Uint8Array.from(dark, (share) => Math.round(255 * (1 - Math.min(1, share)))) };
}

interface Bar {
  readonly x: number;
  readonly y: number;
  readonly right: number;
  readonly bottom: number;
}

function cover(dark: Float64Array, width: number, { x, y, right, bottom }: Bar): void {
  for (let row = Math.floor(y); row < bottom; row += 1) {
    const high = Math.min(row + 1, bottom) - Math.max(row, y);
    for (let column = Math.floor(x); column < right; column += 1) {
      const at = row * width + column;
      dark[at] = (dark[at] ?? 0) + high * (Math.min(column + 1, right) - Math.max(column, x));
    }
  }
}

/** Every QR code in a picture, in no order. The reader is another program: ZXing-C++. */
export async function codesIn(picture: Raster | Uint8Array): Promise<string[]> {
  const file =
    picture instanceof Uint8Array
      ? picture
      : Buffer.concat([Buffer.from(`P5 ${picture.width} ${picture.height} 255\n`), picture.grey]);
  const found = await readBarcodes(new Uint8Array(file), { formats: ['QRCode'], maxNumberOfSymbols: 40 });
  return found.map(({ text }) => text);
}
