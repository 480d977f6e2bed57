import type { Plant, PlantTableReading } from '@loopwright/plant';
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

export type TableAnswer =
  | { readonly is: 'stage'; readonly stage: TableStage }
  | { readonly is: 'read'; readonly reading: PlantTableReading }
  | { readonly is: 'written'; readonly blob: Blob }
  | { readonly is: 'refused'; readonly fault: FileFault };
