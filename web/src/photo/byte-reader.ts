/** Whole numbers out of the bytes of a file; beyond its end there are only zeros. */
export interface ByteReader {
  readonly length: number;
  /** Big end first. */
  u8(at: number): number;
  u16(at: number): number;
  u32(at: number): number;
  /** Little end first. */
  u16le(at: number): number;
  u24le(at: number): number;
  u32le(at: number): number;
  /** Four letters, as most forms name their parts. */
  name(at: number): string;
}

export function byteReader(bytes: Uint8Array): ByteReader {
  const u8 = (at: number) => bytes[at] ?? 0;
  const u16 = (at: number) => u8(at) * 0x100 + u8(at + 1);
  const u16le = (at: number) => u8(at) + u8(at + 1) * 0x100;
  const u24le = (at: number) => u16le(at) + u8(at + 2) * 0x10000;
  return {
    length: bytes.length,
    u8,
    u16,
    u32: (at) => u16(at) * 0x10000 + u16(at + 2),
    u16le,
    u24le,
    u32le: (at) => u24le(at) + u8(at + 3) * 0x1000000,
    name: (at) => String.fromCharCode(u8(at), u8(at + 1), u8(at + 2), u8(at + 3)),
  };
}
