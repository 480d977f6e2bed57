import { emptyPlant, kinds, type Plant } from '@loopwright/plant';
import { fold } from '@loopwright/records';
import type { LogState } from '@loopwright/records/log';

/** How events are folded; a version that folds otherwise passes over older snapshots and folds everything again. */
const snapshotForm = 1;

/** The plant as folded up to a place, so that starting does not take longer as the history grows. */
export interface Snapshot {
  readonly plant: string;
  readonly form: number;
  /** The folded plant as JSON. */
  readonly text: string;
  /** This device's own log when it was taken. */
  readonly own: LogState;
  /** Events of all devices folded. */
  readonly size: number;
  readonly demo: boolean;
  readonly unknown: number;
  readonly edits: number;
  readonly span: number;
}

/** The state of a plant that grows with every event. */
export interface Folded {
  readonly plant: Plant;
  readonly own: LogState;
  readonly size: number;
  readonly demo: boolean;
  readonly unknown: number;
  /** Events that people caused: those that were not read from the plant's files. */
  readonly edits: number;
  /** How many of the next events were read from the plant's files. */
  readonly span: number;
}

/** A plant in which nothing has happened. */
export function nothingFolded(own: LogState): Folded {
  return { plant: emptyPlant(own.plant, ''), own, size: 0, demo: false, unknown: 0, edits: 0, span: 0 };
}

/** What is kept of a folded state. */
export function snapshotOf({ plant, ...folded }: Folded): Snapshot {
  return { ...folded, plant: folded.own.plant, form: snapshotForm, text: JSON.stringify(plant) };
}

/** The folded state that was kept; undefined when it was folded otherwise or cannot be read. */
export function foldedOf({ form, text, ...kept }: Snapshot): Folded | undefined {
  if (form !== snapshotForm) return undefined;
  const plant = plantOf(text);
  return plant === undefined ? undefined : { ...kept, plant };
}

function plantOf(text: string): Plant | undefined {
  try {
    const read = JSON.parse(text) as Plant;
    const whole = kinds.every((kind) => typeof read[kind] === 'object' && read[kind] !== null);
    // Folding nothing into it takes away what all objects inherit, so that no id finds an inherited name.
    return whole ? fold([], read) : undefined;
  } catch {
    return undefined;
  }
}
