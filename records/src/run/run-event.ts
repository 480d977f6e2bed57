import type * as z from 'zod';
import type { AnyEvent } from '../event.ts';
import { type runNumberSchema, runSchemas } from './run-schemas.ts';
import { isRunType, type RunType } from './run-types.ts';

/** What an event of each kind says. */
export type RunThing<T extends RunType> = z.infer<(typeof runSchemas)[T]>;

/** A number that a run rests on. */
export type RunNumber = z.infer<typeof runNumberSchema>;

/** Something that happened in a run, without the envelope a log puts round it: what a shell appends. */
export type RunChange = {
  readonly [T in RunType]: { readonly type: T; readonly body: { readonly schema: 1; readonly thing: RunThing<T> } };
}[RunType];

/** What a run needs of the envelope: who, when by both clocks, on which device. */
export interface RunEnvelope {
  readonly id: string;
  readonly device: string;
  readonly by: string;
  /** Wall clock, UTC. */
  readonly at: string;
  readonly boot: string;
  readonly up_ms: number;
}

/** A happening of a run as it stands in a log. */
export type RunEvent = RunEnvelope & RunChange;

/** An event of a log, of whatever type. */
export type LoggedAnyEvent = RunEnvelope & AnyEvent;

/**
 * A change of a run, ready to append.
 *
 * @param type - what happened
 * @param thing - what is said of it
 */
export function runChange<T extends RunType>(type: T, thing: RunThing<T>): RunChange {
  return { type, body: { schema: 1, thing } } as RunChange;
}

/**
 * Reads an event of a log as one of a run.
 *
 * @param event - of any type
 * @returns the event; undefined when it belongs to no run, has a newer form or not the form its type asks for
 */
export function readRunEvent(event: LoggedAnyEvent): RunEvent | undefined {
  const { id, device, by, at, boot, up_ms, type, body } = event;
  if (!isRunType(type) || typeof body !== 'object' || body === null) return undefined;
  if (!('schema' in body) || body.schema !== 1 || !('thing' in body)) return undefined;
  const read = runSchemas[type].safeParse(body.thing);
  if (!read.success) return undefined;
  return { id, device, by, at, boot, up_ms, type, body: { schema: 1, thing: read.data } } as RunEvent;
}
