import { emptyPlant, type Plant } from '@loopwright/plant';
import { type Snapshot as PlantSnapshot, plantOfSnapshot, takeSnapshot } from '@loopwright/records';
import type { LogState } from '@loopwright/records/log';

/** What is known of a plant beside what is in it; grows with every event. */
interface Counts {
  /** This device's own log. */
  readonly own: LogState;
  /** Events of all devices folded. */
  readonly size: number;
  readonly demo: boolean;
  /** Events of types or forms that this version does not know. */
  readonly unknown: number;
  /** Events that people caused: those that were not read from the plant's files. */
  readonly edits: number;
  /** How many of the next events were read from the plant's files. */
  readonly span: number;
}

/** The state of a plant. */
export interface Folded extends Counts {
  readonly plant: Plant;
}

/** The state as it rests on the device, so that starting does not take longer as the history grows. */
export interface Snapshot extends Counts {
  /** Id of the plant. */
  readonly plant: string;
  readonly kept: PlantSnapshot;
}

/** A plant in which nothing has happened. */
export function nothingFolded(own: LogState): Folded {
  return { plant: emptyPlant(own.plant, ''), own, size: 0, demo: false, unknown: 0, edits: 0, span: 0 };
}

/** What is kept of a state. */
export function snapshotOf({ plant, ...counts }: Folded): Snapshot {
  return { ...counts, plant: counts.own.plant, kept: takeSnapshot(plant, placeOf(counts)) };
}

/** The state that was kept; undefined when it was folded otherwise or is damaged. Then everything is folded again. */
export async function foldedOf({ kept, ...counts }: Snapshot): Promise<Folded | undefined> {
  const plant = plantOfSnapshot(kept, placeOf(counts), await nativeSha256(kept.text));
  return plant === undefined ? undefined : { ...counts, plant };
}

/** By the browser itself, many times quicker on a text of megabytes; undefined where the page came by no secure way. */
async function nativeSha256(text: string): Promise<string | undefined> {
  const { subtle } = crypto as { readonly subtle?: SubtleCrypto };
  if (subtle === undefined) return undefined;
  const digest = new Uint8Array(await subtle.digest('SHA-256', new TextEncoder().encode(text)));
  return Array.from(digest, (byte) => byte.toString(16).padStart(2, '0')).join('');
}

function placeOf({ own, size }: Counts): { readonly size: number; readonly head: string } {
  return { size, head: own.head };
}
