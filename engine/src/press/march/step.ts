import { balanceCells, fluxesWithSlopes, freezeCapacities, lookUpTemperatures } from './conduction.ts';
import { acceptEnd, endAtStage, finishEnd, foldEnd, linearizeEnd, unfoldEnd } from './end.ts';
import { driveHeaters } from './heaters.ts';
import { lastStage, quadratureWeights, rodasp } from './rodas.ts';
import type { Slab } from './slab.ts';
import { sourceAtStage, sourceSlope } from './source.ts';
import { sumStages } from './stage-sums.ts';
import { factorTridiagonal, solveTridiagonal } from './tridiagonal.ts';

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
  return finish(slab);
}

function prepare(slab: Slab, step_s: number): void {
  const { top, bottom, heaters } = slab;
  freezeCapacities(slab);
  if (slab.grid.slopes) fluxesWithSlopes(slab);
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
  factorStep(slab, 1 / (step_s * gamma));
}

/** Matrix of the step: capacity over gamma h plus what flows to the neighbours. */
function factorStep(slab: Slab, inverse_1_s: number): void {
  const { count, diagonal, capacity, fluxByUpper, fluxByLower, top, bottom } = slab;
  const last = count - 1;
  let fromAbove = top.loss_W_m2K - slab.topByTop * top.shareSlope;
  for (let i = 0; i < last; i += 1) {
    diagonal[i] = (capacity[i] as number) * inverse_1_s + fromAbove + (fluxByUpper[i] as number);
    fromAbove = fluxByLower[i] as number;
  }
  diagonal[last] =
    (capacity[last] as number) * inverse_1_s + fromAbove + bottom.loss_W_m2K - slab.bottomByBottom * bottom.shareSlope;
  factorTridiagonal(slab.factors, diagonal, fluxByUpper, fluxByLower);
  slab.coupled = slab.topByBottom * bottom.shareSlope !== 0 || slab.bottomByTop * top.shareSlope !== 0;
  if (slab.coupled) respond(slab);
}

/** Responses to a unit at either plate. */
function respond({ fromTop, fromBottom, factors, count }: Slab): void {
  fromTop.fill(0);
  fromTop[0] = 1;
  solveTridiagonal(factors, fromTop);
  fromBottom.fill(0);
  fromBottom[count - 1] = 1;
  solveTridiagonal(factors, fromBottom);
}

function runStage(slab: Slab, stage: number, step_s: number): void {
  const { top, bottom, heaters, count } = slab;
  const k = slab.k[stage] as Float64Array;
  const last = count - 1;
  const perStep_1_s = 1 / step_s;
  sumStages(slab, stage);
  lookUpTemperatures(slab, slab.linear, slab.stage);
  if (stage > 0) {
    endAtStage(top, stage);
    endAtStage(bottom, stage);
    driveHeaters(heaters, top.stageShare, bottom.stageShare);
  }
  if (slab.source !== undefined) sourceAtStage(slab.source, slab.time_s, stage, step_s);
  balanceCells(slab, perStep_1_s, k);
  balancePlates(slab, stage, perStep_1_s, k);
  solveTridiagonal(slab.factors, k);
  if (slab.coupled) couplePlates(slab, k);
  unfoldEnd(top, stage, k[0] as number);
  unfoldEnd(bottom, stage, k[last] as number);
  sumHeat(slab, step_s * (quadratureWeights[stage] as number), k);
}

/** Adds heaters, given heat and losses to the plates' rows, with sensors and controllers folded in. */
function balancePlates(slab: Slab, stage: number, perStep_1_s: number, k: Float64Array): void {
  const { top, bottom, heaters } = slab;
  const last = slab.count - 1;
  const upper = slab.stage[0] as number;
  const lower = slab.stage[last] as number;
  foldEnd(top, stage, upper, perStep_1_s);
  foldEnd(bottom, stage, lower, perStep_1_s);
  const topFolded = slab.topByTop * top.shareConstant + slab.topByBottom * bottom.shareConstant;
  const bottomFolded = slab.bottomByBottom * bottom.shareConstant + slab.bottomByTop * top.shareConstant;
  const topGain = heaters.top_W_m2 + top.flux_W_m2 - top.loss_W_m2K * (upper - top.ambient_degC);
  const bottomGain = heaters.bottom_W_m2 + bottom.flux_W_m2 - bottom.loss_W_m2K * (lower - bottom.ambient_degC);
  k[0] = (k[0] as number) + topGain + topFolded;
  k[last] = (k[last] as number) + bottomGain + bottomFolded;
}

