import { type Line, takeUpKinds, thingSchemas } from '@loopwright/plant';
import type { Language } from '@loopwright/words';
import type { Entries, PlainThing } from '../../../form/entries.ts';
import { type EntryContext, type EntryProblem, readEntry } from '../../../form/read-entries.ts';
import { takeUpOriginal } from './geometry.ts';
import { takeUpFields } from './geometry-fields.ts';
import type { outwards } from './layout-facts.ts';

type Direction = ReturnType<typeof outwards>;

/** What a layout says of a take-up. */
export type Presence = 'there' | 'none' | 'open';

/** What else decides about a take-up. */
export interface TakeUpGround {
  /** Whether there is one: as the layout says, or open where coordinates say it. */
  readonly presence: Presence;
  /** The way in which it tightens, where the layout says it. */
  readonly direction: Direction | undefined;
  readonly line: Line;
  readonly language: Language;
}

/** The line with its take-up as it would be saved; or what is wrong, by the key of the field. */
export interface TakeUpReading {
  readonly line: Line | undefined;
  readonly takeUpProblems: Readonly<Record<string, EntryProblem>>;
}

/** Reads kind, travel and direction of a take-up, and puts them into the line. */
export function readTakeUp(entries: Entries, ground: TakeUpGround): TakeUpReading {
  const { line, direction } = ground;
  const kind = kindSaid(entries, line, ground.presence);
  const { values, problems } = numbersOf(entries, kind, ground);
  if (Object.keys(problems).length > 0) return { line: undefined, takeUpProblems: problems };
  const thing = {
    ...line,
    ...(direction ?? directionSaid(entries, line)),
    ...travelOf(entries, line, kind, values),
    takeUpKind: kind,
    takeUpForce_N: kind === 'spring' || kind === 'gravity' ? values['takeUpForce_N'] : undefined,
  };
  const parsed = thingSchemas.lines.safeParse(said(withSources(thing, line, entries)));
  if (parsed.success) return { line: parsed.data, takeUpProblems: {} };
  return { line: undefined, takeUpProblems: { takeUpOn: { code: 'entry-refused', data: {} } } };
}

interface TakeUpNumbers {
  readonly values: Readonly<Record<string, unknown>>;
  readonly problems: Readonly<Record<string, EntryProblem>>;
}

/** Travel is known both ways or not at all: half of it says nothing. */
function numbersOf(entries: Entries, kind: Line['takeUpKind'], { line, language }: TakeUpGround): TakeUpNumbers {
  const context: EntryContext = { language, original: takeUpOriginal(line), exists: () => false };
  const { back, on, force } = takeUpFields;
  const asked = kind === 'none' ? [] : kind === 'screw' ? [back, on] : [back, on, force];
  const values: Record<string, unknown> = {};
  const problems: Record<string, EntryProblem> = {};
  for (const field of asked) {
    const read = readEntry('lines', field, entries[field.key] ?? { text: '' }, context);
    if ('code' in read) problems[field.key] = read;
    else if (read.value !== undefined) values[field.key] = read.value;
  }
  const given = [back, on].filter(({ key }) => values[key] !== undefined || problems[key] !== undefined);
  const half = given.length === 1 ? [back, on].find((field) => !given.includes(field)) : undefined;
  if (half !== undefined) problems[half.key] = { code: 'entry-missing', data: {} };
  return { values, problems };
}

/** The kind as said, else as it is known; a screw where there is one and nothing is known of it. */
export function kindSaid(entries: Entries, line: Line, presence: Presence): Line['takeUpKind'] {
  if (presence === 'none') return 'none';
  const entry = entries['takeUpKind'];
  const text = entry?.kept === true ? line.takeUpKind : entry?.text;
  const kind = takeUpKinds.find((known) => known === text) ?? line.takeUpKind;
  return kind === 'none' && presence === 'there' ? 'screw' : kind;
}

/** The four ways a take-up may move, by name. */
export const directionNames = ['down', 'up', 'infeed', 'discharge'] as const;
type DirectionName = (typeof directionNames)[number];

const directions: Readonly<Record<DirectionName, Direction>> = {
  down: { takeUpX: 0, takeUpY: -1 },
  up: { takeUpX: 0, takeUpY: 1 },
  infeed: { takeUpX: -1, takeUpY: 0 },
  discharge: { takeUpX: 1, takeUpY: 0 },
};

/** The way that is said, else the known one. */
export function directionSaid(entries: Entries, { takeUpX, takeUpY }: Line): Direction {
  const name = directionNames.find((known) => known === entries['direction']?.text);
  return name === undefined ? { takeUpX, takeUpY } : directions[name];
}

/** The name of a way; undefined for one between the four. */
export function directionName({ takeUpX, takeUpY }: Direction): DirectionName | undefined {
  return directionNames.find((name) => directions[name].takeUpX === takeUpX && directions[name].takeUpY === takeUpY);
}

function travelOf(entries: Entries, line: Line, kind: Line['takeUpKind'], values: TakeUpNumbers['values']) {
  const [back, on] = [values['takeUpBack'], values['takeUpOn']];
  if (kind === 'none' || typeof back !== 'number' || typeof on !== 'number') {
    return { takeUpStroke_m: 0, takeUpReference_m: 0 };
  }
  return { takeUpStroke_m: isTyped(entries) ? back + on : line.takeUpStroke_m, takeUpReference_m: back };
}

function isTyped(entries: Entries): boolean {
  return entries['takeUpBack']?.kept !== true || entries['takeUpOn']?.kept !== true;
}

/** Travel read off at the line is measured, whatever the rest of the line comes from. */
function withSources(thing: PlainThing, line: Line, entries: Entries): PlainThing {
  if (!isTyped(entries) || thing['takeUpStroke_m'] === 0) return thing;
  return { ...thing, sources: { ...line.sources, takeUpStroke_m: 'measured', takeUpReference_m: 'measured' } };
}

/** A thing without what nobody said. */
function said(thing: PlainThing): PlainThing {
  return Object.fromEntries(Object.entries(thing).filter(([, value]) => value !== undefined));
}
