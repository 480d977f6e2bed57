import { type PlantTableReading, readPlantTable } from '@loopwright/plant';
import { FileRefused } from './file-fault.ts';
import type { TableAsk, TableStage } from './table-ask.ts';
import { workbookCells } from './workbook-cells.ts';

const startsWith = (bytes: Uint8Array, ...start: readonly number[]) => start.every((byte, at) => bytes[at] === byte);

/**
 * Reads a CSV file or a workbook against a plant.
 *
 * @param ask - the file's bytes, the kind of its rows, the plant
 * @param onStage - hears how far the reading has come
 * @throws FileRefused
 */
export async function readTable(
  ask: Extract<TableAsk, { do: 'read' }>,
  onStage: (stage: TableStage) => void,
): Promise<PlantTableReading> {
  const { kind, plant, file } = ask;
  const bytes = new Uint8Array(ask.bytes);
  // The container of older workbooks, and of those behind a password (Microsoft's compound file, MS-CFB 2.2).
  if (startsWith(bytes, 0xd0, 0xcf, 0x11, 0xe0)) throw new FileRefused('old-workbook');
  const isWorkbook = startsWith(bytes, 0x50, 0x4b);
  if (isWorkbook) onStage('unpacking');
  const source = isWorkbook ? { file, cells: await workbookCells(bytes) } : { file, bytes };
  onStage('checking');
  return readPlantTable(kind, source, plant);
}
