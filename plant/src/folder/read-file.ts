import type * as z from 'zod';
import { id as idSchema } from '../things/field.ts';
import { decode } from './decode.ts';
import { folderLimits } from './limits.ts';
import type { FolderNote, FolderProblem, FolderProblemCode } from './problem.ts';
import { type ReadRow, type ReadThings, readThings } from './read-things.ts';
import { readTable, type Table, type TableRefusal } from './table.ts';

/** What was read of one file; `complete` when every row of it is right, or the file is not there at all. */
export interface ReadFile {
  readonly file: string;
  readonly there: boolean;
  readonly complete: boolean;
  readonly rows: readonly ReadRow<{ readonly id: string }>[];
  readonly headings: ReadonlyMap<string, string>;
}

export interface Findings {
  readonly problems: FolderProblem[];
  readonly notes: FolderNote[];
}

/**
 * Reads one file of a plant folder.
 *
 * @param files - all files of the folder, by name; capitals in names do not matter
 * @param file - the one to read
 * @param schema - what its rows must meet
 * @param findings - takes what is wrong or worth knowing
 */
export function readFile(
  files: ReadonlyMap<string, Uint8Array>,
  file: string,
  schema: z.ZodObject,
  findings: Findings,
): ReadFile {
  const bytes = files.get(file) ?? [...files].find(([name]) => name.toLowerCase() === file)?.[1];
  if (!bytes) return { file, there: false, complete: true, rows: [], headings: new Map() };
  return readSource({ file, table: () => tableIn(bytes, { file, findings }) }, schema, findings);
}

/** Where the rows of one kind come from: a name to call it by, and its table once somebody asks. */
export interface RowSource {
  readonly file: string;
  table(): Table | TableRefusal | FileRefusal;
  /** Pulleys may go without an id of their own. */
  readonly isPulleys?: boolean;
}

/**
 * Reads the rows of one table.
 *
 * @param source - name and table
 * @param schema - what its rows must meet
 * @param findings - takes what is wrong
 */
export function readSource(source: RowSource, schema: z.ZodObject, findings: Findings): ReadFile {
  const { file, isPulleys = file === 'pulleys.csv' } = source;
  const table = source.table();
  if ('code' in table) {
    findings.problems.push({ file, level: 'error', ...table });
    return { file, there: true, complete: false, rows: [], headings: new Map() };
  }
  const read = readThings({ file, schema, table, ...(isPulleys ? { derived: pulleyId } : {}) }) as ReadThings<AnyThing>;
  const twins = duplicateIds(file, read, isPulleys);
  findings.problems.push(...read.problems, ...twins);
  return { file, there: true, complete: read.problems.length + twins.length === 0, ...read };
}

type FileRefusal = { readonly code: FolderProblemCode; readonly data: FolderProblem['data']; readonly row?: number };
type AnyThing = { readonly id: string };

/**
 * The table in the bytes of a CSV file.
 *
 * @param bytes - the file as it is
 * @param told - its name, and what takes the notes about it
 */
export function tableIn(
  bytes: Uint8Array,
  { file, findings }: { readonly file: string; readonly findings: Findings },
): Table | TableRefusal | FileRefusal {
  if (bytes.length > folderLimits.fileSize_bytes) {
    return { code: 'file-too-large', data: { value: bytes.length, max: folderLimits.fileSize_bytes } };
  }
  const decoded = decode(bytes);
  if ('code' in decoded) return decoded;
  if (decoded.assumed) findings.notes.push({ file, code: 'encoding-assumed', data: { value: decoded.assumed } });
  return readTable(decoded.text);
}

/** A pulley is known by its line and its place in it, unless somebody gave it a name. */
const pulleyId = {
  keys: ['id'],
  fill(raw: Record<string, unknown>): void {
    const { line, order } = raw;
    if (raw['id'] === undefined && line !== undefined && order !== undefined) raw['id'] = `${line}.${order}`;
  },
};

/** The second of two rows with one id; pulleys whose id was made from their order are found as such by their order. */
function duplicateIds(file: string, read: ReadThings<AnyThing>, isPulleys: boolean): FolderProblem[] {
  const firstRow = new Map<unknown, number>();
  const field = read.headings.get('id') ?? 'id';
  return read.rows.flatMap(({ row, raw }): FolderProblem[] => {
    const { id } = raw;
    const otherRow = firstRow.get(id);
    if (!idSchema.safeParse(id).success) return [];
    if (otherRow === undefined) {
      firstRow.set(id, row);
      return [];
    }
    const made = isPulleys && id === `${raw['line']}.${raw['order']}`;
    const code = made ? 'duplicate-order' : 'duplicate-id';
    const value = String(made ? raw['order'] : id);
    const about = made ? (read.headings.get('order') ?? 'order') : field;
    return [{ file, row, field: about, level: 'error', code, data: { value, otherRow } }];
  });
}
