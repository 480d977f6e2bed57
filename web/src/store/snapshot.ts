import { type KeptLengths, keepLengths, recallLengths } from '@loopwright/jobs';
import { emptyPlant, type Plant } from '@loopwright/plant';
import { type Snapshot as PlantSnapshot, plantOfSnapshot, takeSnapshot } from '@loopwright/records';
import type { LogState } from '@loopwright/records/log';
import { buildVersion } from '../offline/version.ts';

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
  /** What the list of lines computes of it, and the version that did. */
  readonly lengths: { readonly by: string; readonly each: KeptLengths };
}

/** A plant in which nothing has happened. */
export function nothingFolded(own: LogState): Folded {
  return { plant: emptyPlant(own.plant, ''), own, size: 0, demo: false, unknown: 0, edits: 0, span: 0 };
}

/** What is kept of a state. */
export function snapshotOf({ plant, ...counts }: Folded): Snapshot {
  const lengths = { by: buildVersion(), each: keepLengths(plant) };
  return { ...counts, plant: counts.own.plant, kept: takeSnapshot(plant, placeOf(counts)), lengths };
}

/** The state that was kept; undefined when it was folded otherwise or is damaged. Then everything is folded again. */
export function foldedOf({ kept, lengths, ...counts }: Snapshot): Folded | undefined {
  const plant = plantOfSnapshot(kept, placeOf(counts));
  if (plant === undefined) return undefined;
  if (lengths.by === buildVersion()) recallLengths(plant, lengths.each);
  return { ...counts, plant };
}

/** Whether another version took it: then it is worth taking anew. */
export const isOfBefore = ({ lengths }: Snapshot): boolean => lengths.by !== buildVersion();

function placeOf({ own, size }: Counts): { readonly size: number; readonly head: string } {
  return { size, head: own.head };
}
