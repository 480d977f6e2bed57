import { type MetLog, metType } from '@loopwright/records/log';
import type { ClockJump } from './clock-watch.ts';
import type { Change, SeedOrigin } from './plant-store.ts';

/** Events a device writes about itself; they change nothing in the plant. Published names: they keep their meaning. */
export const deviceEventTypes = {
  /** What follows was read from the plant's files. */
  seeded: 'device.seeded',
  /** The wall clock was set, or went wrong. */
  clockJumped: 'device.clock-jumped',
  /** This device has seen those logs so far; what it writes later comes after them. */
  met: metType,
} as const;

const names: ReadonlySet<string> = new Set(Object.values(deviceEventTypes));

/** Whether a type is one that a device writes about itself. */
export function isDeviceEvent(type: string): boolean {
  return names.has(type);
}

/** Says that the next `count` events were read from the plant's files. */
export function seeded({ plant, demo }: SeedOrigin, count: number): Change {
  return { type: deviceEventTypes.seeded, body: { schema: 1, thing: { plant, demo, count } } };
}

export function clockJumped(jump: ClockJump): Change {
  return { type: deviceEventTypes.clockJumped, body: { schema: 1, thing: { ...jump } } };
}

export function met(logs: readonly MetLog[]): Change {
  return { type: deviceEventTypes.met, body: { schema: 1, thing: { logs } } };
}

/** What an event says of the events after it; undefined when it says nothing of them. */
export function saysSeeded({
  type,
  body,
}: {
  readonly type: string;
  readonly body: unknown;
}): { readonly demo: boolean; readonly count: number } | undefined {
  if (type !== deviceEventTypes.seeded) return undefined;
  const { demo, count } = thingOf(body);
  return { demo: demo === true, count: typeof count === 'number' && Number.isSafeInteger(count) ? count : 0 };
}

function thingOf(body: unknown): Readonly<Record<string, unknown>> {
  const thing = isRecord(body) ? body['thing'] : undefined;
  return isRecord(thing) ? thing : {};
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
