import { timeOf } from '../march/slab.ts';
import { coolTo, startCooling } from './cooling.ts';
import type { Marks } from './cycle-of-run.ts';
import { neverCools, notReached } from './cycle-refusals.ts';
import { type PhaseOutcome, runPhase } from './phase.ts';
import type { PressRun } from './press-run.ts';
import { changePressure } from './pressure-spans.ts';
import type { CoolStep, HoldStep, PlanStep, RampStep } from './recipe-plan.ts';
import { comeToRest, jumpSetPoints, rampSetPoints } from './set-points.ts';

/** Longest heat-up and longest cooling that are computed. */
const longest_s = 86_400;

type MutableMarks = { -readonly [K in keyof Marks]: Marks[K] };

/**
 * Runs all steps of a recipe.
 *
 * @param run - run at its start, moved to its opening
 * @param plan - steps of its recipe
 * @returns marks, or why the march stopped short
 * @throws set-point-not-reached, never-cools
 * @source derived: one step after the other
 * @verified CYCLE-11 dwell in two parts
 */
export function runPlan(run: PressRun, plan: readonly PlanStep[]): Marks | PhaseOutcome {
  const { now } = run.history;
  const marks: MutableMarks = {
    ready_s: Number.NaN,
    dwellEnd_s: 0,
    coolStart_s: 0,
    open_s: 0,
    stepEnds_s: [],
    atReady: now,
    atDwellEnd: now,
  };
  for (const step of plan) {
    const failure = runStep(run, step, marks);
    if (failure !== undefined) return failure;
  }
  marks.open_s = timeOf(run.march.slab);
  return marks;
}

function runStep(run: PressRun, step: PlanStep, marks: MutableMarks): PhaseOutcome | undefined {
  switch (step.kind) {
    case 'ramp':
      return runRamp(run, step, marks);
    case 'hold':
      return runHold(run, step, marks);
    case 'pressure': {
      const time_s = timeOf(run.march.slab);
      for (const { pressures, history } of [run, ...run.columns]) {
        changePressure(pressures, history, { beltPlaces: run.beltPlaces, time_s, pressure_Pa: step.pressure_Pa });
      }
      marks.stepEnds_s[step.given] = time_s;
      return undefined;
    }
    case 'cool':
      return runCool(run, step, marks);
  }
}

function runRamp(run: PressRun, step: RampStep, marks: MutableMarks): PhaseOutcome | undefined {
  const begun_s = timeOf(run.march.slab);
  if (step.rate_K_s === undefined) jumpSetPoints(run, step);
  else {
    for (const end_s of rampSetPoints(run, { ...step, rate_K_s: step.rate_K_s })) {
      const moved = runPhase(run, 'none', end_s);
      if (moved !== 'time') return moved;
      comeToRest(run, step);
    }
  }
  const heated = runPhase(run, 'ready', begun_s + longest_s);
  if (heated === 'time') throw notReached(run, step.given);
  marks.stepEnds_s[step.given] = timeOf(run.march.slab);
  return heated === 'goal' ? undefined : heated;
}

function runHold(run: PressRun, { dwell, parts }: HoldStep, marks: MutableMarks): PhaseOutcome | undefined {
  const { slab } = run.march;
  const begun_s = timeOf(slab);
  if (dwell && Number.isNaN(marks.ready_s)) {
    marks.ready_s = begun_s;
    marks.atReady = run.history.now.slice();
  }
  let end_s = begun_s;
  for (const { given, time_s } of parts) {
    end_s += time_s;
    marks.stepEnds_s[given] = end_s;
  }
  const held = runPhase(run, 'none', end_s);
  if (held !== 'time') return held;
  if (dwell) {
    marks.dwellEnd_s = timeOf(slab);
    marks.atDwellEnd = run.history.now.slice();
  }
  return undefined;
}

function runCool(run: PressRun, step: CoolStep, marks: MutableMarks): PhaseOutcome | undefined {
  const { slab } = run.march;
  if (!run.cooling) {
    marks.coolStart_s = timeOf(slab);
    startCooling(run);
  }
  const cooled = coolTo(run, step.below_degC, timeOf(slab) + (step.time_s ?? longest_s));
  if (cooled === 'time' && step.time_s === undefined) throw neverCools(run, step);
  marks.stepEnds_s[step.given] = timeOf(slab);
  return cooled === 'goal' || cooled === 'time' ? undefined : cooled;
}
