import { deflateSync } from 'node:zlib';
import { crc32 } from '../../../../records/src/archive/crc32.ts';

type Rgb = readonly [red: number, green: number, blue: number];

interface JpegSpec {
  readonly width_px: number;
  readonly height_px: number;
  /** Colour of each square of 8 by 8 dots. */
  readonly colourAt: (column: number, row: number) => Rgb;
  /** Segments behind the start of the file, as cameras put them there. */
  readonly beside?: readonly Uint8Array[];
}

/**
 * A baseline JPEG of squares of one colour each, written after ITU-T T.81 with the plainest tables it allows: lengths
 * of the DC differences as 4-bit codes, and “no more” as the only AC code.
 */
export function jpegOf({ width_px, height_px, colourAt, beside = [] }: JpegSpec): Uint8Array {
  const bits = new BitWriter();
  const last = [0, 0, 0];
  for (let row = 0; row < Math.ceil(height_px / 8); row++)
    for (let column = 0; column < Math.ceil(width_px / 8); column++)
      for (const [component, value] of levels(colourAt(column, row)).entries()) {
        writeDifference(bits, value - (last[component] ?? 0));
        last[component] = value;
      }
  const quantization = segment(0xdb, [0, ...Array<number>(64).fill(8)]);
  const dc = segment(0xc4, [
    0x00,
    0,
    0,
    0,
    12,
    ...Array<number>(12).fill(0),
    ...Array.from({ length: 12 }, (_, i) => i),
  ]);
  const ac = segment(0xc4, [0x10, 1, ...Array<number>(15).fill(0), 0x00]);
  const size = [height_px >> 8, height_px & 255, width_px >> 8, width_px & 255];
  const frame = segment(0xc0, [8, ...size, 3, ...[1, 2, 3].flatMap((id) => [id, 0x11, 0])]);
  const scan = segment(0xda, [3, ...[1, 2, 3].flatMap((id) => [id, 0x00]), 0, 63, 0]);
  const head = [Uint8Array.of(0xff, 0xd8), ...beside, quantization, frame, dc, ac, scan];
  return joined([...head, bits.bytes(), Uint8Array.of(0xff, 0xd9)]);
}

/** Luma and colour differences (ITU-R BT.601), as DC steps of 8 around the middle. */
function levels([red, green, blue]: Rgb): readonly number[] {
  const y = 0.299 * red + 0.587 * green + 0.114 * blue;
  return [y - 128, 0.564 * (blue - y), 0.713 * (red - y)].map(Math.round);
}

function writeDifference(bits: BitWriter, difference: number): void {
  const length = difference === 0 ? 0 : Math.floor(Math.log2(Math.abs(difference))) + 1;
  bits.write(length, 4);
  bits.write(difference < 0 ? difference + 2 ** length - 1 : difference, length);
  bits.write(0, 1);
}

class BitWriter {
  #bytes: Uint8Array = new Uint8Array(1 << 16);
  #length = 0;
  #held = 0;
  #count = 0;

