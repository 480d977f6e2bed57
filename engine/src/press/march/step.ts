import { record } from './cells.ts';
import { couplePlates, respondToPlates } from './couple.ts';
import { acceptEnd, endAtStage, endField, finishEnd, foldEnd, linearizeEnd, unfoldEnd } from './end.ts';
import { linearizeLoss, lossAt_W_m2, lossOfStage_W_m2 } from './end-loss.ts';
import { driveHeaters, heaterField, slopeHeaters } from './heaters.ts';
import { lastStage, quadratureWeights, rodasp } from './rodas.ts';
import { type Slab, slabField } from './slab.ts';
import { sourceAtStage, sourceSlope } from './source.ts';
import {
  acceptCells,
  factorCells,
  finishCells,
  fluxOfStage,
  freezeCapacities,
  slopeFluxes,
  sumStages,
  sweepDown,
  sweepUp,
} from './sweeps.ts';

const { START, K, STAGE, STRIDE } = record;
const { gamma } = rodasp;
const { GIVEN, SHARE_SLOPE, SHARE_CONSTANT, STAGE_SHARE, K_SHARE, NEXT_SUPPLIED, NEXT_LOST } = endField;
const { TOP, BOTTOM, PLUG, PLUG_BY_TOP, PLUG_BY_BOTTOM } = heaterField;
const { TOP_BY_TOP, TOP_BY_BOTTOM, BOTTOM_BY_TOP, BOTTOM_BY_BOTTOM } = heaterField;
const { TIME, PLUG: PLUG_SO_FAR, NEXT_PLUG, SOURCED, NEXT_SOURCED } = slabField;

/**
 * Tries one step of a slab without taking it: `acceptStep` takes it, another try replaces it.
 *
 * @param slab - slab at the start of the step; its `next` fields are overwritten
 * @param step_s - length of the step [s], > 0
 * @returns estimated error of the step, the largest over plates, cells, sensors and controllers [K]
 * @source Rosenbrock method RODASP, see `rodas.ts`
 * @verified MARCH-01 order in time
 */
export function tryStep(slab: Slab, step_s: number): number {
  prepare(slab, step_s);
  for (let stage = 0; stage <= lastStage; stage += 1) runStage(slab, stage, step_s);
  const error = finishCells(slab.cells);
  return Math.max(error, finishEnd(slab.top), finishEnd(slab.bottom));
}

function prepare(slab: Slab, step_s: number): void {
  const { top, bottom, heaters, cells, numbers } = slab;
  if (cells.sloped) slopeFluxes(cells);
  linearizeEnd(top, step_s);
  linearizeEnd(bottom, step_s);
  driveAtStage(slab, 0);
  slopeHeaters(heaters);
  numbers[NEXT_PLUG] = numbers[PLUG_SO_FAR] as number;
  numbers[NEXT_SOURCED] = numbers[SOURCED] as number;
  if (slab.source !== undefined) sourceSlope(slab.source, numbers[TIME] as number, step_s);
  const upperSlope = top.numbers[SHARE_SLOPE] as number;
  const lowerSlope = bottom.numbers[SHARE_SLOPE] as number;
  const topLoss = linearizeLoss(top, cells.numbers[STRIDE + START] as number);
  const bottomLoss = linearizeLoss(bottom, cells.numbers[cells.count * STRIDE + START] as number);
  const atTop = topLoss - (heaters[TOP_BY_TOP] as number) * upperSlope;
  const atBottom = bottomLoss - (heaters[BOTTOM_BY_BOTTOM] as number) * lowerSlope;
  freezeCapacities(cells);
  factorCells(cells, 1 / (step_s * gamma), atTop, atBottom);
  slab.coupled = heaters[TOP_BY_BOTTOM] !== 0 && heaters[BOTTOM_BY_TOP] !== 0 && (upperSlope !== 0 || lowerSlope !== 0);
  if (slab.coupled) respondToPlates(cells);
}

function driveAtStage({ top, bottom, heaters }: Slab, stage: number): void {
  endAtStage(top, stage);
  endAtStage(bottom, stage);
  if (stage > 0 && !top.following && !bottom.following) return;
  driveHeaters(heaters, top.numbers[STAGE_SHARE] as number, bottom.numbers[STAGE_SHARE] as number);
}

