import { byteReader } from './byte-reader.ts';
import { segments, startOfScan } from './jpeg-header.ts';

/** APP1 to APP15 and comments: whatever a program puts beside a picture. APP0 says only that it is a JPEG. */
const isBeside = (marker: number) => (marker > 0xe0 && marker <= 0xef) || marker === 0xfe;

/**
 * A JPEG with nothing in it but the picture. A browser writes none of what it was given, but a colour profile of its own.
 *
 * @param bytes - a whole JPEG
 * @source ITU-T T.81 B.2.4
 */
export function bareJpeg(bytes: Uint8Array<ArrayBuffer>): Uint8Array<ArrayBuffer> {
  const file = byteReader(bytes);
  const parts: Uint8Array<ArrayBuffer>[] = [];
  let from = 0;
  for (const { marker, at } of segments(bytes, file)) {
    if (marker === startOfScan) break;
    if (!isBeside(marker)) continue;
    parts.push(bytes.subarray(from, at));
    from = at + 2 + file.u16(at + 2);
  }
  parts.push(bytes.subarray(from));
  return joined(parts);
}

function joined(parts: readonly Uint8Array[]): Uint8Array<ArrayBuffer> {
  const whole = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}
