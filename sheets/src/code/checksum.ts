/** First letters of every code of this family; the digit is the version of its form. */
export const family = 'LW1';
export const separator = ' ';
/** Crockford's base 32: no letter that can be taken for a digit. */
const alphabet = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
const checkLength = 7;

/** CRC-32 of ISO 3309 (reflected, polynomial 0xEDB88320), as in PNG and zip. */
export function crc32(bytes: Uint8Array): number {
  let crc = 0xffffffff;
  for (const byte of bytes) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit += 1) crc = (crc >>> 1) ^ (crc & 1 ? 0xedb88320 : 0);
  }
  return (crc ^ 0xffffffff) >>> 0;
}

/** All 32 bits, five to a letter, so that every error the CRC detects stays detected. */
export function checksum(text: string): string {
  let rest = BigInt(crc32(utf8(text)));
  let letters = '';
  for (let i = 0; i < checkLength; i += 1) {
    letters = (alphabet[Number(rest & 31n)] ?? '') + letters;
    rest >>= 5n;
  }
  return letters;
}

/** UTF-8 without the platform's encoder, which a pure package does not have. */
function utf8(text: string): Uint8Array {
  const bytes: number[] = [];
  for (const glyph of text) {
    const point = glyph.codePointAt(0) ?? 0;
    if (point < 0x80) bytes.push(point);
    else if (point < 0x800) bytes.push(0xc0 | (point >> 6), 0x80 | (point & 63));
    else if (point < 0x10000) bytes.push(0xe0 | (point >> 12), 0x80 | ((point >> 6) & 63), 0x80 | (point & 63));
    else bytes.push(0xf0 | (point >> 18), 0x80 | ((point >> 12) & 63), 0x80 | ((point >> 6) & 63), 0x80 | (point & 63));
  }
  return Uint8Array.from(bytes);
}

/** Fields of a code with the checksum over them behind. */
export function sealed(fields: readonly string[]): string {
  const body = fields.join(separator);
  return [body, checksum(body)].join(separator);
}
