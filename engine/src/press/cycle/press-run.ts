import type { FusionParameters } from '../../fusion/parameters.ts';
import { copyCells, heatContent_J_m2 } from '../march/cells.ts';
import type { EndParts } from '../march/end.ts';
import { type Heaters, makeHeaters } from '../march/heaters.ts';
import type { LossLaw } from '../march/loss-law.ts';
import { type March, makeMarch } from '../march/march.ts';
import { makeSlab } from '../march/slab.ts';
import { type Column, columnEdges, makeColumns } from './columns.ts';
import { controlParts, startControl } from './controller.ts';
import type { CycleInput, Platen } from './cycle-input.ts';
import { type History, makeHistory } from './history.ts';
import type { PreparedPress } from './prepare-press.ts';
import { onePressure, type Pressures } from './pressure-spans.ts';
import { sampleColumns } from './readings.ts';

/** A press cycle on its way. */
export interface PressRun {
  readonly input: CycleInput;
  readonly fusion: FusionParameters;
  readonly march: March;
  readonly history: History;
  /** Of the history's places, the belt's come first, then the probes, then both platens. */
  readonly beltPlaces: number;
  readonly startHeat_J_m2: number;
  readonly samples: Samples;
  /** The earliest event of the step tried last. */
  readonly event: { kind: 'none' | 'goal' | 'top' | 'bottom'; at_s: number };
  /** What the phase in hand waits for. */
  readonly goal: Goals;
  readonly pressures: Pressures;
  /** Left and right of the middle, where asked for. */
  readonly columns: readonly Column[];
  /** True once a ramp has begun. */
  ramped: boolean;
  cooling: boolean;
  /** Hottest that a platen's sensor was when water was let in. */
  waterFrom_degC: number;
  steps: number;
  peakCurrent_A: number;
  /** When the least healed depth reached Z = 1. */
  bonded_s: number | null;
}

/** Temperatures that end a phase. */
export interface Goals {
  /** 1 where the sensor comes near its set point from below, -1 from above. */
  topWay: 1 | -1;
  bottomWay: 1 | -1;
  /** Cooling ends when both sensors are at or below it. */
  below_degC: number;
  /** Water is let into a platen when its sensor is at or below it; minus infinity when none waits. */
  topWater_degC: number;
  bottomWater_degC: number;
}

/** Values at the times asked for. */
export interface Samples {
  /** Ascending, with their place in the input. */
  readonly times_s: Float64Array;
  readonly order: readonly number[];
  taken: number;
  /** One row a time; `sampleColumns` says what stands in it. */
  readonly rows: Float64Array;
  readonly columns: number;
}

/** How exact a run is. */
export interface Exactness {
  /** Error allowed in one step. */
  readonly tolerance_K: number;
  /** Cells are multiplied by this odd number, for studies of the grid. */
  readonly refine: number;
}

const usual: Exactness = { tolerance_K: 0.01, refine: 1 };
const first_s = 0.5;
const mostTries = 400_000;

/**
 * A press cycle at the moment of switching on.
 *
 * @param input - checked input of a cycle
 * @param press - what `preparePress` made of it
 * @param tolerance_K - error allowed in one step [K]
 * @returns run
 * @source derived: plain allocation
 */
export function startRun(input: CycleInput, press: PreparedPress, tolerance_K: number = usual.tolerance_K): PressRun {
  const { cells, fusion, rates } = press;
  const { recipe, top, bottom } = input;
  const slab = makeSlab({
    cells: copyCells(cells),
    edges: columnEdges(input, cells),
    top: endParts(top, press.laws.top, input),
    bottom: endParts(bottom, press.laws.bottom, input),
    heaters: heatersOf(input),
  });
  startControl(slab.top, top.control);
  startControl(slab.bottom, bottom.control);
  return {
    input,
    fusion,
    march: makeMarch(slab, { tolerance_K, first_s, mostTries }),
    history: makeHistory(slab, press.placeTable, rates, fusion.meltWidth_K),
    beltPlaces: press.beltPlaces,
    startHeat_J_m2: heatContent_J_m2(slab.cells),
    samples: makeSamples(input.times_s ?? [], sampleColumns(input.probes.length)),
    event: { kind: 'none', at_s: 0 },
    goal: {
      topWay: 1,
      bottomWay: 1,
      below_degC: recipe.open_degC,
      topWater_degC: Number.NEGATIVE_INFINITY,
      bottomWater_degC: Number.NEGATIVE_INFINITY,
    },
    pressures: onePressure(recipe.pressure_Pa),
    columns: makeColumns(slab, press, recipe.pressure_Pa),
    ramped: false,
    cooling: false,
    waterFrom_degC: Number.NEGATIVE_INFINITY,
    steps: 0,
    peakCurrent_A: 0,
    bonded_s: null,
  };
}

function heatersOf({ supply, top, bottom }: CycleInput): Heaters {
  return makeHeaters({
    volts_V: supply.volts_V,
    lead_ohm: supply.leadResistance_ohm,
    top_S: top.heater_W / top.nominal_V ** 2,
    bottom_S: bottom.heater_W / bottom.nominal_V ** 2,
    area_m2: top.area_m2,
  });
}

/** The set point of a press that has just been switched on is what its sensors show. */
function endParts(platen: Platen, law: LossLaw | undefined, { ambient_degC, start_degC }: CycleInput): EndParts {
  return {
    held: false,
    capacity_J_m2K: platen.capacity_J_m2K,
    capacitySlope_1_K: platen.capacitySlope_1_K ?? 0,
    loss_W_m2K: platen.loss_W_m2K,
    ambient_degC,
    flux_W_m2: 0,
    start_degC: start_degC ?? ambient_degC,
    set_degC: start_degC ?? ambient_degC,
    law,
    ...controlParts(platen.control, platen.sensorLag_s),
  };
}

const noTimes = new Float64Array(0);

function makeSamples(times_s: readonly number[], columns: number): Samples {
  if (times_s.length === 0) return { times_s: noTimes, order: [], taken: 0, rows: noTimes, columns };
  const order = times_s.map((_, index) => index).sort((i, j) => (times_s[i] as number) - (times_s[j] as number));
  return {
    times_s: Float64Array.from(order, (index) => times_s[index] as number),
    order,
    taken: 0,
    rows: new Float64Array(times_s.length * columns).fill(Number.NaN),
    columns,
  };
}
