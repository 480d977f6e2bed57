import { heatContent_J_m2 } from '../march/cells.ts';
import { endField } from '../march/end.ts';
import { slabField } from '../march/slab.ts';
import { beltResult, fusionOf, gradeOfBelt } from './belt-result.ts';
import { columnResults } from './columns.ts';
import type { Cycle, PlatenResult, ProbeResult, SensorResult, Values } from './cycle-result.ts';
import type { PressRun } from './press-run.ts';
import { closePressures, flowAt, lastSpan, spanAt } from './pressure-spans.ts';
import { rateCount } from './rate-table.ts';
import { highestSetPoints, recipePlan } from './recipe-plan.ts';

const { SUPPLIED, LOST } = endField;

/** Times of a finished run and the temperatures of its places then. */
export interface Marks {
  readonly ready_s: number;
  readonly dwellEnd_s: number;
  /** When the heaters go off for good. */
  readonly coolStart_s: number;
  readonly open_s: number;
  /** Of each step that the recipe gives. */
  readonly stepEnds_s: number[];
  readonly atReady: Float64Array;
  readonly atDwellEnd: Float64Array;
}

const joulesPerWattHour = 3600;
type Three = [number, number, number];

/**
 * Result of a finished run.
 *
 * @param run - run at its opening
 * @param marks - its times and the temperatures at them
 * @returns cycle
 * @source derived: extremes, means and sums over the run
 * @verified CYCLE-01 ready
 */
export function resultOf(run: PressRun, marks: Marks): Cycle {
  const { input, march } = run;
  const { ready_s, dwellEnd_s, coolStart_s, open_s, stepEnds_s } = marks;
  const { top, bottom } = march.slab;
  closePressures(run.pressures, run.history, run.beltPlaces);
  const belt = beltResult(run, run.pressures);
  const graded = gradeOfBelt(run.fusion, run.pressures, belt);
  const area_m2 = input.top.area_m2;
  const supplied_J_m2 = (top.numbers[SUPPLIED] as number) + (bottom.numbers[SUPPLIED] as number);
  const lost_J_m2 = (top.numbers[LOST] as number) + (bottom.numbers[LOST] as number);
  const stored_J_m2 = heatContent_J_m2(march.slab.cells) - run.startHeat_J_m2;
  const { control_W = 0, fan_W = 0 } = input.supply;
  const plug_J = march.slab.numbers[slabField.PLUG] as number;
  return {
    status: 'ok',
    marks: {
      ready_s,
      dwellEnd_s,
      open_s,
      bonded_s: run.bonded_s,
      ...(input.recipe.steps !== undefined && { stepEnds_s }),
    },
    probes: input.probes.map((_, index) => probeResult(run, marks, index)),
    platens: { top: platenResult(run, 0), bottom: platenResult(run, 1) },
    sensors: { top: sensorResult(run, 2), bottom: sensorResult(run, 3) },
    belt,
    energy_Wh: (plug_J + control_W * open_s + fan_W * (open_s - coolStart_s)) / joulesPerWattHour,
    heaterEnergy_Wh: (supplied_J_m2 * area_m2) / joulesPerWattHour,
    leadEnergy_Wh: (plug_J - supplied_J_m2 * area_m2) / joulesPerWattHour,
    peakCurrent_A: run.peakCurrent_A,
    balanceResidual:
      Math.abs(stored_J_m2 + lost_J_m2 - supplied_J_m2) / Math.max(supplied_J_m2, Math.abs(stored_J_m2), 1),
    steps: run.steps,
    ...graded,
    ...columnResults(run, { belt, ...graded }),
    ...warningsOf(run),
  };
}

/** Water that boils at the pressure of the mains is not computed. */
const boils_degC = 100;

function warningsOf({ waterFrom_degC, input }: PressRun): Pick<Cycle, 'warnings'> {
  if (!(waterFrom_degC > boils_degC)) return {};
  const data = { value: waterFrom_degC, max: boils_degC, unit: 'degC' };
  return {
    warnings: [{ code: 'water-boils', path: input.top.water === undefined ? 'bottom.water' : 'top.water', data }],
  };
}

function fusionAt(run: PressRun, place: number) {
  const { sums } = run.history;
  const at = rateCount * place;
  return fusionOf(run.fusion, {
    healing: sums[at] as number,
    flow: flowAt(lastSpan(run.pressures), place, sums[at + 1] as number),
    scission: sums[at + 2] as number,
  });
}

function probeResult(run: PressRun, marks: Marks, index: number): ProbeResult {
  const { history, beltPlaces } = run;
  const place = beltPlaces + index;
  return {
    peak_degC: history.peak[place] as number,
    peakAt_s: history.peakAt_s[place] as number,
    atReady_degC: marks.atReady[place] as number,
    atDwellEnd_degC: marks.atDwellEnd[place] as number,
    atOpen_degC: history.now[place] as number,
    ...fusionAt(run, place),
    ...probeValues(run, index),
  };
}

function probeValues(run: PressRun, index: number): Partial<ProbeResult> {
  if (run.input.times_s === undefined) return {};
  const probes = run.input.probes.length;
  const first = probes + rateCount * index;
  const then = sampled(run, (row, time_s) => {
    const [healing, fluidity, scission] = [0, 1, 2].map((which) => row[first + which] as number) as Three;
    if (Number.isNaN(healing)) return null;
    const flow = flowAt(spanAt(run.pressures, time_s), run.beltPlaces + index, fluidity);
    return fusionOf(run.fusion, { healing, flow, scission });
  });
  return {
    values_degC: valuesOf(run, index),
    bondValues: then.map((one) => one?.bond ?? null),
    fillValues_m: then.map((one) => one?.fill_m ?? null),
    molarMassShareValues: then.map((one) => one?.molarMassShare ?? null),
  };
}

/** One thing for each time asked for, in the order they were asked for. */
function sampled<T>({ samples }: PressRun, read: (row: Float64Array, time_s: number) => T): T[] {
  const { rows, columns, order, times_s } = samples;
  const values = new Array<T>(order.length);
  order.forEach((place, taken) => {
    values[place] = read(rows.subarray(taken * columns, (taken + 1) * columns), times_s[taken] as number);
  });
  return values;
}

function valuesOf(run: PressRun, column: number): Values {
  return sampled(run, (row) => (Number.isNaN(row[column] as number) ? null : (row[column] as number)));
}

function lateColumn(run: PressRun, which: number): number {
  return (1 + rateCount) * run.input.probes.length + which;
}

function platenResult(run: PressRun, which: 0 | 1): PlatenResult {
  const { history, input } = run;
  const place = history.count - 2 + which;
  const highest = highestSetPoints(recipePlan(input.recipe));
  const set_degC = which === 0 ? highest.top_degC : highest.bottom_degC;
  return {
    overshoot_K: (history.peak[place] as number) - set_degC,
    atOpen_degC: history.now[place] as number,
    ...(input.times_s === undefined ? {} : { values_degC: valuesOf(run, lateColumn(run, which)) }),
  };
}

function sensorResult(run: PressRun, which: 2 | 3): SensorResult {
  return run.input.times_s === undefined ? {} : { values_degC: valuesOf(run, lateColumn(run, which)) };
}