function runStage(slab: Slab, stage: number, step_s: number): void {
  const { top, bottom, cells, source } = slab;
  const { numbers, count } = cells;
  const perStep_1_s = 1 / step_s;
  if (stage > 0) driveAtStage(slab, stage);
  if (source !== undefined) sourceAtStage(source, slab.numbers[TIME] as number, stage, step_s, cells);
  sumStages(cells, stage, perStep_1_s);
  const upper = numbers[STRIDE + STAGE] as number;
  const lower = numbers[count * STRIDE + STAGE] as number;
  foldEnd(top, stage, upper, perStep_1_s);
  foldEnd(bottom, stage, lower, perStep_1_s);
  drivePlates(slab, stage, upper, lower);
  sweepDown(cells, stage);
  sweepUp(cells, stage);
  if (slab.coupled) couplePlates(slab, stage);
  unfoldEnd(top, stage, numbers[STRIDE + K + stage] as number);
  unfoldEnd(bottom, stage, numbers[count * STRIDE + K + stage] as number);
  sumHeat(slab, stage, step_s * (quadratureWeights[stage] as number), upper, lower);
}

/** Heaters, given heat and losses of the plates, with sensors and controllers folded in. */
function drivePlates({ top, bottom, heaters: h, cells }: Slab, stage: number, upper: number, lower: number): void {
  const { numbers: t } = top;
  const { numbers: b } = bottom;
  const topShare = t[SHARE_CONSTANT] as number;
  const bottomShare = b[SHARE_CONSTANT] as number;
  const topFolded = (h[TOP_BY_TOP] as number) * topShare + (h[TOP_BY_BOTTOM] as number) * bottomShare;
  const bottomFolded = (h[BOTTOM_BY_BOTTOM] as number) * bottomShare + (h[BOTTOM_BY_TOP] as number) * topShare;
  const topLoss = lossAt_W_m2(top, upper);
  const bottomLoss = lossAt_W_m2(bottom, lower);
  const first = STRIDE + K + stage;
  const last = cells.count * STRIDE + K + stage;
  const { numbers } = cells;
  numbers[first] = (numbers[first] as number) + ((h[TOP] as number) + (t[GIVEN] as number) - topLoss + topFolded);
  numbers[last] =
    (numbers[last] as number) + ((h[BOTTOM] as number) + (b[GIVEN] as number) - bottomLoss + bottomFolded);
}

/** Heat supplied and lost, and energy at the plug, summed with the stages' own weights so that they balance. */
function sumHeat(slab: Slab, stage: number, weight_s: number, upper: number, lower: number): void {
  const { top, bottom, heaters: h, cells, numbers, source } = slab;
  const { numbers: t } = top;
  const { numbers: b } = bottom;
  const topShare = t[K_SHARE] as number;
  const bottomShare = b[K_SHARE] as number;
  const heatTop =
    (h[TOP] as number) + (h[TOP_BY_TOP] as number) * topShare + (h[TOP_BY_BOTTOM] as number) * bottomShare;
  const heatBottom =
    (h[BOTTOM] as number) + (h[BOTTOM_BY_BOTTOM] as number) * bottomShare + (h[BOTTOM_BY_TOP] as number) * topShare;
  const plug =
    (h[PLUG] as number) + (h[PLUG_BY_TOP] as number) * topShare + (h[PLUG_BY_BOTTOM] as number) * bottomShare;
  const topLoss = lossOfStage_W_m2(top, upper, cells.numbers[STRIDE + K + stage] as number);
  const bottomLoss = lossOfStage_W_m2(bottom, lower, cells.numbers[cells.count * STRIDE + K + stage] as number);
  const intoTop = top.held ? fluxOfStage(cells, STRIDE, stage) : heatTop + (t[GIVEN] as number);
  const intoBottom = bottom.held
    ? -fluxOfStage(cells, (cells.count - 1) * STRIDE, stage)
    : heatBottom + (b[GIVEN] as number);
  t[NEXT_SUPPLIED] = (t[NEXT_SUPPLIED] as number) + weight_s * intoTop;
  b[NEXT_SUPPLIED] = (b[NEXT_SUPPLIED] as number) + weight_s * intoBottom;
  t[NEXT_LOST] = (t[NEXT_LOST] as number) + weight_s * topLoss;
  b[NEXT_LOST] = (b[NEXT_LOST] as number) + weight_s * bottomLoss;
  numbers[NEXT_PLUG] = (numbers[NEXT_PLUG] as number) + weight_s * plug;
  if (source !== undefined) {
    numbers[NEXT_SOURCED] =
      (numbers[NEXT_SOURCED] as number) + weight_s * source.now.reduce((sum, one) => sum + one, 0);
  }
}

/**
 * Takes the step that was tried last.
 *
 * @param slab - slab, moved to the step's end
 * @param step_s - length of that step [s]
 * @returns nothing
 * @source derived: plain assignment
 */
export function acceptStep(slab: Slab, step_s: number): void {
  acceptCells(slab.cells);
  acceptEnd(slab.top);
  acceptEnd(slab.bottom);
  const { numbers } = slab;
  numbers[PLUG_SO_FAR] = numbers[NEXT_PLUG] as number;
  numbers[SOURCED] = numbers[NEXT_SOURCED] as number;
  numbers[TIME] = (numbers[TIME] as number) + step_s;
}
