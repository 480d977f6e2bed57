import type { BeltSection, PathInput } from '@loopwright/engine/loop';
import { pathInput } from './path-input.ts';
import type { Belt } from './things/belt.ts';
import type { Pulley } from './things/line.ts';

/** Common practice, no source: bending against its habit, a belt wants a quarter more diameter. */
const counterBendFactor = 1.25;

/**
 * The section of a belt as its path needs it, and whether its neutral line is assumed: half the thickness, because
 * no data sheet gives it.
 *
 * @param belt - with its thickness
 */
export function beltSection(belt: Belt): { readonly section: BeltSection; readonly assumed: boolean } {
  return { section: pathInput([], belt).belt, assumed: belt.neutralLine_m === undefined };
}

/**
 * Smallest pulley that may touch a belt's roller face; without one on the data sheet 1.25 x the smallest pulley.
 *
 * @param belt - with its smallest pulley
 * @returns diameter [m]
 */
export function minCounterBend(belt: Belt): number {
  return belt.minCounterBend_m ?? counterBendFactor * belt.minPulley_m;
}

/**
 * The pulleys that lead the loop, in travel order. Carrying and pressure rollers only press on the strand.
 *
 * @param pulleys - of one line, in any order
 */
export function leadingPulleys(pulleys: readonly Pulley[]): readonly Pulley[] {
  return pulleys.filter(({ role }) => role !== 'carrier' && role !== 'pressure').sort((a, b) => a.order - b.order);
}

/**
 * How a line's belt is led, as `beltPath` takes it: `leadingPulleys` and the belt's section.
 *
 * @param pulleys - of one line, in any order
 * @param belt - that runs round them
 */
export function linePathInput(pulleys: readonly Pulley[], belt: Belt): PathInput {
  return pathInput(leadingPulleys(pulleys), belt);
}
