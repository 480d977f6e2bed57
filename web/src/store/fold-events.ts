import { type AnyEvent, foldAndReport } from '@loopwright/records';
import type { LogState } from '@loopwright/records/log';
import { isDeviceEvent, saysSeeded } from './device-events.ts';
import type { Folded } from './snapshot.ts';

/** A state with more events folded in, and those whose thing is not what its type asks for. */
export interface FoldedMore {
  readonly folded: Folded;
  readonly refused: readonly { readonly at: number; readonly type: string }[];
}

/**
 * Folds events into a state.
 *
 * @param from - the state so far
 * @param events - in their order
 * @param own - this device's own log after them
 */
export function foldMore(from: Folded, events: readonly AnyEvent[], own: LogState): FoldedMore {
  const { plant, unknownTypes, refused } = foldAndReport(events, from.plant);
  const unknown = [...unknownTypes].reduce((sum, [type, count]) => sum + (isDeviceEvent(type) ? 0 : count), 0);
  const size = from.size + events.length;
  const told = events.reduce(whence, from);
  return { folded: { ...told, plant, own, size, unknown: from.unknown + unknown + refused.length }, refused };
}

/** Keeps count of which events were read from files and which a person caused. */
function whence(before: Folded, event: AnyEvent): Folded {
  const said = saysSeeded(event);
  if (said !== undefined) return { ...before, demo: said.demo, span: said.count };
  if (isDeviceEvent(event.type)) return before;
  return before.span > 0 ? { ...before, span: before.span - 1 } : { ...before, edits: before.edits + 1 };
}
