import type { Plant, PlantDefinition, PlantTableReading } from '@loopwright/plant';
import type { FileFault } from './file-fault.ts';
import type { TableKind } from './table-kinds.ts';

/** The two forms of a table. */
export type TableForm = 'csv' | 'xlsx';

/** What the page asks of the worker, which reads and writes tables while the page stays in hand. */
export type TableAsk =
  | {
      readonly do: 'read';
      readonly kind: TableKind;
      readonly plant: Plant;
      /** Name of the file. */
      readonly file: string;
      readonly bytes: ArrayBuffer;
    }
  | {
      readonly do: 'write';
      readonly kind: TableKind;
      readonly plant: Plant;
      readonly form: TableForm;
      /** Which decimal mark the reader's spreadsheet expects in text. */
      readonly decimal: '.' | ',';
    };

/** How far the worker has come. */
export const tableStages = ['opening', 'unpacking', 'checking'] as const;
export type TableStage = (typeof tableStages)[number];

/** What a page shows of a reading. What it would write comes packed: unpacking it would hold up the page. */
export interface TableReading extends Omit<PlantTableReading, 'definitions'> {
  /** How many things would be written. */
  readonly count: number;
  readonly packed: ArrayBuffer;
}

/** What the worker hands over of a reading. */
export function packedReading({ definitions, ...reading }: PlantTableReading): TableReading {
  const { buffer } = new TextEncoder().encode(JSON.stringify(definitions));
  return { ...reading, count: definitions.length, packed: buffer };
}

/** What a reading would write. */
export function definitionsIn({ packed }: TableReading): readonly PlantDefinition[] {
  return JSON.parse(new TextDecoder().decode(packed)) as readonly PlantDefinition[];
}

export type TableAnswer =
  | { readonly is: 'stage'; readonly stage: TableStage }
  | { readonly is: 'read'; readonly reading: TableReading }
  | { readonly is: 'written'; readonly blob: Blob }
  | { readonly is: 'refused'; readonly fault: FileFault };
