import type { Kind } from '@loopwright/plant';
import { definitions, removal } from '@loopwright/records';
import type { Voice } from '@loopwright/words';
import type { PlainThing } from '../../form/entries.ts';
import type { StoreKind } from '../../form/thing-layout.ts';
import type { Following } from '../../page/following.ts';
import { faultSentence } from '../../store/fault-sentence.ts';
import type { Change, PlantStore, Saved } from '../../store/plant-store.ts';

/** What has a history of its own: a kind of thing, or the plant itself, of which only the name can be changed. */
export type WrittenKind = StoreKind | 'plant';

/** The last change made here: what was done to which thing, and the event that says so. */
export interface Written {
  readonly did: 'saved' | 'removed' | 'undone';
  readonly kind: WrittenKind;
  readonly id: string;
  /** The event to take back; absent where that makes no sense. */
  readonly eventId?: string;
}

/** It is on the device's disk; or the sentence that says why not. */
export type KeepOutcome = { readonly saved: Saved } | { readonly refused: string };

/** The change that says how a thing is now. */
export function definitionOf(kind: Kind | 'plant', thing: PlainThing): readonly Change[] {
  return definitions([{ kind, thing } as unknown as Parameters<typeof definitions>[0][number]]);
}

/** The change that says that a thing is gone. */
export function removalOf(kind: Kind, id: string): readonly Change[] {
  return [removal(kind, id)];
}

/** Writes changes down, all or none. */
export function keep(
  store: PlantStore,
  voice: Voice,
  changes: readonly Change[],
  following?: Following,
): Promise<KeepOutcome> {
  return outcomeOf(voice, store.append(changes, following));
}

/** Takes events back, all or none. */
export function takeBack(
  store: PlantStore,
  voice: Voice,
  eventIds: readonly string[],
  following?: Following,
): Promise<KeepOutcome> {
  return outcomeOf(voice, store.undo(eventIds, following));
}

/** What came of a writing: kept, or the sentence that says why not. */
export async function outcomeOf(voice: Voice, writing: Promise<Saved>): Promise<KeepOutcome> {
  try {
    return { saved: await writing };
  } catch (problem) {
    return { refused: faultSentence(voice, problem) };
  }
}
