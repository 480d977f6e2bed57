import { balanceCells, fluxesWithSlopes, freezeCapacities, lookUpTemperatures } from './conduction.ts';
import { afterStep, type End, endAtStage, foldEnd, linearizeEnd, summedStage, unfoldEnd } from './end.ts';
import { driveHeaters } from './heaters.ts';
import { rodasp } from './rodas.ts';
import type { Slab, Source } from './slab.ts';
import { factorTridiagonal, solveTridiagonal } from './tridiagonal.ts';
import { weightedSum } from './weighted-sum.ts';

const { gamma, a, c, time, timeSlope, d2, d3 } = rodasp;
const lastStage = 5;

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
  fluxesWithSlopes(slab);
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
  if (slab.source !== undefined) sourceSlope(slab.source, slab.time_s, step_s);
  factorStep(slab, 1 / (step_s * gamma));
}

/** Matrix of the step: capacity over gamma h plus what flows to the neighbours. */
function factorStep(slab: Slab, inverse_1_s: number): void {
  const { count, diagonal, capacity, fluxByUpper, fluxByLower, top, bottom } = slab;
  const last = count - 1;
  diagonal[0] = (capacity[0] as number) * inverse_1_s + (fluxByUpper[0] as number);
  for (let i = 1; i < last; i += 1) {
    diagonal[i] = (capacity[i] as number) * inverse_1_s + (fluxByLower[i - 1] as number) + (fluxByUpper[i] as number);
  }
  diagonal[last] = (capacity[last] as number) * inverse_1_s + (fluxByLower[last - 1] as number);
  diagonal[0] = (diagonal[0] as number) + top.loss_W_m2K - slab.topByTop * top.shareSlope;
  diagonal[last] = (diagonal[last] as number) + bottom.loss_W_m2K - slab.bottomByBottom * bottom.shareSlope;
  factorTridiagonal(slab.factors, diagonal, fluxByUpper, fluxByLower);
  slab.coupled = slab.topByBottom !== 0 && (top.shareSlope !== 0 || bottom.shareSlope !== 0);
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
  stageTemperatures(slab, stage);
  if (stage > 0) {
    endAtStage(top, stage);
    endAtStage(bottom, stage);
  }
  driveHeaters(heaters, top.stageShare, bottom.stageShare);
  if (slab.source !== undefined) stageSource(slab.source, slab.time_s, stage, step_s);
  weightedSum(slab.sum, undefined, c[stage] ?? [], slab.k);
  balanceCells(slab, perStep_1_s, k);
  foldEnd(top, stage, slab.stage[0] as number, perStep_1_s);
  foldEnd(bottom, stage, slab.stage[last] as number, perStep_1_s);
  const topGain = heaters.top_W_m2 + top.flux_W_m2 - top.loss_W_m2K * ((slab.stage[0] as number) - top.ambient_degC);
  const bottomGain =
    heaters.bottom_W_m2 + bottom.flux_W_m2 - bottom.loss_W_m2K * ((slab.stage[last] as number) - bottom.ambient_degC);
  k[0] = (k[0] as number) + topGain + slab.topByTop * top.shareConstant + slab.topByBottom * bottom.shareConstant;
  k[last] =
    (k[last] as number) +
    bottomGain +
    slab.bottomByBottom * bottom.shareConstant +
    slab.bottomByTop * top.shareConstant;
  solveTridiagonal(slab.factors, k);
  if (slab.coupled) couplePlates(slab, k);
  unfoldEnd(top, stage, k[0] as number);
  unfoldEnd(bottom, stage, k[last] as number);
  sumHeat(slab, stage, step_s, k);
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

function stageTemperatures(slab: Slab, stage: number): void {
  const { linear, temperature, k } = slab;
  if (stage === lastStage) addTo(linear, k[stage - 1] as Float64Array);
  else weightedSum(linear, temperature, a[stage] ?? [], k);
  lookUpTemperatures(slab, linear, slab.stage);
}

function addTo(sum: Float64Array, more: Float64Array): void {
  for (let i = 0; i < sum.length; i += 1) sum[i] = (sum[i] as number) + (more[i] as number);
}

/** Heat supplied and lost, and energy at the plug, marched along with the temperatures so that they balance. */
function sumHeat(slab: Slab, stage: number, step_s: number, k: Float64Array): void {
  const { top, bottom, heaters, count, flux } = slab;
  const last = count - 1;
  const topFlux = top.held ? (flux[0] as number) : heaters.top_W_m2 + top.flux_W_m2;
  const bottomFlux = bottom.held ? -(flux[last - 1] as number) : heaters.bottom_W_m2 + bottom.flux_W_m2;
  const topChange = top.held
    ? -(slab.fluxByLower[0] as number) * (k[1] as number)
    : slab.topByTop * top.kShare + slab.topByBottom * bottom.kShare;
  const bottomChange = bottom.held
    ? -(slab.fluxByUpper[last - 1] as number) * (k[last - 1] as number)
    : slab.bottomByBottom * bottom.kShare + slab.bottomByTop * top.kShare;
  summedStage(top.kSupplied, stage, topFlux, topChange, step_s);
  summedStage(bottom.kSupplied, stage, bottomFlux, bottomChange, step_s);
  sumLoss(top, stage, slab.stage[0] as number, k[0] as number, step_s);
  sumLoss(bottom, stage, slab.stage[last] as number, k[last] as number, step_s);
  const plugChange = slab.plugByTop * top.kShare + slab.plugByBottom * bottom.kShare;
  summedStage(slab.kPlug, stage, heaters.plug_W, plugChange, step_s);
  if (slab.source !== undefined) {
    summedStage(
      slab.kSource,
      stage,
      slab.source.now.reduce((sum, one) => sum + one, 0),
      0,
      step_s,
    );
  }
}

function sumLoss(end: End, stage: number, plate_degC: number, kPlate: number, step_s: number): void {
  if (end.loss_W_m2K === 0) {
    end.kLost[stage] = 0;
    return;
  }
  const rate = end.loss_W_m2K * (plate_degC - end.ambient_degC);
  summedStage(end.kLost, stage, rate, end.loss_W_m2K * kPlate, step_s);
}

/** Half the central difference in time goes to `after`: the slope of the source [W/(m2*s)]. */
function sourceSlope(source: Source, time_s: number, step_s: number): void {
  const apart = 1e-3 * step_s;
  source.fill(time_s - apart, source.before);
  source.fill(time_s + apart, source.after);
  for (let i = 0; i < source.after.length; i += 1) {
    source.after[i] = ((source.after[i] as number) - (source.before[i] as number)) / (2 * apart);
  }
}

function stageSource(source: Source, time_s: number, stage: number, step_s: number): void {
  source.fill(time_s + step_s * (time[stage] as number), source.now);
  const weight_s = step_s * (timeSlope[stage] as number);
  for (let i = 0; i < source.now.length; i += 1) {
    source.now[i] = (source.now[i] as number) + weight_s * (source.after[i] as number);
  }
}

/** State at the step's end and the estimate of its error. */
function finish(slab: Slab): number {
  const { linear, nextLinear, next, count, top, bottom } = slab;
  const correction = slab.k[lastStage] as Float64Array;
  let error = 0;
  for (let i = 0; i < count; i += 1) {
    const own = correction[i] as number;
    nextLinear[i] = (linear[i] as number) + own;
    const size = own < 0 ? -own : own;
    if (size > error) error = size;
  }
  lookUpTemperatures(slab, nextLinear, next);
  finishEnd(top);
  finishEnd(bottom);
  slab.nextPlug_J = afterStep(slab.plug_J, slab.kPlug);
  if (slab.source !== undefined) slab.nextSourced_J_m2 = afterStep(slab.sourced_J_m2, slab.kSource);
  return Math.max(error, endError(top), endError(bottom));
}

function finishEnd(end: End): void {
  end.nextSensor_degC = end.stageSensor_degC + (end.kSensor[lastStage] as number);
  end.nextIntegral = end.stageIntegral + (end.kIntegral[lastStage] as number);
  end.nextSupplied_J_m2 = afterStep(end.supplied_J_m2, end.kSupplied);
  end.nextLost_J_m2 = afterStep(end.lost_J_m2, end.kLost);
}

/** How little the integral counts while the output is limited and only follows it. */
const limitedWeight = 0.02;

/** The integral counts as the error of the sensor that would ask for the same output. */
function endError(end: End): number {
  const sensor = Math.abs(end.kSensor[lastStage] as number);
  if (end.integralRate_1_Ks === 0) return sensor;
  const weight = end.following ? 1 : limitedWeight;
  return Math.max(sensor, (weight * Math.abs(end.kIntegral[lastStage] as number)) / end.gain_1_K);
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
  const { temperature, nextLinear, top, bottom } = slab;
  for (const { from, to, enthalpy_J_kg, specificHeat_J_kgK } of slab.tabled) {
    for (let i = from; i < to; i += 1) {
      const gained_K = (nextLinear[i] as number) - (temperature[i] as number);
      enthalpy_J_kg[i - from] =
        (enthalpy_J_kg[i - from] as number) + (specificHeat_J_kgK[i - from] as number) * gained_K;
    }
  }
  temperature.set(slab.next);
  acceptEnd(top);
  acceptEnd(bottom);
  slab.plug_J = slab.nextPlug_J;
  slab.sourced_J_m2 = slab.nextSourced_J_m2;
  slab.time_s += step_s;
}

function acceptEnd(end: End): void {
  end.sensor_degC = end.nextSensor_degC;
  end.integral = end.nextIntegral;
  end.supplied_J_m2 = end.nextSupplied_J_m2;
  end.lost_J_m2 = end.nextLost_J_m2;
}

/** Prepares the interpolation inside the step that was tried last. */
export function prepareInside(slab: Slab): void {
  weightedSum(slab.inside2, undefined, d2, slab.k);
  weightedSum(slab.inside3, undefined, d3, slab.k);
}

/** Cubic inside a step: at its start, at its end, and the two sums of the stages. */
function cubicInside(start: number, end: number, second: number, third: number, share: number): number {
  const rest = 1 - share;
  return start * rest + share * (end + rest * (second + share * third));
}

/** Temperatures of all unknowns at a share of the step tried last; needs `prepareInside`. */
export function temperaturesInside(slab: Slab, share: number, into: Float64Array): void {
  const { temperature, nextLinear, inside2, inside3, count } = slab;
  for (let i = 0; i < count; i += 1) {
    into[i] = cubicInside(
      temperature[i] as number,
      nextLinear[i] as number,
      inside2[i] as number,
      inside3[i] as number,
      share,
    );
  }
  lookUpTemperatures(slab, into, into);
}

function inside(start: number, end: number, k: Float64Array, share: number): number {
  let second = 0;
  let third = 0;
  for (let j = 0; j < lastStage; j += 1) {
    second += (d2[j] as number) * (k[j] as number);
    third += (d3[j] as number) * (k[j] as number);
  }
  return cubicInside(start, end, second, third, share);
}

/** What a sensor shows at a share of the step tried last [degC]. */
export function sensorInside(end: End, share: number): number {
  return inside(end.sensor_degC, end.nextSensor_degC, end.kSensor, share);
}

/** Integral part of a controller at a share of the step tried last [1]. */
export function integralInside(end: End, share: number): number {
  return inside(end.integral, end.nextIntegral, end.kIntegral, share);
}
