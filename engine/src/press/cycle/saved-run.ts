import type { PressRun } from './press-run.ts';

/** State of a run, to go back to. */
export interface SavedRun {
  readonly numbers: readonly Float64Array[];
  topFollows: boolean;
  bottomFollows: boolean;
  cooling: boolean;
  steps: number;
  peakCurrent_A: number;
  bonded_s: number | null;
  proposed_s: number;
  waterFrom_degC: number;
}

/** Every array that a run changes. */
function arraysOf({ march, history }: PressRun): Float64Array[] {
  const { slab } = march;
  const { now, peak, peakAt_s, sums, before } = history;
  return [
    slab.cells.numbers,
    slab.top.numbers,
    slab.bottom.numbers,
    slab.numbers,
    slab.heaters,
    now,
    peak,
    peakAt_s,
    sums,
    before,
  ];
}

/**
 * Keeps the state of a run.
 *
 * @param run - run between two steps, without samples
 * @returns its state
 * @source derived: plain copy
 */
export function saveRun(run: PressRun): SavedRun {
  const { top, bottom } = run.march.slab;
  return {
    numbers: arraysOf(run).map((one) => one.slice()),
    topFollows: top.following,
    bottomFollows: bottom.following,
    cooling: run.cooling,
    steps: run.steps,
    peakCurrent_A: run.peakCurrent_A,
    bonded_s: run.bonded_s,
    proposed_s: run.march.proposed_s,
    waterFrom_degC: run.waterFrom_degC,
  };
}

/**
 * Takes a run back to a state of its own.
 *
 * @param run - run, changed
 * @param saved - state that `saveRun` kept
 * @returns nothing
 * @source derived: plain copy
 */
export function restoreRun(run: PressRun, saved: SavedRun): void {
  const { march } = run;
  arraysOf(run).forEach((one, index) => {
    one.set(saved.numbers[index] as Float64Array);
  });
  // The last step recorded is not the one before this state.
  run.history.falling = false;
  march.slab.top.following = saved.topFollows;
  march.slab.bottom.following = saved.bottomFollows;
  march.proposed_s = saved.proposed_s;
  run.cooling = saved.cooling;
  run.waterFrom_degC = saved.waterFrom_degC;
  run.steps = saved.steps;
  run.peakCurrent_A = saved.peakCurrent_A;
  run.bonded_s = saved.bonded_s;
}
