import { type Cells, copyCells } from '../march/cells.ts';
import { type Edge, makeEdge } from '../march/edge.ts';
import type { Slab } from '../march/slab.ts';
import { beltResult, gradeOfBelt } from './belt-result.ts';
import type { CycleInput } from './cycle-input.ts';
import type { ColumnResult, Cycle } from './cycle-result.ts';
import { type History, makeHistory } from './history.ts';
import { placeTable } from './place-table.ts';
import type { PreparedPress } from './prepare-press.ts';
import type { PressRun } from './press-run.ts';
import { closePressures, onePressure, type Pressures } from './pressure-spans.ts';
import { highestSetPoints, recipePlan } from './recipe-plan.ts';

/** The belt left or right of the middle. */
export interface Column {
  readonly history: History;
  /** The slab with this column's stack in the place of the middle's. */
  readonly view: Slab;
  readonly pressures: Pressures;
}

/**
 * Stacks left and right of the middle. A platen cools at its edges in proportion to its excess over the air, so that its deviation
 * grows with that excess: T = T_a + (T_middle - T_a)*(1 + deviation/(set - T_a)).
 *
 * @param input - checked input of a cycle
 * @param middle - unknowns of the middle at their start
 * @returns left and right edge; none without columns
 * @validity platen in balance across its width; sensors in the middle; no heat sideways through the stack
 * @source derived: fin with a uniform source is linear in its excess, see `edgeCoolness_K`
 * @verified CYCLE-17 excess of a linear stack
 */
export function columnEdges(input: CycleInput, middle: Cells): Edge[] {
  const { columns, ambient_degC, recipe } = input;
  if (columns === undefined) return [];
  const { top_degC, bottom_degC } = highestSetPoints(recipePlan(recipe));
  return [columns.left_K, columns.right_K].map((deviation_K) =>
    makeEdge(copyCells(middle), {
      ambient_degC,
      topFactor: 1 + deviation_K / (top_degC - ambient_degC),
      bottomFactor: 1 + deviation_K / (bottom_degC - ambient_degC),
    }),
  );
}

/**
 * Columns of a run that has not begun.
 *
 * @param slab - slab with its edges
 * @param press - press that the run is made of
 * @param pressure_Pa - pressure on the belt [Pa]
 * @returns one column an edge
 * @source derived: plain allocation
 */
export function makeColumns(slab: Slab, press: PreparedPress, pressure_Pa: number): Column[] {
  if (slab.edges.length === 0) return [];
  const { places, beltPlaces, rates, fusion } = press;
  const own = placeTable(slab.cells, [...places.slice(0, beltPlaces), ...places.slice(-2)]);
  return slab.edges.map(({ cells }) => {
    const view = { ...slab, cells };
    return { history: makeHistory(view, own, rates, fusion.meltWidth_K), view, pressures: onePressure(pressure_Pa) };
  });
}

/** Worst first. */
const order = ['voids-likely', 'over-fused', 'under-fused', 'not-filled', 'good'] as const;

/**
 * What became of the belt in each column, and which is worst: by its grade, among equals by bond times fill times molar mass.
 *
 * @param run - finished run
 * @param centre - what became of it in the middle
 * @returns columns, or nothing where none were asked for
 * @source derived: plain comparison
 * @verified CYCLE-17 column as the middle
 */
export function columnResults(run: PressRun, centre: ColumnResult): Pick<Cycle, 'columns'> {
  const { fusion, beltPlaces } = run;
  const [left, right] = run.columns.map(({ history, pressures }): ColumnResult => {
    closePressures(pressures, history, beltPlaces);
    const belt = beltResult({ fusion, beltPlaces, history }, pressures);
    return { belt, ...gradeOfBelt(fusion, pressures, belt) };
  });
  if (left === undefined || right === undefined) return {};
  const share = ({ belt }: ColumnResult) =>
    belt.bondMin * Math.min(1, belt.fillMin_m / fusion.fillNeeded_m) * belt.molarMassShareMin;
  const rank = (one: ColumnResult) => order.indexOf(one.grade) + Math.min(0.99, share(one));
  const all = { left, centre, right };
  const names = ['centre', 'left', 'right'] as const;
  const worst = names.reduce((least, name) => (rank(all[name]) < rank(all[least]) ? name : least));
  return { columns: { ...all, worst } };
}
