import { bendCells } from './bend-cells.ts';
import { bendField } from './bend-field.ts';
import { bendPlates } from './bend-plates.ts';
import { record } from './cells.ts';
import { chain, EXTRA, lastLink } from './chain.ts';
import { couplePlates, respondToPlates } from './couple.ts';
import { acceptEdges, bendEdges, finishEdges, prepareEdges, solveEdges, solveStraightEdges } from './edge.ts';
import { acceptEnd, type End, endField } from './end.ts';
import { linearizeLoss } from './end-loss.ts';
import { factorCells, freezeCapacities, slopeFluxes } from './factor.ts';
import { acceptCells, finishCells } from './finish.ts';
import { startFluxes } from './flux.ts';
import { finishEnd, foldEnd, linearizeEnd, settleEnd, unfoldEnd } from './fold.ts';
import { driveHeaters, heaterField, slopeHeaters } from './heaters.ts';
import { type Slab, slabField } from './slab.ts';
import { solveCells } from './solve.ts';
import { addSource, fillSource } from './source.ts';
import { sumHeat } from './sum-heat.ts';
import { slopeSwitches, startSwitches } from './switch-flux.ts';

const { START, V, X, STRIDE } = record;
const { GIVEN, SHARE_SLOPE, START_SHARE, START_LOSS, SHARE_CONSTANT, OFF, V_SENSOR } = endField;
const { START_TOP, START_BOTTOM } = heaterField;
const { TOP_BY_TOP, TOP_BY_BOTTOM, BOTTOM_BY_TOP, BOTTOM_BY_BOTTOM } = heaterField;
const { TIME, PLUG: PLUG_SO_FAR, NEXT_PLUG, SOURCED, NEXT_SOURCED } = slabField;

/**
 * Tries one step of a slab without taking it: `acceptStep` takes it, another try replaces it.
 *
 * @param slab - slab at the start of the step; its `next` fields are overwritten
 * @param step_s - length of the step [s], > 0
 * @returns estimated error of the step, the largest over plates, cells, sensors and controllers [K]
 * @source Rosenbrock method RODASP as a chain of solutions, see `rodas.ts` and `chain.ts`
 * @verified MARCH-01 order in time
 */
export function tryStep(slab: Slab, step_s: number): number {
  const { cells, top, bottom } = slab;
  prepare(slab, step_s);
  startFluxes(cells);
  startSwitches(cells);
  prepareEdges(slab, step_s);
  if (slab.bent || top.following || bottom.following) solveBent(slab);
  else solveStraight(slab);
  if (!top.following) settleEnd(top, cells.numbers, STRIDE, slab.bent);
  if (!bottom.following) settleEnd(bottom, cells.numbers, cells.count * STRIDE, slab.bent);
  sumHeat(slab, step_s);
  const error = Math.max(finishCells(cells, slab.bent), finishEnd(top), finishEnd(bottom));
  return slab.edges.length === 0 ? error : Math.max(error, finishEdges(slab));
}

function prepare(slab: Slab, step_s: number): void {
  const { top, bottom, heaters, cells, numbers, source } = slab;
  if (cells.sloped) slopeFluxes(cells);
  slopeSwitches(cells);
  linearizeEnd(top, step_s);
  linearizeEnd(bottom, step_s);
  driveHeaters(heaters, top.numbers[START_SHARE] as number, bottom.numbers[START_SHARE] as number);
  slopeHeaters(heaters);
  if (source !== undefined) fillSource(source, numbers[TIME] as number, step_s);
  freezeCapacities(cells);
  const upperSlope = top.numbers[SHARE_SLOPE] as number;
  const lowerSlope = bottom.numbers[SHARE_SLOPE] as number;
  const topLoss = linearizeLoss(top, cells.numbers[STRIDE + START] as number);
  const bottomLoss = linearizeLoss(bottom, cells.numbers[cells.count * STRIDE + START] as number);
  const atTop = topLoss - (heaters[TOP_BY_TOP] as number) * upperSlope;
  const atBottom = bottomLoss - (heaters[BOTTOM_BY_BOTTOM] as number) * lowerSlope;
  factorCells(cells, 1 / (step_s * chain.gamma), atTop, atBottom);
  slab.coupled = heaters[TOP_BY_BOTTOM] !== 0 && heaters[BOTTOM_BY_TOP] !== 0 && (upperSlope !== 0 || lowerSlope !== 0);
  if (slab.coupled) respondToPlates(cells);
  slab.bent = slab.coupled || slab.losing || cells.bent.length > 0 || source !== undefined;
}

