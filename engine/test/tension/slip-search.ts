import { beltPath } from '../../src/loop/path.ts';
import type { StrandLoad, TensionRoundLoopInput } from '../../src/loop/tension-round-loop-form.ts';
import { drive } from './loops.ts';

/** The same loads, each pulling harder by one factor. */
export function grown(loads: readonly StrandLoad[], by: number): StrandLoad[] {
  return loads.map((load) => ({ ...load, pull_N_m: load.pull_N_m * by }));
}

/** Belt tension times length, summed piece by piece on the way from the drive round to the drive. */
export function stretchIntegral(
  input: TensionRoundLoopInput,
  path: ReturnType<typeof beltPath>,
  slack_N: number,
): number {
  const count = path.spans_m.length;
  const arc = (i: number) => (path.wraps_rad[i] ?? 0) * (path.neutralRadii_m[i] ?? 0);
  let tension = slack_N;
  let total = (tension * arc(input.drive)) / 2;
  for (let step = 0; step < count; step += 1) {
    const i = (input.drive + step) % count;
    if (step > 0) total += tension * arc(i);
    const span_m = path.spans_m[i] ?? 0;
    const marks = i === input.strand ? input.loads.flatMap(({ from_m, to_m }) => [from_m, to_m]) : [];
    const stops = [0, ...marks, span_m].sort((a, b) => a - b);
    for (let n = 1; n < stops.length; n += 1) {
      const [a = 0, b = 0] = [stops[n - 1], stops[n]];
      const pull = i === input.strand ? pullBetween(input.loads, a, b) : 0;
      total += (tension + pull / 2) * (b - a);
      tension += pull;
    }
  }
  return total + (tension * arc(input.drive)) / 2;
}

function pullBetween(loads: readonly StrandLoad[], a: number, b: number): number {
  const middle = (a + b) / 2;
  return loads.reduce((sum, l) => (l.from_m < middle && middle < l.to_m ? sum + l.pull_N_m * (b - a) : sum), 0);
}

/** Grows the load until the capstan law breaks, with the slack side found from the integral alone. */
export function searchSlip(input: TensionRoundLoopInput): number {
  const path = beltPath(input);
  const F0 = input.takeUp.kind === 'screw' ? input.takeUp.tension_N : 0;
  const Fc = input.beltMass_kg_m * input.speed_m_s ** 2;
  const grip = Math.exp(input.friction * (path.wraps_rad[input.drive] ?? 0));
  const pull_N = input.loads.reduce((sum, l) => sum + l.pull_N_m * (l.to_m - l.from_m), 0);
  const slips = (by: number): boolean => {
    const loaded = { ...input, loads: grown(input.loads, by) };
    // The integral is linear in the slack tension: two values give the one that keeps F0 L.
    const atZero = stretchIntegral(loaded, path, 0);
    const slack = (F0 * path.length_m - atZero) / (stretchIntegral(loaded, path, 1) - atZero);
    return slack + by * pull_N - Fc > grip * (slack - Fc);
  };
  let low = 0;
  let high = 1;
  while (!slips(high)) high *= 2;
  for (let n = 0; n < 60; n += 1) {
    const middle = (low + high) / 2;
    if (slips(middle)) high = middle;
    else low = middle;
  }
  return high * pull_N;
}

/** What both strands of the drive pull it downwards by. */
export function verticalPull(path: ReturnType<typeof beltPath>, tight: number, slack: number): number {
  const up = (i: number) => {
    const tangent = path.tangents[i];
    if (!tangent) return 0;
    const [dx, dy] = [tangent.to[0] - tangent.from[0], tangent.to[1] - tangent.from[1]];
    return dy / Math.hypot(dx, dy);
  };
  return -tight * up(drive - 1) + slack * up(drive);
}
