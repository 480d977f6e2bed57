import type { Line, Plant, Pulley, Survey } from '@loopwright/plant';
import type { UnitSystem } from '@loopwright/words';
import { type Entries, type Entry, keptEntries, newEntries, type PlainThing } from '../../../form/entries.ts';
import { formFields } from '../../../form/form-field.ts';
import { takeUpFields } from './geometry-fields.ts';

/** How somebody says where the pulleys are. */
export type Way = 'survey' | 'coordinates';

/** One row of the table of pulleys; its key is the pulley's id. */
export interface PulleyRow {
  readonly key: string;
  readonly entries: Entries;
}

/** Everything that stands in the editor of one line. Plain data: it is kept as a draft. */
export interface Geometry {
  readonly way: Way;
  readonly survey: Entries;
  readonly takeUp: Entries;
  readonly rows: readonly PulleyRow[];
}

/** What the plant knows of how the belt of a line runs. */
export interface KnownGeometry {
  readonly line: Line;
  readonly survey: Survey | undefined;
  /** In travel order. */
  readonly pulleys: readonly Pulley[];
}

export function knownGeometry(plant: Plant, line: Line): KnownGeometry {
  const ofLine = <T extends { readonly line: string }>(things: Readonly<Record<string, T>>) =>
    Object.values(things).filter((thing) => thing.line === line.id);
  const surveys = ofLine(plant.surveys).sort((a, b) => (a.id < b.id ? -1 : 1));
  return { line, survey: surveys.at(-1), pulleys: ofLine(plant.pulleys).sort((a, b) => a.order - b.order) };
}

/** Whether anybody has said how the belt runs. */
export function isMeasured({ survey, pulleys }: KnownGeometry): boolean {
  return survey !== undefined || pulleys.length > 0;
}

/** The editor as it opens: what the plant knows, untouched. */
export function openedGeometry(plant: Plant, known: KnownGeometry, units: UnitSystem): Geometry {
  const { line, survey, pulleys } = known;
  const fields = formFields('surveys');
  const proposed = { id: freeSurveyId(plant, line.id), line: line.id, source: 'measured' };
  return {
    way: pulleys.length > 0 ? 'coordinates' : 'survey',
    survey:
      survey === undefined
        ? newEntries('surveys', fields, proposed, units)
        : keptEntries('surveys', fields, survey, units),
    takeUp: keptEntries('lines', Object.values(takeUpFields), takeUpOriginal(line), units),
    rows: pulleys.map((pulley) => keptRow(pulley, units)),
  };
}

/** The take-up of a line as the editor asks for it: its travel from where it stands. */
export function takeUpOriginal(line: Line): PlainThing {
  const isKnown = line.takeUpStroke_m > 0;
  return {
    takeUpKind: line.takeUpKind,
    ...(isKnown ? { takeUpBack: line.takeUpReference_m, takeUpOn: line.takeUpStroke_m - line.takeUpReference_m } : {}),
    ...(line.takeUpForce_N === undefined ? {} : { takeUpForce_N: line.takeUpForce_N }),
  };
}

function freeSurveyId(plant: Plant, line: string): string {
  const name = (number: number) => `${line}.survey${number === 1 ? '' : `-${number}`}`.slice(-40);
  let number = 1;
  while (Object.hasOwn(plant.surveys, name(number))) number += 1;
  return name(number);
}

export function keptRow(pulley: Pulley, units: UnitSystem): PulleyRow {
  return { key: pulley.id, entries: keptEntries('pulleys', formFields('pulleys'), pulley, units) };
}

/** A row for a pulley that is not in the plant yet; `proposed` are its known values, in SI. */
export function newRow(id: string, line: string, proposed: PlainThing, units: UnitSystem): PulleyRow {
  const thing = { source: 'measured', turn: 'left', ...proposed, id, line };
  return { key: id, entries: newEntries('pulleys', formFields('pulleys'), thing, units) };
}

/** An id for the next pulley that no pulley of the plant and no row has. */
export function freePulleyId(plant: Plant, line: string, rows: readonly { readonly key: string }[]): string {
  const taken = (id: string) => Object.hasOwn(plant.pulleys, id) || rows.some((row) => row.key === id);
  const name = (number: number) => `${line.slice(0, 34)}.p${number}`;
  let number = 1;
  while (taken(name(number))) number += 1;
  return name(number);
}

/** The rows with the one at `from` moved by so many places. */
export function movedRow(rows: readonly PulleyRow[], from: number, by: number): readonly PulleyRow[] {
  const row = rows[from];
  if (row === undefined || from + by < 0 || from + by >= rows.length) return rows;
  const others = rows.toSpliced(from, 1);
  return others.toSpliced(from + by, 0, row);
}

/** The rows with one entry of one of them changed. */
export function changedRow(rows: readonly PulleyRow[], key: string, field: string, entry: Entry): readonly PulleyRow[] {
  return rows.map((row) => (row.key === key ? { ...row, entries: { ...row.entries, [field]: entry } } : row));
}
