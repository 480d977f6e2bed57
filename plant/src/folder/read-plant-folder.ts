import { checkPlant, type PlantProblem } from '../check/check-plant.ts';
import { byId, kinds } from '../empty-plant.ts';
import { type Kind, type Plant, plantSchema, thingSchemas } from '../plant.ts';
import { definitionsOf, type PlantDefinition } from '../plant-definition.ts';
import { capped } from './capped.ts';
import { checkReferences } from './check-references.ts';
import { nearest } from './nearest.ts';
import type { FolderNote, FolderProblem } from './problem.ts';
import { type Findings, type ReadFile, readFile } from './read-file.ts';

/** What a plant folder says. With any error in it there are no definitions and no plant: nothing is half imported. */
export interface PlantFolderReading {
  readonly definitions: readonly PlantDefinition[];
  readonly plant?: Plant;
  readonly problems: readonly FolderProblem[];
  readonly notes: readonly FolderNote[];
}

/** The files of a plant folder; only `plant.csv` must be there. */
export const plantFiles: readonly string[] = ['plant.csv', ...kinds.map((kind) => `${kind}.csv`)];

/**
 * Reads a plant folder and finds everything wrong with it at once, within and across its files.
 *
 * @param files - bytes by file name; nothing is read from disk here
 * @returns the definitions and the plant when there is no error; problems and notes in any case
 */
export function readPlantFolder(files: ReadonlyMap<string, Uint8Array>): PlantFolderReading {
  const findings: Findings = { problems: [], notes: unknownFiles(files.keys()) };
  const plantFile = readFile(files, 'plant.csv', plantSchema, findings);
  onePlant(plantFile, findings);
  const read = new Map(kinds.map((kind) => [kind, readFile(files, `${kind}.csv`, thingSchemas[kind], findings)]));
  findings.problems.push(...checkReferences(read));
  const plant = assemble(plantFile, read);
  const missing = new Set(findings.problems.filter((p) => p.code === 'file-missing').map((p) => p.file));
  findings.problems.push(...crossProblems(plant, read, missing));
  const problems = capped(findings.problems);
  const { notes } = findings;
  if (problems.some((problem) => problem.level === 'error')) return { definitions: [], problems, notes };
  return { definitions: definitionsOf(plant), plant, problems, notes };
}

function onePlant(read: ReadFile, findings: Findings): void {
  const { file, there, rows, complete } = read;
  if (!there) findings.problems.push({ file, level: 'error', code: 'file-missing', data: {} });
  else if (rows.length !== 1 && (complete || rows.length > 1)) {
    findings.problems.push({ file, level: 'error', code: 'not-one-row', data: { value: rows.length } });
  }
}

function unknownFiles(names: Iterable<string>): FolderNote[] {
  return [...names]
    .filter((name) => /\.(csv|tsv|txt|xlsx?|ods)$/i.test(name) && !plantFiles.includes(name.toLowerCase()))
    .map((file) => {
      const close = nearest(file.replace(/\.\w+$/, '.csv'), plantFiles);
      return { file, code: 'unknown-file', data: { value: file, ...(close ? { nearest: close } : {}) } };
    });
}

function assemble(plantFile: ReadFile, read: ReadonlyMap<Kind, ReadFile>): Plant {
  const self = plantFile.rows[0]?.thing ?? { id: 'plant', name: '' };
  const things = [...read].map(([kind, { rows }]) => [kind, byId(rows.flatMap((row) => row.thing ?? []))]);
  return { ...self, ...Object.fromEntries(things) } as Plant;
}

/** Cross checks look only at kinds that were read whole: half a line's pulleys would give wrong findings. */
function crossProblems(plant: Plant, read: ReadonlyMap<Kind, ReadFile>, missing: ReadonlySet<string>): FolderProblem[] {
  const complete = new Set(kinds.filter((kind) => read.get(kind)?.complete && !missing.has(`${kind}.csv`)));
  const rows = new Map(
    [...read].map(([kind, { rows }]) => [kind, new Map(rows.map(({ row, thing }) => [thing?.id, row]))]),
  );
  return checkPlant(plant, complete).map((problem) =>
    located(problem, rows.get(problem.kind)?.get(problem.id), read.get(problem.kind)?.headings),
  );
}

function located(
  { kind, id, field, ...rest }: PlantProblem,
  row: number | undefined,
  headings: ReadonlyMap<string, string> | undefined,
): FolderProblem {
  return {
    file: `${kind}.csv`,
    ...(row === undefined ? {} : { row }),
    ...(field === undefined ? {} : { field: headings?.get(field) ?? field }),
    ...rest,
    data: { id, ...rest.data },
  };
}
