import { checkPlant, type PlantProblem } from '../check/check-plant.ts';
import { byId, kinds } from '../empty-plant.ts';
import { type Kind, type Plant, thingSchemas } from '../plant.ts';
import type { PlantDefinition } from '../plant-definition.ts';
import { capped } from './capped.ts';
import { checkReferences } from './check-references.ts';
import { keptWhereSilent } from './kept-where-silent.ts';
import type { FolderNote, FolderProblem } from './problem.ts';
import { type Findings, type ReadFile, readSource, tableIn } from './read-file.ts';
import { tableOfCells } from './table.ts';

/** A table of one kind of thing: the bytes of a CSV file, or the cells of a workbook's sheet. */
export type TableSource = { readonly file: string } & (
  | { readonly bytes: Uint8Array }
  | { readonly cells: readonly (readonly string[])[] }
);

/**
 * What a table would change in a plant. With any error in it there are no definitions: nothing is half taken.
 *
 * A problem of a thing that does not stand in the table has that thing's kind for its file, and its id in `data`.
 */
export interface PlantTableReading {
  readonly rows: number;
  readonly added: readonly string[];
  readonly changed: readonly string[];
  readonly unchanged: number;
  readonly definitions: readonly PlantDefinition[];
  readonly problems: readonly FolderProblem[];
  readonly notes: readonly FolderNote[];
}

type Thing = { readonly id: string } & Readonly<Record<string, unknown>>;

/**
 * Reads a table of one kind against a plant: new things are added, known ones changed, none is removed. What the table
 * has no column for stays as it is. References may lead to things of the plant or of the table.
 *
 * @param kind - what the rows are
 * @param source - the table, with the name by which problems call it
 * @param plant - as it stands
 */
export function readPlantTable(kind: Kind, source: TableSource, plant: Plant): PlantTableReading {
  const findings: Findings = { problems: [], notes: [] };
  const { file } = source;
  const table = () => ('cells' in source ? tableOfCells(source.cells) : tableIn(source.bytes, { file, findings }));
  const read = readSource({ file, table, isPulleys: kind === 'pulleys' }, thingSchemas[kind], findings);
  const problems = [...findings.problems, ...checkReferences(besidePlant(kind, read, plant), kind)];
  const known: Readonly<Record<string, Thing>> = plant[kind];
  const things = read.rows.flatMap(({ thing }) => {
    if (thing === undefined) return [];
    const before = Object.hasOwn(known, thing.id) ? known[thing.id] : undefined;
    return [{ before, after: keptWhereSilent(thing as Thing, before, { kind, told: new Set(read.headings.keys()) }) }];
  });
  const touched = things.filter(({ before, after }) => before !== after);
  const would = { ...plant, [kind]: byId([...Object.values(known), ...touched.map(({ after }) => after)]) } as Plant;
  const complete = read.complete && problems.length === 0;
  if (complete)
    problems.push(
      ...crossProblems({ kind, read, touched: new Set(touched.map(({ after }) => after.id)) }, plant, would),
    );
  const isRefused = problems.some(({ level }) => level === 'error');
  // The second of two rows with one id is among the problems.
  const idsOf = (rows: typeof touched) => [...new Set(rows.map(({ after }) => after.id))];
  return {
    rows: read.rows.length,
    added: idsOf(touched.filter(({ before }) => before === undefined)),
    changed: idsOf(touched.filter(({ before }) => before !== undefined)),
    unchanged: things.length - touched.length,
    definitions: isRefused ? [] : touched.map(({ after }) => definitionOf(kind, after)),
    problems: capped(problems),
    notes: findings.notes,
  };
}

// The row met the schema of its kind.
const definitionOf = (kind: Kind, thing: Thing) => ({ kind, thing }) as unknown as PlantDefinition;

/** The table beside what the plant has, which is what its rows may refer to. */
function besidePlant(kind: Kind, read: ReadFile, plant: Plant): ReadonlyMap<Kind, ReadFile> {
  const others = kinds.map((other): [Kind, ReadFile] => {
    const rows = Object.values(plant[other]).map((thing) => ({ row: 0, raw: thing }));
    return [other, { file: other, there: true, complete: true, rows, headings: new Map() }];
  });
  return new Map([...others, [kind, read]]);
}

interface TableInPlant {
  readonly kind: Kind;
  readonly read: ReadFile;
  /** Ids of the things that are new or changed. */
  readonly touched: ReadonlySet<string>;
}

const nameOf = ({ code, kind, id, field }: PlantProblem) => JSON.stringify([code, kind, id, field ?? '']);

/** What is wrong between things: all of the touched ones, and what is new in others. Only what is new stops. */
function crossProblems(table: TableInPlant, before: Plant, after: Plant): FolderProblem[] {
  const { kind, read, touched } = table;
  if (touched.size === 0) return [];
  const old = new Set(checkPlant(before).map(nameOf));
  const rows = new Map(read.rows.map(({ row, thing }) => [thing?.id, row]));
  return checkPlant(after).flatMap((problem): FolderProblem[] => {
    const { kind: of, id, field, level, ...rest } = problem;
    const isOwn = of === kind && touched.has(id);
    const isNew = !old.has(nameOf(problem));
    if (!isOwn && !isNew) return [];
    const row = of === kind ? rows.get(id) : undefined;
    const where = row === undefined ? { file: of } : { file: read.file, row };
    const column =
      field === undefined ? {} : { field: (row === undefined ? undefined : read.headings.get(field)) ?? field };
    return [{ ...where, ...column, ...rest, level: isNew ? level : 'care', data: { id, ...rest.data } }];
  });
}
