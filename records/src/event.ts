import { type Kind, kinds, type PlantDefinition, type ThingOf } from '@loopwright/plant';

/** What one thing of each kind is called in an event. Published: a name keeps its meaning for ever. */
export const thingNames = {
  belts: 'belt',
  dies: 'die',
  templates: 'template',
  presses: 'press',
  recipes: 'recipe',
  lines: 'line',
  pulleys: 'pulley',
  positions: 'position',
  rolls: 'roll',
  badges: 'badge',
  surveys: 'survey',
} as const satisfies Record<Kind, string>;

type Name<K extends Kind> = (typeof thingNames)[K];

/** A thing is there, as it stands in `thing`; it replaces what had its id. */
export type DefinedEvent =
  | { readonly type: 'plant.defined'; readonly body: EventBody<Extract<PlantDefinition, { kind: 'plant' }>['thing']> }
  | { readonly [K in Kind]: { readonly type: `${Name<K>}.defined`; readonly body: EventBody<ThingOf<K>> } }[Kind];

/** A thing is no longer there. What refers to it stays, and is reported. */
export interface RemovedEvent {
  readonly type: `${Name<Kind>}.removed`;
  readonly body: EventBody<{ readonly id: string }>;
}

/** Version of the form of `thing`, and the thing. */
export interface EventBody<T> {
  readonly schema: 1;
  readonly thing: T;
  /** Id of the event that this one corrects. Both stay in the history. */
  readonly corrects?: string;
}

/** Something that changed what a plant consists of; unsigned, free of the envelope a log puts round it. */
export type PlantEvent = DefinedEvent | RemovedEvent;

/** An event as it comes from a log: the type may be one that this version does not know. */
export interface AnyEvent {
  readonly type: string;
  readonly body: unknown;
}

/**
 * The events that say what a plant folder says, one a thing, in the folder's order.
 *
 * @param found - what a reading of the folder defines
 */
export function definitions(found: readonly PlantDefinition[]): readonly PlantEvent[] {
  return found.map(({ kind, thing }) => {
    const name = kind === 'plant' ? kind : thingNames[kind];
    return { type: `${name}.defined`, body: { schema: 1, thing } } as PlantEvent;
  });
}

/**
 * The event that takes a thing away.
 *
 * @param kind - of the thing
 * @param id - of the thing
 */
export function removal(kind: Kind, id: string): RemovedEvent {
  return { type: `${thingNames[kind]}.removed`, body: { schema: 1, thing: { id } } };
}

/** What an event type does to which kind of thing; a map, so that no type of a stranger finds an inherited name. */
export const effects: ReadonlyMap<string, { readonly kind: Kind; readonly effect: 'defined' | 'removed' }> = new Map(
  kinds.flatMap((kind) =>
    (['defined', 'removed'] as const).map((effect) => [`${thingNames[kind]}.${effect}`, { kind, effect }] as const),
  ),
);