/** The lead's drop makes each plate's row depend on the other controller: correction of rank two. */
function couplePlates(slab: Slab, x: Float64Array): void {
  const { fromTop, fromBottom, count, top, bottom } = slab;
  const last = count - 1;
  const down = slab.topByBottom * bottom.shareSlope;
  const up = slab.bottomByTop * top.shareSlope;
  const a00 = 1 - up * (fromBottom[0] as number);
  const a01 = -down * (fromTop[0] as number);
  const a10 = -up * (fromBottom[last] as number);
  const a11 = 1 - down * (fromTop[last] as number);
  const determinant = a00 * a11 - a01 * a10;
  const first = ((x[0] as number) * a11 - a01 * (x[last] as number)) / determinant;
  const second = (a00 * (x[last] as number) - a10 * (x[0] as number)) / determinant;
  const topShare = down * second;
  const bottomShare = up * first;
  for (let i = 0; i < count; i += 1) {
    x[i] = (x[i] as number) + topShare * (fromTop[i] as number) + bottomShare * (fromBottom[i] as number);
  }
}

/** Heat supplied and lost, and energy at the plug, summed with the stages' own weights so that they balance. */
function sumHeat(slab: Slab, weight_s: number, k: Float64Array): void {
  const { top, bottom, heaters, stage, count, flux, source } = slab;
  const last = count - 1;
  const first = k[0] as number;
  const final = k[last] as number;
  const topFlux = top.held
    ? (flux[0] as number) - (slab.fluxByLower[0] as number) * (k[1] as number)
    : heaters.top_W_m2 + top.flux_W_m2 + slab.topByTop * top.kShare + slab.topByBottom * bottom.kShare;
  const bottomFlux = bottom.held
    ? -(flux[last - 1] as number) - (slab.fluxByUpper[last - 1] as number) * (k[last - 1] as number)
    : heaters.bottom_W_m2 + bottom.flux_W_m2 + slab.bottomByBottom * bottom.kShare + slab.bottomByTop * top.kShare;
  top.nextSupplied_J_m2 += weight_s * topFlux;
  bottom.nextSupplied_J_m2 += weight_s * bottomFlux;
  top.nextLost_J_m2 += weight_s * top.loss_W_m2K * ((stage[0] as number) - top.ambient_degC + first);
  bottom.nextLost_J_m2 += weight_s * bottom.loss_W_m2K * ((stage[last] as number) - bottom.ambient_degC + final);
  slab.nextPlug_J += weight_s * (heaters.plug_W + slab.plugByTop * top.kShare + slab.plugByBottom * bottom.kShare);
  if (source !== undefined) for (const own_W_m2 of source.now) slab.nextSourced_J_m2 += weight_s * own_W_m2;
}

/** State at the step's end and the estimate of its error. */
function finish(slab: Slab): number {
  const { linear, nextLinear, next, count, top, bottom } = slab;
  const correction = slab.k[lastStage] as Float64Array;
  let error = 0;
  for (let i = 0; i < count; i += 1) {
    const own = correction[i] as number;
    const end = (linear[i] as number) + own;
    nextLinear[i] = end;
    next[i] = end;
    error = Math.max(error, Math.abs(own));
  }
  lookUpTemperatures(slab, nextLinear, next);
  return Math.max(error, finishEnd(top), finishEnd(bottom));
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
  const { temperature, next, nextLinear, tabled, count } = slab;
  for (let t = 0; t < tabled.length; t += 1) {
    const cells = tabled[t];
    if (cells === undefined) continue;
    const { from, to, enthalpy_J_kg, specificHeat_J_kgK } = cells;
    for (let i = from; i < to; i += 1) {
      const gained_J_kg =
        (specificHeat_J_kgK[i - from] as number) * ((nextLinear[i] as number) - (temperature[i] as number));
      enthalpy_J_kg[i - from] = (enthalpy_J_kg[i - from] as number) + gained_J_kg;
    }
  }
  for (let i = 0; i < count; i += 1) temperature[i] = next[i] as number;
  acceptEnd(slab.top);
  acceptEnd(slab.bottom);
  slab.plug_J = slab.nextPlug_J;
  slab.sourced_J_m2 = slab.nextSourced_J_m2;
  slab.time_s += step_s;
}
