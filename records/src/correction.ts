import { Refusal } from '@loopwright/engine/refusal';
import type { PlantDefinition } from '@loopwright/plant';
import { definitions, type PlantEvent, removal } from './event.ts';
import { type HistoryKind, history, type LoggedEvent, subjectOf } from './history.ts';
import { canonicalText } from './log/canonical.ts';

/**
 * The event that puts a thing back to what it was before another event. It names that event; nothing is taken out of
 * the log, and the history shows both.
 *
 * @param events - of all devices, in the order of folding
 * @param id - of the event to be taken back
 * @throws Refusal `no-such-event`, `nothing-to-undo`: the event changed nothing here, or the thing is as before it
 */
export function correctionOf(events: readonly LoggedEvent[], id: string): PlantEvent {
  const event = events.find((each) => each.id === id);
  if (event === undefined) throw new Refusal('no-such-event', '', { value: id });
  const subject = subjectOf(event);
  if (subject === undefined) throw new Refusal('nothing-to-undo', '', { value: id });
  const entries = history(events, subject.kind, subject.id);
  const taken = entries.find((entry) => entry.id === id);
  if (taken === undefined || isSame(taken.before, entries.at(-1)?.after))
    throw new Refusal('nothing-to-undo', '', { value: id });
  const { type, body } = changeTo(subject.kind, subject.id, taken.before);
  return { type, body: { ...body, corrects: id } } as PlantEvent;
}

function changeTo(kind: HistoryKind, id: string, thing: unknown): PlantEvent {
  const [definition] = thing === undefined ? [] : definitions([{ kind, thing } as PlantDefinition]);
  if (definition !== undefined) return definition;
  // A plant cannot be without a name, so its first definition stays.
  if (kind === 'plant') throw new Refusal('nothing-to-undo', '', { value: id });
  return removal(kind, id);
}

function isSame(a: unknown, b: unknown): boolean {
  return a === undefined || b === undefined ? a === b : canonicalText(a) === canonicalText(b);
}
