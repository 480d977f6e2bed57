import { type Cells, FLUX, K, LOWER, SOURCE, STRIDE, UPPER } from './cells.ts';
import { couplePlates, respondToPlates } from './couple.ts';
import { acceptEnd, endAtStage, finishEnd, foldEnd, linearizeEnd, unfoldEnd } from './end.ts';
import { driveHeaters } from './heaters.ts';
import { lastStage, quadratureWeights, rodasp } from './rodas.ts';
import type { Slab } from './slab.ts';
import { sourceAtStage, sourceSlope } from './source.ts';
import { acceptCells, factorCells, finishCells, slopeFluxes, stageTemperature, sweepDown, sweepUp } from './sweeps.ts';

const { gamma } = rodasp;

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
  const { top, bottom, heaters, cells } = slab;
  if (cells.sloped) slopeFluxes(cells);
  linearizeEnd(top, step_s);
  linearizeEnd(bottom, step_s);
  endAtStage(top, 0);
  endAtStage(bottom, 0);
  driveHeaters(heaters, top.stageShare, bottom.stageShare);
  slab.topByTop = heaters.topByTop;
  slab.topByBottom = heaters.topByBottom;
  slab.bottomByTop = heaters.bottomByTop;
  slab.bottomByBottom = heaters.bottomByBottom;
  slab.plugByTop = heaters.plugByTop;
  slab.plugByBottom = heaters.plugByBottom;
  slab.nextPlug_J = slab.plug_J;
  slab.nextSourced_J_m2 = slab.sourced_J_m2;
  if (slab.source !== undefined) sourceSlope(slab.source, slab.time_s, step_s);
  const atTop = top.loss_W_m2K - slab.topByTop * top.shareSlope;
  const atBottom = bottom.loss_W_m2K - slab.bottomByBottom * bottom.shareSlope;
  factorCells(cells, 1 / (step_s * gamma), atTop, atBottom);
  slab.coupled = slab.topByBottom * bottom.shareSlope !== 0 || slab.bottomByTop * top.shareSlope !== 0;
  if (slab.coupled) respondToPlates(cells);
}

function runStage(slab: Slab, stage: number, step_s: number): void {
  const { top, bottom, heaters, cells } = slab;
  const perStep_1_s = 1 / step_s;
  if (stage > 0) {
    endAtStage(top, stage);
    endAtStage(bottom, stage);
    if (top.following || bottom.following) driveHeaters(heaters, top.stageShare, bottom.stageShare);
  }
  const upper = stageTemperature(cells, STRIDE, stage);
  const lower = stageTemperature(cells, cells.count * STRIDE, stage);
  foldEnd(top, stage, upper, perStep_1_s);
  foldEnd(bottom, stage, lower, perStep_1_s);
  if (slab.source !== undefined) sourceAtStage(slab.source, slab.time_s, stage, step_s, cells);
  drivePlates(slab, upper, lower);
  sweepDown(cells, stage, perStep_1_s);
  sweepUp(cells, stage);
  if (slab.coupled) couplePlates(slab, stage);
  const { numbers } = cells;
  unfoldEnd(top, stage, numbers[STRIDE + K + stage] as number);
  unfoldEnd(bottom, stage, numbers[cells.count * STRIDE + K + stage] as number);
  sumHeat(slab, stage, step_s * (quadratureWeights[stage] as number), upper, lower);
}

/** Heaters, given heat and losses of the plates, with sensors and controllers folded in. */
function drivePlates(slab: Slab, upper: number, lower: number): void {
  const { top, bottom, heaters } = slab;
  const { numbers, count } = slab.cells;
  const topFolded = slab.topByTop * top.shareConstant + slab.topByBottom * bottom.shareConstant;
  const bottomFolded = slab.bottomByBottom * bottom.shareConstant + slab.bottomByTop * top.shareConstant;
  numbers[STRIDE + SOURCE] = heaters.top_W_m2 + top.flux_W_m2 - top.loss_W_m2K * (upper - top.ambient_degC) + topFolded;
  numbers[count * STRIDE + SOURCE] =
    heaters.bottom_W_m2 + bottom.flux_W_m2 - bottom.loss_W_m2K * (lower - bottom.ambient_degC) + bottomFolded;
}

/** Heat supplied and lost, and energy at the plug, summed with the stages' own weights so that they balance. */
function sumHeat(slab: Slab, stage: number, weight_s: number, upper: number, lower: number): void {
  const { top, bottom, heaters, source } = slab;
  const { numbers, count } = slab.cells;
  const first = numbers[STRIDE + K + stage] as number;
  const last = numbers[count * STRIDE + K + stage] as number;
  const topFlux = top.held
    ? fluxIn(slab.cells, stage)
    : heaters.top_W_m2 + top.flux_W_m2 + slab.topByTop * top.kShare + slab.topByBottom * bottom.kShare;
  const bottomFlux = bottom.held
    ? -fluxOut(slab.cells, stage)
    : heaters.bottom_W_m2 + bottom.flux_W_m2 + slab.bottomByBottom * bottom.kShare + slab.bottomByTop * top.kShare;
  top.nextSupplied_J_m2 += weight_s * topFlux;
  bottom.nextSupplied_J_m2 += weight_s * bottomFlux;
  top.nextLost_J_m2 += weight_s * top.loss_W_m2K * (upper - top.ambient_degC + first);
  bottom.nextLost_J_m2 += weight_s * bottom.loss_W_m2K * (lower - bottom.ambient_degC + last);
  slab.nextPlug_J += weight_s * (heaters.plug_W + slab.plugByTop * top.kShare + slab.plugByBottom * bottom.kShare);
  if (source !== undefined) for (const own_W_m2 of source.now) slab.nextSourced_J_m2 += weight_s * own_W_m2;
}

/** From a held upper plate into the first cell, with its change over the stage. */
function fluxIn({ numbers }: Cells, stage: number): number {
  return (
    (numbers[STRIDE + FLUX] as number) -
    (numbers[STRIDE + LOWER] as number) * (numbers[2 * STRIDE + K + stage] as number)
  );
}

/** From the last cell into a held lower plate, with its change over the stage. */
function fluxOut({ numbers, count }: Cells, stage: number): number {
  const j = (count - 1) * STRIDE;
  return (numbers[j + FLUX] as number) + (numbers[j + UPPER] as number) * (numbers[j + K + stage] as number);
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
  slab.plug_J = slab.nextPlug_J;
  slab.sourced_J_m2 = slab.nextSourced_J_m2;
  slab.time_s += step_s;
}
