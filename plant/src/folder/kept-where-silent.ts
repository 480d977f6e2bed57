import { type Kind, thingSchemas } from '../plant.ts';

type Thing = { readonly id: string } & Readonly<Record<string, unknown>>;

interface Telling {
  readonly kind: Kind;
  /** Fields that the table has a column for. */
  readonly told: ReadonlySet<string>;
}

/**
 * A row of a table laid over the thing that it is about: what the table has no column for stays as it was, and so does
 * the source of it.
 *
 * @param row - as read, with defaults where there is no column
 * @param before - the thing as it stands; none for a new one
 * @param telling - the kind, and what the table tells
 * @returns `before` itself when nothing differs
 */
export function keptWhereSilent(row: Thing, before: Thing | undefined, telling: Telling): Thing {
  if (before === undefined) return row;
  const { kind, told } = telling;
  // Older records may leave out what has a default by now.
  const known = (thingSchemas[kind].safeParse(before).data ?? before) as Thing;
  const keys = new Set([...Object.keys(known), ...Object.keys(row)].filter((key) => key !== 'sources'));
  const fields = [...keys].map((key) => {
    const isKept = !told.has(key) || isSame(row[key], known[key]);
    return [key, (isKept ? known : row)[key]] as const;
  });
  const sources = sourcesOf(row, known, told);
  const thing = Object.fromEntries(fields.filter(([, value]) => value !== undefined)) as unknown as Thing;
  const after: Thing = Object.keys(sources).length === 0 ? thing : { ...thing, sources };
  return isSameThing(after, known) ? before : after;
}

function sourcesOf(row: Thing, known: Thing, told: ReadonlySet<string>): Readonly<Record<string, unknown>> {
  const kept = Object.entries(known['sources'] ?? {}).filter(([key]) => !told.has(key));
  return Object.fromEntries([...kept, ...Object.entries(row['sources'] ?? {})]);
}

function isSameThing(one: Thing, other: Thing): boolean {
  const keys = new Set([...Object.keys(one), ...Object.keys(other)]);
  return [...keys].every((key) =>
    key === 'sources' ? isSameRecord(one[key], other[key]) : isSame(one[key], other[key]),
  );
}

function isSameRecord(one: unknown, other: unknown): boolean {
  const [a, b] = [Object.entries(one ?? {}), new Map(Object.entries(other ?? {}))];
  return a.length === b.size && a.every(([key, value]) => b.get(key) === value);
}

/** What a conversion between units may lose; nobody meant that as a change. */
const rounding = 1e-12;

function isSame(one: unknown, other: unknown): boolean {
  if (typeof one !== 'number' || typeof other !== 'number') return one === other;
  return Math.abs(one - other) <= rounding * Math.abs(other);
}
