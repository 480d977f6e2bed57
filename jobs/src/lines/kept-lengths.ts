import type { Plant } from '@loopwright/plant';
import { type LineLengths, lineLengths, partsOfLines, takeLengths } from './line-lengths.ts';

/** Lengths of each line of a plant, in the order of the lines' ids; plain data. */
export type KeptLengths = readonly LineLengths[];

/**
 * What the lengths of all lines are, to be kept beside a plant: they take far longer to compute than to read.
 *
 * @param plant - the plant's state
 */
export function keepLengths(plant: Plant): KeptLengths {
  return partsOfLines(plant).map(lineLengths);
}

/**
 * Takes lengths as computed before, so that they are not computed anew. Only for lengths that the same version computed
 * of the same state; what has changed since is computed all the same.
 *
 * @param plant - the state they were kept beside
 * @param kept - as `keepLengths` gave them
 */
export function recallLengths(plant: Plant, kept: KeptLengths): void {
  const parts = partsOfLines(plant);
  if (parts.length !== kept.length) return;
  for (const [i, each] of parts.entries()) takeLengths(each, kept[i]);
}
