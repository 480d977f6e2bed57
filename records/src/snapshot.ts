import { kinds, type Plant } from '@loopwright/plant';
import { utf8ToBytes } from '@noble/hashes/utils.js';
import { adler32 } from './adler32.ts';
import { fold } from './fold.ts';
import { textOfUtf8 } from './log/strict-json.ts';

/** How events are folded and kept. A version that does it otherwise passes over older snapshots and folds from the start. */
const foldForm = 2;

/** A plant as folded up to a place of the log, so that starting does not take longer as the history grows. */
export interface Snapshot {
  readonly form: number;
  /** Events folded. */
  readonly size: number;
  /** Id of the last of them. */
  readonly head: string;
  /** The plant as JSON in UTF-8: a text of megabytes takes longer to read. */
  readonly bytes: Uint8Array<ArrayBuffer>;
  /** Adler-32 of the bytes, to see damaged ones. */
  readonly checksum: number;
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
  const bytes = new Uint8Array(utf8ToBytes(JSON.stringify(plant)));
  return { form: foldForm, size, head, bytes, checksum: adler32(bytes) };
}

/**
 * The plant of a snapshot, to fold the events after it into; undefined when it is damaged, was folded by another
 * version or belongs to another history. Then everything is folded again: a snapshot is only a short cut.
 *
 * @param snapshot - as it was kept
 * @param place - size and last event of the log at the snapshot's size
 */
export function plantOfSnapshot({ form, size, head, bytes, checksum }: Snapshot, place: LogPlace): Plant | undefined {
  if (form !== foldForm || size !== place.size || head !== place.head) return undefined;
  if (adler32(bytes) !== checksum) return undefined;
  const read = JSON.parse(textOfUtf8(bytes) ?? '{}') as Plant;
  // Folding nothing takes away what all objects inherit, so that no id finds an inherited name.
  return kinds.every((kind) => typeof read[kind] === 'object') ? fold([], read) : undefined;
}
