import { kinds, type Plant } from '@loopwright/plant';
import { fold } from './fold.ts';
import { sha256Hex } from './log/hash.ts';

/** How events are folded. A version that folds otherwise passes over older snapshots and folds from the start. */
const foldForm = 1;

/** A plant as folded up to a place of the log, so that starting does not take longer as the history grows. */
export interface Snapshot {
  readonly form: number;
  /** Events folded. */
  readonly size: number;
  /** Id of the last of them. */
  readonly head: string;
  /** The plant as JSON. */
  readonly text: string;
  /** Of the text, to see a damaged one. */
  readonly sha256: string;
}

/** A place of a log. */
export interface LogPlace {
  readonly size: number;
  readonly head: string;
}

/**
 * What is kept of a folded plant.
 *
 * @param plant - the fold of all events up to the place
 * @param place - size and last event of the log there
 */
export function takeSnapshot(plant: Plant, { size, head }: LogPlace): Snapshot {
  const text = JSON.stringify(plant);
  return { form: foldForm, size, head, text, sha256: sha256Hex(text) };
}

/**
 * The plant of a snapshot, to fold the events after it into; undefined when it is damaged, was folded by another
 * version or belongs to another history. Then everything is folded again: a snapshot is only a short cut.
 *
 * @param snapshot - as it was kept
 * @param place - size and last event of the log at the snapshot's size
 * @param textSha256 - of the snapshot's text; by a shell whose own hash is quicker
 */
export function plantOfSnapshot(
  { form, size, head, text, sha256 }: Snapshot,
  place: LogPlace,
  textSha256 = sha256Hex(text),
): Plant | undefined {
  if (form !== foldForm || size !== place.size || head !== place.head || textSha256 !== sha256) return undefined;
  const read = JSON.parse(text) as Plant;
  // Folding nothing takes away what all objects inherit, so that no id finds an inherited name.
  return kinds.every((kind) => typeof read[kind] === 'object') ? fold([], read) : undefined;
}
