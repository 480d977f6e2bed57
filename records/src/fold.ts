import {
  type DanglingReference,
  danglingReferences,
  emptyPlant,
  type Kind,
  kinds,
  type Plant,
  plantSchema,
  thingSchemas,
} from '@loopwright/plant';
import { type AnyEvent, effects } from './event.ts';
import { isPersonType } from './person/person-form.ts';
import { isRunType } from './run/run-types.ts';

/** A plant as its events make it, and what was passed over on the way. */
export interface Folding {
  readonly plant: Plant;
  /** How often each type came that this version does not know; a newer form reads like `belt.defined/2`. */
  readonly unknownTypes: ReadonlyMap<string, number>;
  /** Events of a known type whose thing does not meet its schema, by their place in this batch. */
  readonly refused: readonly { readonly at: number; readonly type: string }[];
  /** References that lead nowhere now, after a removal or because the other thing has not come yet. */
  readonly dangling: readonly DanglingReference[];
}

/**
 * The plant that a row of events makes. Pure; in how many batches the events come makes no difference.
 *
 * @param events - oldest first
 * @param from - the plant so far; default: nothing
 * @returns the plant after the last event
 */
export function fold(events: Iterable<AnyEvent>, from: Plant = emptyPlant('plant', '')): Plant {
  return applied(events, from).plant;
}

/**
 * As `fold`, and tells what it passed over and what refers to nothing now.
 *
 * @param events - oldest first
 * @param from - the plant so far; default: nothing
 */
export function foldAndReport(events: Iterable<AnyEvent>, from: Plant = emptyPlant('plant', '')): Folding {
  const folded = applied(events, from);
  return { ...folded, dangling: danglingReferences(folded.plant) };
}

function applied(events: Iterable<AnyEvent>, from: Plant): Omit<Folding, 'dangling'> {
  const draft = draftOf(from);
  const unknownTypes = new Map<string, number>();
  const refused: { at: number; type: string }[] = [];
  let at = 0;
  for (const { type, body } of events) {
    const outcome = apply(draft, type, body);
    if (outcome === 'refused') refused.push({ at, type });
    else if (outcome !== 'applied') unknownTypes.set(outcome.unknown, (unknownTypes.get(outcome.unknown) ?? 0) + 1);
    at += 1;
  }
  return { plant: draft as unknown as Plant, unknownTypes, refused };
}

type Draft = Record<Kind, Record<string, unknown>> & { id: string; name: string; note?: string };

/** A copy one level deep: things themselves are never changed, only replaced. Without prototypes, as `byId` makes it. */
function draftOf({ id, name, note, ...things }: Plant): Draft {
  const copies = kinds.map((kind) => [kind, Object.assign(Object.create(null), things[kind])] as const);
  return { id, name, ...(note === undefined ? {} : { note }), ...Object.fromEntries(copies) } as Draft;
}

type Outcome = 'applied' | 'refused' | { readonly unknown: string };

function apply(draft: Draft, type: string, body: unknown): Outcome {
  const known = effects.get(type);
  if (isRunType(type) || isPersonType(type)) return passed(type, body);
  if (!known && type !== 'plant.defined') return { unknown: String(type) };
  if (!isBody(body)) return 'refused';
  if (body.schema !== 1) return { unknown: `${type}/${body.schema}` };
  if (!known) return definePlant(draft, body.thing);
  return known.effect === 'defined' ? define(draft, known.kind, body.thing) : remove(draft, known.kind, body.thing);
}

/** What happens in a press run, or is noted of a person, changes nothing that exists; its own fold looks at its form. */
function passed(type: string, body: unknown): Outcome {
  if (!isBody(body)) return 'refused';
  return body.schema === 1 ? 'applied' : { unknown: `${type}/${body.schema}` };
}

function isBody(body: unknown): body is { readonly schema: number; readonly thing: unknown } {
  return (
    typeof body === 'object' && body !== null && 'schema' in body && Number.isInteger(body.schema) && 'thing' in body
  );
}

function definePlant(draft: Draft, thing: unknown): Outcome {
  const parsed = plantSchema.safeParse(thing);
  if (!parsed.success) return 'refused';
  delete draft.note;
  Object.assign(draft, parsed.data);
  return 'applied';
}

function define(draft: Draft, kind: Kind, thing: unknown): Outcome {
  const parsed = thingSchemas[kind].safeParse(thing);
  if (!parsed.success) return 'refused';
  draft[kind][parsed.data.id] = parsed.data;
  return 'applied';
}

/** Taking away what is not there is no mistake: the same removal may come from two devices. */
function remove(draft: Draft, kind: Kind, thing: unknown): Outcome {
  if (typeof thing !== 'object' || thing === null || !('id' in thing) || typeof thing.id !== 'string') return 'refused';
  delete draft[kind][thing.id];
  return 'applied';
}
