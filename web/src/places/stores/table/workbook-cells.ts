import { readSheet } from 'read-excel-file/universal';
import { FileRefused } from './file-fault.ts';
import { openWorkbook } from './open-workbook.ts';

type Cell = string | boolean | Date | null;

/**
 * The cells of a workbook's first sheet as text, as a CSV file would have them. A formula gives its last result.
 *
 * @param bytes - of an `.xlsx` file
 * @throws FileRefused
 */
export async function workbookCells(bytes: Uint8Array): Promise<readonly (readonly string[])[]> {
  const { buffer } = openWorkbook(bytes);
  try {
    // Numbers as they stand in the file, to the last digit.
    const rows = await readSheet(buffer, 1, { parseNumber: (digits: string) => digits as unknown as number });
    return rows.map((row) => row.map((cell) => cellText(cell as unknown as Cell)));
  } catch {
    throw new FileRefused('no-workbook');
  }
}

function cellText(cell: Cell): string {
  if (cell === null) return '';
  if (cell instanceof Date) return dayOrMoment(cell);
  return String(cell);
}

/** A sheet counts days, so that a moment comes with a rounding of less than a second. */
function dayOrMoment(date: Date): string {
  if (Number.isNaN(date.getTime())) return '';
  const written = new Date(Math.round(date.getTime() / 1000) * 1000).toISOString();
  return written.endsWith('T00:00:00.000Z') ? written.slice(0, 10) : written.replace('.000Z', 'Z');
}
