/** Reads the advance widths of a TrueType font: tables head, hhea, hmtx and cmap format 4 of ISO/IEC 14496-22. */
export function fontWidths(bytes: Uint8Array): (codePoint: number) => number | undefined {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const tables = new Map<string, number>();
  for (let i = 0; i < view.getUint16(4); i += 1) {
    const entry = 12 + 16 * i;
    tables.set(String.fromCharCode(...bytes.subarray(entry, entry + 4)), view.getUint32(entry + 8));
  }
  const table = (name: string): number => tables.get(name) ?? 0;
  const unitsPerEm = view.getUint16(table('head') + 18);
  const lastMetric = view.getUint16(table('hhea') + 34) - 1;
  const glyphOf = unicodeMap(view, table('cmap'));
  return (codePoint) => {
    const glyph = glyphOf(codePoint);
    if (glyph === 0) return undefined;
    return (1000 * view.getUint16(table('hmtx') + 4 * Math.min(glyph, lastMetric))) / unitsPerEm;
  };
}

function unicodeMap(view: DataView, cmap: number): (codePoint: number) => number {
  let start = 0;
  for (let i = 0; i < view.getUint16(cmap + 2); i += 1) {
    const at = cmap + view.getUint32(cmap + 4 + 8 * i + 4);
    if (view.getUint16(at) === 4) start = at;
  }
  const double = view.getUint16(start + 6);
  const ends = start + 14;
  const starts = ends + double + 2;
  const deltas = starts + double;
  const offsets = deltas + double;
  return (codePoint) => {
    for (let i = 0; i < double; i += 2) {
      if (codePoint > view.getUint16(ends + i)) continue;
      if (codePoint < view.getUint16(starts + i)) return 0;
      const offset = view.getUint16(offsets + i);
      if (offset === 0) return (codePoint + view.getUint16(deltas + i)) & 0xffff;
      return view.getUint16(offsets + i + offset + 2 * (codePoint - view.getUint16(starts + i)));
    }
    return 0;
  };
}
