import { waterCooling_W_m2K } from '../losses/water-cooling.ts';
import { endField } from '../march/end.ts';
import type { CycleInput, WaterCooling } from './cycle-input.ts';
import { type PhaseOutcome, runPhase } from './phase.ts';
import type { PressRun } from './press-run.ts';

const { SHARE, LOSS, AMBIENT, SENSOR, SET_RATE } = endField;
/** First step of the cooling, and after water is let in: the platens turn round at once. */
const firstCooling_s = 1;
const sides = ['top', 'bottom'] as const;

/**
 * Heaters off, fan on, and water where it flows from the start.
 *
 * @param run - run at the end of its heating, changed
 * @returns nothing
 * @source derived: plain assignment
 */
export function startCooling(run: PressRun): void {
  const { march, input, goal } = run;
  run.cooling = true;
  for (const side of sides) {
    const platen = input[side];
    const end = march.slab[side];
    end.following = false;
    end.numbers[SHARE] = 0;
    end.numbers[SET_RATE] = 0;
    end.numbers[LOSS] = platen.loss_W_m2K + platen.fan_W_m2K;
    goal[`${side}Water_degC`] = Number.NEGATIVE_INFINITY;
    if (platen.water?.from_degC !== undefined) goal[`${side}Water_degC`] = platen.water.from_degC;
    else if (platen.water !== undefined) letWaterIn(run, side, platen.water);
  }
  march.proposed_s = Math.min(march.proposed_s, firstCooling_s);
}

/**
 * Cools until both sensors are at or below a temperature; water is let in on the way where it waits for one.
 *
 * @param run - run that cools, moved on
 * @param below_degC - temperature at which it ends [degC]
 * @param end_s - when it ends in any case [s]
 * @returns what ended it
 * @source derived: one phase after the other
 * @verified CYCLE-15 water in both platens
 */
export function coolTo(run: PressRun, below_degC: number, end_s: number): PhaseOutcome {
  const { goal, march } = run;
  goal.below_degC = below_degC;
  for (;;) {
    const outcome = runPhase(run, 'cold', end_s);
    if (outcome !== 'goal') return outcome;
    const waiting = sides.filter((side) => Number.isFinite(goal[`${side}Water_degC`]));
    // Which of the temperatures was met: the one that is passed, or missed by the least.
    const passed = (side: (typeof sides)[number]) =>
      goal[`${side}Water_degC`] - (march.slab[side].numbers[SENSOR] as number);
    const most = Math.max(...waiting.map(passed), Number.NEGATIVE_INFINITY);
    const hottest = Math.max(...sides.map((side) => march.slab[side].numbers[SENSOR] as number));
    if (below_degC - hottest >= most) return 'goal';
    for (const side of waiting) {
      const { water } = run.input[side];
      if (passed(side) < most || water === undefined) continue;
      goal[`${side}Water_degC`] = Number.NEGATIVE_INFINITY;
      letWaterIn(run, side, water);
    }
    march.proposed_s = Math.min(march.proposed_s, firstCooling_s);
  }
}

/** Loss to air and to water are one loss to a temperature between both. */
function letWaterIn(run: PressRun, side: 'top' | 'bottom', water: WaterCooling): void {
  const { numbers: e } = run.march.slab[side];
  run.waterFrom_degC = Math.max(run.waterFrom_degC, e[SENSOR] as number);
  const { loss_W_m2K, towards_degC } = coolingOf(run.input, side, water);
  e[LOSS] = loss_W_m2K;
  e[AMBIENT] = towards_degC;
}

function coolingOf(input: CycleInput, side: 'top' | 'bottom', water: WaterCooling | undefined) {
  const platen = input[side];
  const air_W_m2K = platen.loss_W_m2K + platen.fan_W_m2K;
  if (water === undefined) return { loss_W_m2K: air_W_m2K, towards_degC: input.ambient_degC };
  const water_W_m2K = waterCooling_W_m2K(water.flow_kg_s, water.transferUnits, platen.area_m2);
  const loss_W_m2K = air_W_m2K + water_W_m2K;
  return {
    loss_W_m2K,
    towards_degC: (air_W_m2K * input.ambient_degC + water_W_m2K * water.inlet_degC) / loss_W_m2K,
  };
}

/**
 * Temperature that a platen cools towards. T = (U*T_a + w*T_w)/(U + w).
 *
 * @param input - checked input of a cycle
 * @param side - which platen
 * @returns temperature that it never gets colder than by itself [degC]
 * @source derived: balance of heat at rest
 * @verified CYCLE-15 water in both platens
 */
export function coolsTowards_degC(input: CycleInput, side: 'top' | 'bottom'): number {
  return coolingOf(input, side, input[side].water).towards_degC;
}