  write(value: number, length: number): void {
    for (let bit = length - 1; bit >= 0; bit--) {
      this.#held = (this.#held << 1) | ((value >> bit) & 1);
      this.#count += 1;
      if (this.#count === 8) this.#putByte();
    }
  }

  bytes(): Uint8Array {
    while (this.#count > 0) this.write(1, 1);
    return this.#bytes.slice(0, this.#length);
  }

  #putByte(): void {
    if (this.#length + 2 > this.#bytes.length) {
      const larger = new Uint8Array(2 * this.#bytes.length);
      larger.set(this.#bytes);
      this.#bytes = larger;
    }
    this.#bytes[this.#length++] = this.#held;
    if (this.#held === 0xff) this.#bytes[this.#length++] = 0;
    [this.#held, this.#count] = [0, 0];
  }
}

/** A segment of a JPEG with its length. */
export function segment(marker: number, content: Iterable<number>): Uint8Array {
  const bytes = [...content];
  return Uint8Array.of(0xff, marker, (bytes.length + 2) >> 8, (bytes.length + 2) & 255, ...bytes);
}

export const letters = (text: string) => [...Buffer.from(text, 'latin1')];

/**
 * What a telephone writes in front of a photo (Exif 2.32): its maker, how it was held, and where it was.
 *
 * @param orientation - 1 to 8
 * @param maker - 16 letters
 */
export function exifSegment(orientation: number, maker: string): Uint8Array {
  const tiff = Buffer.alloc(120);
  tiff.write('MM\0*', 0, 'latin1');
  tiff.writeUInt32BE(8, 4);
  tiff.writeUInt16BE(3, 8);
  entry(tiff, 10, [0x010f, 2, 16, 50]);
  entry(tiff, 22, [0x0112, 3, 1, orientation << 16]);
  entry(tiff, 34, [0x8825, 4, 1, 66]);
  tiff.write(maker, 50, 'latin1');
  // The place: latitude N, as degrees, minutes, seconds.
  tiff.writeUInt16BE(2, 66);
  entry(tiff, 68, [0x0001, 2, 2, 0x4e000000]);
  entry(tiff, 80, [0x0002, 5, 3, 96]);
  for (const [i, part] of [54, 1, 58, 1, 30, 1].entries()) tiff.writeUInt32BE(part, 96 + 4 * i);
  return segment(0xe1, [...letters('Exif\0\0'), ...tiff]);
}

function entry(tiff: Buffer, at: number, [tag, type, count, value]: readonly [number, number, number, number]): void {
  tiff.writeUInt16BE(tag, at);
  tiff.writeUInt16BE(type, at + 2);
  tiff.writeUInt32BE(count, at + 4);
  tiff.writeUInt32BE(value, at + 8);
}

/** A PNG of one grey, one bit a dot (W3C PNG): a few kilobytes for any size. */
export function greyPng(width_px: number, height_px: number): Uint8Array {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width_px, 0);
  header.writeUInt32BE(height_px, 4);
  header.set([1, 0, 0, 0, 0], 8);
  const rows = deflateSync(Buffer.alloc((Math.ceil(width_px / 8) + 1) * height_px), { level: 9 });
  return joined([
    Uint8Array.of(0x89, ...letters('PNG\r\n\x1a\n')),
    chunk('IHDR', header),
    chunk('IDAT', rows),
    chunk('IEND', []),
  ]);
}

/** A chunk of a PNG with its length and checksum. */
export function chunk(name: string, content: Iterable<number>): Uint8Array {
  const said = Uint8Array.from([...letters(name), ...content]);
  const bytes = Buffer.alloc(said.length + 8);
  bytes.writeUInt32BE(said.length - 4, 0);
  bytes.set(said, 4);
  bytes.writeUInt32BE(crc32(said), said.length + 4);
  return bytes;
}

/** The beginning of a HEIC file as telephones write it: its brand and the size of its picture, and no picture. */
export function heicHead(width_px: number, height_px: number): Uint8Array {
  const size = Buffer.alloc(20);
  size.writeUInt32BE(20, 0);
  size.write('ispe', 4, 'latin1');
  size.writeUInt32BE(width_px, 12);
  size.writeUInt32BE(height_px, 16);
  return joined([Uint8Array.of(0, 0, 0, 16, ...letters('ftypheic'), 0, 0, 0, 0), size, new Uint8Array(40)]);
}

/** A GIF of two pictures, one dot each (GIF89a). */
export function movingGif(): Uint8Array {
  const picture = [0x2c, 0, 0, 0, 0, 1, 0, 1, 0, 0, 2, 2, 0x44, 1, 0];
  return Uint8Array.from([
    ...letters('GIF89a'),
    1,
    0,
    1,
    0,
    0x80,
    0,
    0,
    0,
    0,
    0,
    255,
    255,
    255,
    ...picture,
    ...picture,
    0x3b,
  ]);
}

export function joined(parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}
