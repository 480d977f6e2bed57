import { inRange } from '../in-range.ts';
import type { Warning } from '../refusal.ts';
import { computeInRange } from '../worked/compute-in-range.ts';
import { tensionByPushFirstOrderRow, tensionByPushRow } from './tension-check-formulas.ts';

export interface TensionByPushInput {
  readonly span_m: number;
  /** Force in the middle of the span, square to it. */
  readonly force_N: number;
  readonly deflection_m: number;
  readonly tensileStiffness_N: number;
  /** Default 0. */
  readonly bendingStiffness_Nm2?: number;
  /** Whole loop when its pulleys turn freely; without it the span is isolated. */
  readonly loop_m?: number;
}

export interface TensionByPush {
  /** With the stretch of the push itself; null when that stretch alone explains the force. */
  readonly tension_N: number | null;
  readonly firstOrder_N: number;
  readonly warnings: readonly Warning[];
  readonly used: Readonly<Record<string, number>>;
}

// Above this share of the span the small-angle terms that were left out reach about half a percent of the force.
const largestShare = 0.05;

/**
 * Tension of a span from a push in its middle.
 *
 * Q = 4 T d/l + 8 EA k (d/l)^3 + 48 EI d/l^3, solved for T; k = 1 for an isolated span, l/loop when all pulleys turn.
 *
 * @param input.span_m - free span [m], 0.001 to 5000
 * @param input.force_N - push [N], > 0, to 1e7
 * @param input.deflection_m - deflection in the middle [m], 1e-6 to a quarter of the span
 * @param input.tensileStiffness_N - EA [N], 0 to 1e9
 * @param input.bendingStiffness_Nm2 - EI [N m2], 0 to 100, default 0
 * @param input.loop_m - whole loop [m], span to 20000
 * @returns tension with and without the cubic term [N]
 * @throws not-finite, out-of-range
 * @validity small deflection: the tension is within 2 (d/l)^2 T + 6 (d/l)^4 EA k of the exact geometry
 * @source derived
 * @verified T6.2 first order, T6.2 cubic, 5 mm
 */
export function tensionByPush(input: TensionByPushInput): TensionByPush {
  const { span_m: l, force_N: Q, deflection_m: d, tensileStiffness_N: EA, bendingStiffness_Nm2: B = 0 } = input;
  inRange(l, 'span_m', { min: 0.001, max: 5000, unit: 'm' });
  inRange(Q, 'force_N', { min: 0, max: 1e7, unit: 'N', above: true });
  inRange(d, 'deflection_m', { min: 1e-6, max: l / 4, unit: 'm' });
  if (input.loop_m !== undefined) inRange(input.loop_m, 'loop_m', { min: l, max: 20_000, unit: 'm' });
  const k = input.loop_m === undefined ? 1 : l / input.loop_m;
  const paths = { Q: 'force_N', l: 'span_m', d: 'deflection_m', EA: 'tensileStiffness_N', B: 'bendingStiffness_Nm2' };
  const tension_N = computeInRange(tensionByPushRow, { Q, l, d, EA, k, B }, paths);
  const warnings: Warning[] = [];
  if (tension_N <= 0) warnings.push({ code: 'stretch-explains-push', path: 'force_N', data: { value: Q, unit: 'N' } });
  if (d > l * largestShare) {
    warnings.push({
      code: 'deflection-large',
      path: 'deflection_m',
      data: { value: d, max: l * largestShare, unit: 'm' },
    });
  }
  return {
    tension_N: tension_N > 0 ? tension_N : null,
    firstOrder_N: computeInRange(tensionByPushFirstOrderRow, { Q, l, d }, paths),
    warnings,
    used: input.bendingStiffness_Nm2 === undefined ? { bendingStiffness_Nm2: 0 } : {},
  };
}
