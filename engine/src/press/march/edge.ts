import { bendCells } from './bend-cells.ts';
import { type Cells, copyCells, record } from './cells.ts';
import { chain, EXTRA, lastLink } from './chain.ts';
import { factorCells, freezeCapacities, slopeFluxes } from './factor.ts';
import { acceptCells, finishCells } from './finish.ts';
import { startFluxes } from './flux.ts';
import type { Slab } from './slab.ts';
import { solveCells } from './solve.ts';
import { slopeSwitches, startSwitches } from './switch-flux.ts';

const { START, V, X, CAPACITY, HEAT, MASS, INVERSE, LINEAR, NEXT, OFF, STRIDE } = record;
/** Capacity of a plate that goes where it is told, whatever the stack takes from it. */
const told_J_m2K = 1e30;

/**
 * The same stack beside the middle of the platens, where they are off by a share of what they are above the air. It moves with the
 * middle, solution by solution; nothing of it goes back there.
 */
export interface Edge {
  readonly cells: Cells;
  readonly ambient_degC: number;
  /** Excess over the air there, over the middle's. */
  readonly topFactor: number;
  readonly bottomFactor: number;
}

/**
 * A stack beside the middle, at rest. T = T_a + f*(T_middle - T_a).
 *
 * @param middle - unknowns of the middle at their start
 * @param own - air [degC] and factors of both platens [1]
 * @returns edge
 * @source derived: plain allocation
 * @verified CYCLE-17 column as the middle
 */
export function makeEdge(middle: Cells, own: Omit<Edge, 'cells'>): Edge {
  const copy = copyCells(middle);
  const last = copy.count * STRIDE;
  const tabled = copy.tabled.filter(({ from }) => from > STRIDE && from < last);
  for (const j of [STRIDE, last]) {
    copy.numbers[j + MASS] = told_J_m2K;
    copy.numbers[j + HEAT] = 1;
    copy.numbers[j + CAPACITY] = told_J_m2K;
  }
  const edge = { ...own, cells: { ...copy, tabled } };
  follow(edge, middle, START);
  return edge;
}

/** Takes the temperature of both plates over from the middle. */
function follow({ cells, ambient_degC: air, topFactor, bottomFactor }: Edge, middle: Cells, field: number): void {
  const top = STRIDE + field;
  const bottom = cells.count * STRIDE + field;
  cells.numbers[top] = air + topFactor * ((middle.numbers[top] as number) - air);
  cells.numbers[bottom] = air + bottomFactor * ((middle.numbers[bottom] as number) - air);
}

/**
 * Prepares all edges of a slab for a step.
 *
 * @param slab - slab, its edges changed
 * @param step_s - length of the step [s]
 * @returns nothing
 * @source Rosenbrock method, see `chain.ts`
 */
export function prepareEdges({ edges }: Slab, step_s: number): void {
  for (let i = 0; i < edges.length; i += 1) {
    const { cells } = edges[i] as Edge;
    if (cells.sloped) slopeFluxes(cells);
    slopeSwitches(cells);
    freezeCapacities(cells);
    factorCells(cells, 1 / (step_s * chain.gamma), 0, 0);
    startFluxes(cells);
    startSwitches(cells);
  }
}

/**
 * What the edges' stacks bend at a stage; the plates lie as far off their straight line as those of the middle say.
 *
 * @param slab - slab with the stage, its edges changed
 * @param stage - number of the stage [1], 1 to 5
 * @param link - which solution comes next [1]
 * @returns nothing
 * @source Rosenbrock method, see `chain.ts`
 */
export function bendEdges({ edges, cells: middle }: Slab, stage: number, link: number): void {
  for (let i = 0; i < edges.length; i += 1) {
    const { cells, topFactor, bottomFactor } = edges[i] as Edge;
    const bottom = cells.count * STRIDE + OFF;
    cells.numbers[STRIDE + OFF] = topFactor * (middle.numbers[STRIDE + OFF] as number);
    cells.numbers[bottom] = bottomFactor * (middle.numbers[bottom] as number);
    bendCells(cells, stage, link);
  }
}

/**
 * One solution of the edges, once the middle's is known.
 *
 * @param slab - slab with the solution, its edges changed
 * @param link - which solution [1]
 * @returns nothing
 * @source Rosenbrock method, see `chain.ts`: unknowns that depend on others, not the other way round
 * @verified CYCLE-17 column as the middle
 */
export function solveEdges({ edges, cells: middle }: Slab, link: number): void {
  const own = link === EXTRA ? X : V + link;
  for (let i = 0; i < edges.length; i += 1) {
    const { cells, topFactor, bottomFactor } = edges[i] as Edge;
    const { numbers, count } = cells;
    const last = count * STRIDE;
    const [top, bottom] = [middle.numbers[STRIDE + own] as number, middle.numbers[last + own] as number];
    numbers[STRIDE + own] = (topFactor * top) / (numbers[STRIDE + INVERSE] as number);
    numbers[last + own] = (bottomFactor * bottom) / (numbers[last + INVERSE] as number);
    solveCells(cells, own, own);
  }
}

/**
 * All solutions of the edges where nothing bends.
 *
 * @param slab - slab with its solutions, its edges changed
 * @returns nothing
 * @source Rosenbrock method, see `chain.ts`
 */
export function solveStraightEdges(slab: Slab): void {
  for (let link = 0; link <= lastLink; link += 1) solveEdges(slab, link);
}

/**
 * Temperatures of the edges at the step's end.
 *
 * @param slab - slab at the step's end, its edges changed
 * @returns estimated error, the largest of the edges [K]
 * @source Rosenbrock method, see `chain.ts`
 */
export function finishEdges({ edges, cells: middle, bent }: Slab): number {
  let error = 0;
  for (let i = 0; i < edges.length; i += 1) {
    const edge = edges[i] as Edge;
    error = Math.max(error, finishCells(edge.cells, bent));
    follow(edge, middle, LINEAR);
    follow(edge, middle, NEXT);
  }
  return error;
}

/**
 * Takes the step that was tried last.
 *
 * @param slab - slab, its edges moved to the step's end
 * @returns nothing
 * @source derived: plain assignment
 */
export function acceptEdges({ edges }: Slab): void {
  for (let i = 0; i < edges.length; i += 1) acceptCells((edges[i] as Edge).cells);
}
