import { bendField } from './bend-field.ts';
import { record } from './cells.ts';
import { chain, chainRow, EXTRA, lastLink } from './chain.ts';
import { type End, endField } from './end.ts';
import { weighted } from './fold.ts';
import { heaterField } from './heaters.ts';
import { type Slab, slabField } from './slab.ts';
import { sourceOver } from './source.ts';

const { V, X, UPPER, LOWER, FLUX, BEND, STRIDE } = record;
const { GIVEN, SUPPLIED, LOST, NEXT_SUPPLIED, NEXT_LOST, START_LOSS, LOSS_SLOPE, V_SHARE } = endField;
const { START_TOP, START_BOTTOM, START_PLUG, PLUG_BY_TOP, PLUG_BY_BOTTOM } = heaterField;
const { TOP_BY_TOP, TOP_BY_BOTTOM, BOTTOM_BY_TOP, BOTTOM_BY_BOTTOM } = heaterField;
const { PLUG, NEXT_PLUG, SOURCED, NEXT_SOURCED } = slabField;
const { TOP, BOTTOM, TOP_LOSS, BOTTOM_LOSS, PLUG: PLUG_BEND, COUNT } = bendField;
const { sum, sumBend } = chain;

/**
 * Heat supplied and lost and energy at the plug over the step tried last, summed with the chain's own weights so that they
 * balance with what the cells take up.
 *
 * @param slab - slab with all solutions of a step, changed
 * @param step_s - length of the step [s]
 * @returns nothing
 * @source derived: something that is only summed up is a chain of its own, see `chain.ts`
 */
export function sumHeat(slab: Slab, step_s: number): void {
  const { top, bottom, heaters: h, cells, numbers, source } = slab;
  const byTop = top.following ? weighted(sum, 0, top.numbers, V_SHARE) : 0;
  const byBottom = bottom.following ? weighted(sum, 0, bottom.numbers, V_SHARE) : 0;
  const topSlope = (h[TOP_BY_TOP] as number) * byTop + (h[TOP_BY_BOTTOM] as number) * byBottom;
  const bottomSlope = (h[BOTTOM_BY_BOTTOM] as number) * byBottom + (h[BOTTOM_BY_TOP] as number) * byTop;
  const plugSlope = (h[PLUG_BY_TOP] as number) * byTop + (h[PLUG_BY_BOTTOM] as number) * byBottom;
  const heatTop = (h[START_TOP] as number) + (top.numbers[GIVEN] as number) + topSlope + bentOver(slab, TOP);
  const heatBottom =
    (h[START_BOTTOM] as number) + (bottom.numbers[GIVEN] as number) + bottomSlope + bentOver(slab, BOTTOM);
  const last = cells.count * STRIDE;
  const intoTop = top.held ? fluxOver(slab, STRIDE) : heatTop;
  const intoBottom = bottom.held ? -fluxOver(slab, last - STRIDE) : heatBottom;
  sumEnd(top, step_s, intoTop, overStep(slab, STRIDE), bentOver(slab, TOP_LOSS));
  sumEnd(bottom, step_s, intoBottom, overStep(slab, last), bentOver(slab, BOTTOM_LOSS));
  const plug = (h[START_PLUG] as number) + plugSlope + bentOver(slab, PLUG_BEND);
  numbers[NEXT_PLUG] = (numbers[PLUG] as number) + step_s * plug;
  if (source === undefined) return;
  numbers[NEXT_SOURCED] = (numbers[SOURCED] as number) + step_s * sourceOver(source);
}

function sumEnd({ numbers: e }: End, step_s: number, supplied: number, plate: number, bentLoss: number): void {
  const lost = (e[START_LOSS] as number) + (e[LOSS_SLOPE] as number) * plate + bentLoss;
  e[NEXT_SUPPLIED] = (e[SUPPLIED] as number) + step_s * supplied;
  e[NEXT_LOST] = (e[LOST] as number) + step_s * lost;
}

/** A record's solutions, weighted: its mean rise above the start over the step. */
function overStep({ cells, bent }: Slab, j: number): number {
  const { numbers } = cells;
  let over = bent ? (sum[EXTRA] as number) * (numbers[j + X] as number) : 0;
  for (let link = 0; link <= lastLink; link += 1) over += (sum[link] as number) * (numbers[j + V + link] as number);
  return over;
}

/** What heaters or losses bend, as its mean over the step. */
function bentOver({ bends, bent }: Slab, field: number): number {
  let over = 0;
  if (!bent) return over;
  for (let s = 1, at = field + COUNT; s < chainRow; s += 1, at += COUNT) {
    over += (sumBend[s] as number) * (bends[at] as number);
  }
  return over;
}

/** Mean flux from a record to the next: what a held plate gives or takes. */
function fluxOver(slab: Slab, j: number): number {
  const { numbers } = slab.cells;
  let flux = numbers[j + FLUX] as number;
  if (slab.bent) {
    for (let s = 1; s < chainRow; s += 1) flux += (sumBend[s] as number) * (numbers[j + BEND + s - 1] as number);
  }
  const lower = (numbers[j + LOWER] as number) * overStep(slab, j + STRIDE);
  return flux + (numbers[j + UPPER] as number) * overStep(slab, j) - lower;
}
