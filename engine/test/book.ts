import { type Check, checkAgainst } from '../../tools/validation/check.ts';

type Entry = (
  id: string,
  inputs: string,
  unit: string,
  published: number,
  ours: number,
  tolerance: number,
  more?: Partial<Check>,
) => void;

/** Enters numbers on a page of the book that a separate program computed from the closed form. */
const entryOn =
  (topic: string): Entry =>
  (id, inputs, unit, published, ours, tolerance, more = {}) =>
    checkAgainst({
      topic,
      id,
      source: 'closed form evaluated with 25 digits by a separate program',
      evidence: 'independent',
      inputs,
      unit,
      published,
      ours,
      tolerance,
      why: 'half the last digit',
      ...more,
    });

export const checkHeat = entryOn('heat');
export const checkFusion = entryOn('fusion');
