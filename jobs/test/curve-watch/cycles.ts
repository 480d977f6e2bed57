import { type CycleInput, cycle } from '@loopwright/engine/press';
import type { RunThing } from '@loopwright/records/run';
import type { CurveReading, WatchedCycle } from '../../src/curve-watch/index.ts';
import { cycleGround } from '../../src/press-cycle/cycle-ground.ts';
import { pressCycle } from '../../src/press-cycle/press-cycle.ts';
import { predictRun } from '../../src/press-run/index.ts';
import { demoPlant } from '../demo-plant.ts';

const plant = demoPlant();

function thing<T>(of: Readonly<Record<string, T>>, id: string): T {
  const found = of[id];
  if (found === undefined) throw new Error(`no ${id}`);
  return found;
}

export const recipe = thing(plant.recipes, 'alder-north');
const things = {
  line: thing(plant.lines, 'QM-01'),
  belt: thing(plant.belts, 'Alder-24'),
  press: { ...thing(plant.presses, 'P1'), nominalVoltage_V: 120, leadResistance_ohm: 0.08 },
  recipe,
  template: thing(plant.templates, Object.keys(plant.templates)[0] ?? ''),
  today: { volts_V: 120, air_degC: 25 },
};

export const input = cycleGround(things).input;

const { cycle: kept } = predictRun('RUN00001', pressCycle(things)).body.thing as RunThing<'run.predicted'>;
if (kept.status !== 'ok') throw new Error('no cycle');
/** The cycle as a run keeps it, with the range of its marks. */
export const predicted: WatchedCycle = kept;

/** The same cycle with nothing in doubt: mains and air measured, a press whose numbers are known. */
export const exact: WatchedCycle = {
  ...predicted,
  ready_s: sharp(predicted.ready_s.value),
  holdEnd_s: sharp(predicted.holdEnd_s.value),
  open_s: sharp(predicted.open_s.value),
};

function sharp(value: number): WatchedCycle['ready_s'] {
  return { value, low: value - 3, high: value + 3 };
}

/** What really happens in a press: what both sensors show every few seconds, and its marks. */
export interface Happened {
  readonly readings: readonly CurveReading[];
  readonly ready_s: number;
  readonly holdEnd_s: number;
  readonly open_s: number;
}

const step_s = 5;

export function happens(changed: Partial<CycleInput> = {}): Happened {
  const whole = { ...input, ...changed };
  const first = done(cycle({ ...whole, probes: [] }));
  const { ready_s, dwellEnd_s, open_s } = first.marks;
  const times_s = Array.from({ length: Math.floor(open_s / step_s) }, (_, i) => i * step_s);
  const run = done(cycle({ ...whole, probes: [], times_s }));
  const readings = times_s.map((time_s, i) => ({
    time_s,
    top_degC: run.sensors.top.values_degC?.[i] ?? Number.NaN,
    bottom_degC: run.sensors.bottom.values_degC?.[i] ?? Number.NaN,
  }));
  return { readings, ready_s, holdEnd_s: dwellEnd_s, open_s };
}

function done(result: ReturnType<typeof cycle>) {
  if (result.status !== 'ok') throw new Error(`no cycle: ${result.status}`);
  return result;
}

export const mains = (share: number): Partial<CycleInput> => ({
  supply: { ...input.supply, volts_V: input.supply.volts_V * share },
});

export const set = { top_degC: recipe.top_degC, bottom_degC: recipe.bottom_degC };
