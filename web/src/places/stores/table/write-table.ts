import { type CellValue, plantTableCells, writePlantTable } from '@loopwright/plant';
import writeXlsxFile from 'write-excel-file/universal';
import type { TableAsk } from './table-ask.ts';

/** The things of one kind as a file that `readTable` reads. */
export async function writeTable(ask: Extract<TableAsk, { do: 'write' }>): Promise<Blob> {
  const { kind, plant, form, decimal } = ask;
  if (form === 'xlsx') return workbook(plantTableCells(plant, kind), kind);
  const style = decimal === ',' ? ({ delimiter: ';', decimal: ',' } as const) : {};
  // The mark at the start tells a spreadsheet that the letters are UTF-8.
  return new Blob(['\ufeff', writePlantTable(plant, kind, style)], { type: 'text/csv;charset=utf-8' });
}

const widest = 40;

async function workbook(rows: readonly (readonly (CellValue | undefined)[])[], sheet: string): Promise<Blob> {
  const [headings = []] = rows;
  const columns = headings.map((heading) => ({ width: Math.min(widest, String(heading).length + 4) }));
  return writeXlsxFile(
    rows.map((row) => row.map((cell) => cell ?? null)),
    { sheet, columns, stickyRowsCount: 1 },
  ).toBlob();
}