/** Nothing to add to any solution but the first: what enters and leaves the plates then. */
function solveStraight(slab: Slab): void {
  const { top, bottom, heaters, cells } = slab;
  const { numbers } = cells;
  const last = cells.count * STRIDE;
  numbers[STRIDE + V] = (numbers[STRIDE + V] as number) + startHeat(top, heaters[START_TOP] as number);
  numbers[last + V] = (numbers[last + V] as number) + startHeat(bottom, heaters[START_BOTTOM] as number);
  solveCells(cells, V, V + lastLink);
  if (slab.edges.length > 0) solveStraightEdges(slab);
}

function startHeat({ numbers: e }: End, heater_W_m2: number): number {
  return heater_W_m2 + (e[GIVEN] as number) - (e[START_LOSS] as number);
}

function solveBent(slab: Slab): void {
  clearBends(slab);
  solveLink(slab, 0);
  if (slab.bent) {
    bendStage(slab, 1, EXTRA);
    solveLink(slab, EXTRA);
  }
  for (let link = 1; link <= lastLink; link += 1) {
    if (slab.bent) bendStage(slab, link + 1, link);
    solveLink(slab, link);
  }
}

/** By hand: for so few numbers `fill` takes longer. */
function clearBends({ bends, top, bottom }: Slab): void {
  for (let i = 0; i < bends.length; i += 1) bends[i] = 0;
  for (let i: number = OFF; i < V_SENSOR; i += 1) {
    top.numbers[i] = 0;
    bottom.numbers[i] = 0;
  }
}

function bendStage(slab: Slab, stage: number, link: number): void {
  bendCells(slab.cells, stage, link);
  bendPlates(slab, stage, link);
  if (slab.edges.length > 0) bendEdges(slab, stage, link);
}

function solveLink(slab: Slab, link: number): void {
  const { top, bottom, cells, source } = slab;
  const { numbers, count } = cells;
  const own = link === EXTRA ? X : V + link;
  const last = count * STRIDE;
  if (source !== undefined) addSource(source, cells, link);
  if (top.following) foldEnd(top, link, numbers[STRIDE + START] as number);
  if (bottom.following) foldEnd(bottom, link, numbers[last + START] as number);
  drivePlates(slab, link, own);
  solveCells(cells, own, own);
  if (slab.coupled) couplePlates(slab, own);
  if (top.following) unfoldEnd(top, link, numbers[STRIDE + own] as number);
  if (bottom.following) unfoldEnd(bottom, link, numbers[last + own] as number);
  if (slab.edges.length > 0) solveEdges(slab, link);
}

/** Heaters, given heat and losses of the plates, with sensors and controllers folded in. */
function drivePlates({ top, bottom, heaters: h, cells, bends }: Slab, link: number, own: number): void {
  const topShare = top.following ? (top.numbers[SHARE_CONSTANT] as number) : 0;
  const bottomShare = bottom.following ? (bottom.numbers[SHARE_CONSTANT] as number) : 0;
  const topFolded = (h[TOP_BY_TOP] as number) * topShare + (h[TOP_BY_BOTTOM] as number) * bottomShare;
  const bottomFolded = (h[BOTTOM_BY_BOTTOM] as number) * bottomShare + (h[BOTTOM_BY_TOP] as number) * topShare;
  let intoTop = topFolded + (bends[bendField.TOP] as number) - (bends[bendField.TOP_LOSS] as number);
  let intoBottom = bottomFolded + (bends[bendField.BOTTOM] as number) - (bends[bendField.BOTTOM_LOSS] as number);
  if (link === 0) {
    intoTop += startHeat(top, h[START_TOP] as number);
    intoBottom += startHeat(bottom, h[START_BOTTOM] as number);
  }
  const { numbers } = cells;
  const first = STRIDE + own;
  const last = cells.count * STRIDE + own;
  numbers[first] = (numbers[first] as number) + intoTop;
  numbers[last] = (numbers[last] as number) + intoBottom;
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
  acceptEdges(slab);
  acceptEnd(slab.top);
  acceptEnd(slab.bottom);
  const { numbers } = slab;
  numbers[PLUG_SO_FAR] = numbers[NEXT_PLUG] as number;
  numbers[SOURCED] = numbers[NEXT_SOURCED] as number;
  numbers[TIME] = (numbers[TIME] as number) + step_s;
}
