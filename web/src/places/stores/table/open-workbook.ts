import { folderLimits } from '@loopwright/plant';
import { type ArchiveEntry, archiveEntries, unpacked } from '@loopwright/records/archive';
import { strFromU8, zipSync } from 'fflate';
import { FileRefused } from './file-fault.ts';

/** What a workbook may measure; looked at before anything is unpacked. */
export const workbookLimits = {
  files: 1000,
  /** Unpacked, all files together [bytes]. */
  total_bytes: 100 * 2 ** 20,
  /** Unpacked to packed. A long sheet of rows that are alike packs to a twentieth. */
  ratio: 150,
  /** Below this size [bytes] a steep ratio does no harm. */
  steepFrom_bytes: 2 ** 20,
  rows: folderLimits.rows + 1,
  columns: folderLimits.columns,
  /** The reader sets aside a place for every cell up to the last, also for empty ones. */
  cells: 4_000_000,
} as const;

/**
 * Unpacks a workbook within limits and packs its parts anew, uncompressed: whoever reads it gets only what was looked at.
 *
 * @param bytes - of an `.xlsx` file
 * @throws FileRefused
 */
export function openWorkbook(bytes: Uint8Array): Uint8Array<ArrayBuffer> {
  const entries = entriesOf(bytes);
  checkSizes(entries);
  const parts = new Map(
    entries.filter(({ name }) => /\.xml(\.rels)?$/.test(name)).map((entry) => [entry.name, part(bytes, entry)]),
  );
  if (!parts.has('xl/workbook.xml')) throw new FileRefused('no-workbook');
  for (const content of parts.values()) checkReach(strFromU8(content));
  return Uint8Array.from(zipSync(Object.fromEntries(parts), { level: 0 }));
}

function entriesOf(bytes: Uint8Array): readonly ArchiveEntry[] {
  try {
    return archiveEntries(bytes);
  } catch {
    throw new FileRefused('no-workbook');
  }
}

function part(bytes: Uint8Array, entry: ArchiveEntry): Uint8Array {
  try {
    return unpacked(bytes, entry);
  } catch {
    throw new FileRefused('no-workbook');
  }
}

function checkSizes(entries: readonly ArchiveEntry[]): void {
  const { files, total_bytes, ratio, steepFrom_bytes } = workbookLimits;
  if (entries.length > files) throw new FileRefused('many-files', { value: entries.length, max: files });
  const total = entries.reduce((sum, entry) => sum + entry.size_bytes, 0);
  if (total > total_bytes) {
    throw new FileRefused('unpacks-large', { value: Math.ceil(total / 2 ** 20), max: total_bytes / 2 ** 20 });
  }
  const isSteep = ({ size_bytes, packed_bytes }: ArchiveEntry) =>
    size_bytes > steepFrom_bytes && size_bytes > ratio * packed_bytes;
  if (entries.some(isSteep)) throw new FileRefused('steep', { max: ratio });
  if (new Set(entries.map(({ name }) => name)).size !== entries.length) throw new FileRefused('no-workbook');
}

// One lone cell far out makes the reader set aside every place up to it.
const placed = /<(?:[\w.-]+:)?(?:c|row)\s[^>]*?\br\s*=\s*(?:"([^"]*)"|'([^']*)')/g;
const address = /^\s*([A-Z]{0,3})([1-9]\d{0,6})\s*$/;

function checkReach(xml: string): void {
  const { rows, columns, cells } = workbookLimits;
  let [lastRow, lastColumn] = [0, 0];
  for (const [, double, single] of xml.matchAll(placed)) {
    const [, letters = '', digits] = address.exec(double ?? single ?? '') ?? [];
    if (digits === undefined) throw new FileRefused('no-workbook');
    lastRow = Math.max(lastRow, Number(digits));
    lastColumn = Math.max(lastColumn, columnNumber(letters));
  }
  if (lastRow > rows) throw new FileRefused('many-rows', { value: lastRow, max: rows });
  if (lastColumn > columns) throw new FileRefused('many-columns', { value: lastColumn, max: columns });
  if (lastRow * lastColumn > cells) throw new FileRefused('many-cells', { value: lastRow * lastColumn, max: cells });
}

/** A is 1, Z is 26, AA is 27. */
function columnNumber(letters: string): number {
  return [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0);
}
