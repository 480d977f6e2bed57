import { type Draft, draftName } from '../../../form/draft-store.ts';
import type { Entries, PlainThing } from '../../../form/entries.ts';
import type { Geometry, KnownGeometry, PulleyRow } from './geometry.ts';

/** Under which name the draft of a line's geometry is kept. */
export function geometryDraftName(plant: string, line: string): string {
  return draftName(plant, 'geometry', line);
}

const key = (...parts: readonly string[]) => JSON.stringify(parts);

/** A geometry as a flat draft, beside what the plant knew when it was begun. */
export function draftOf({ way, survey, takeUp, rows }: Geometry, known: KnownGeometry): Draft {
  const under = (entries: Entries, ...parts: readonly string[]) =>
    Object.entries(entries).map(([field, entry]) => [key(...parts, field), entry] as const);
  const entries: Entries = Object.fromEntries([
    [key('way'), { text: way }],
    [key('rows'), { text: JSON.stringify(rows.map((row) => row.key)) }],
    ...under(survey, 'survey'),
    ...under(takeUp, 'takeUp'),
    ...rows.flatMap((row) => under(row.entries, 'row', row.key)),
  ]);
  return { entries, original: { ...known } };
}

/** The geometry that a draft holds; undefined for one that is none. */
export function geometryOf(draft: Draft | undefined): Geometry | undefined {
  const way = draft?.entries[key('way')]?.text;
  if (draft === undefined || (way !== 'survey' && way !== 'coordinates')) return undefined;
  const rows = rowKeys(draft.entries[key('rows')]?.text);
  if (rows === undefined) return undefined;
  const below = (...parts: readonly string[]): Entries => {
    const start = `${key(...parts).slice(0, -1)},`;
    const found = Object.entries(draft.entries).filter(([name]) => name.startsWith(start));
    return Object.fromEntries(found.map(([name, entry]) => [lastPart(name), entry]));
  };
  return {
    way,
    survey: below('survey'),
    takeUp: below('takeUp'),
    rows: rows.map((row): PulleyRow => ({ key: row, entries: below('row', row) })),
  };
}

function rowKeys(text: string | undefined): readonly string[] | undefined {
  try {
    const read: unknown = JSON.parse(text ?? '');
    return Array.isArray(read) && read.every((name) => typeof name === 'string') ? read : undefined;
  } catch {
    return undefined;
  }
}

function lastPart(name: string): string {
  const parts: unknown = JSON.parse(name);
  return Array.isArray(parts) ? String(parts.at(-1)) : '';
}

/** Whether the plant has learned otherwise since the draft was begun. */
export function isOvertaken(original: PlainThing | undefined, known: KnownGeometry): boolean {
  return original !== undefined && JSON.stringify(original) !== JSON.stringify(known);
}
