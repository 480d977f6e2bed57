import { inRange } from '../in-range.ts';

/** Linear thermal expansion of frames; the aluminium figure is that of alloy 6061. */
export const frameExpansion_1_K: readonly {
  readonly id: 'steel' | 'aluminium';
  readonly value: number;
  readonly source: string;
}[] = [
  { id: 'steel', value: 12e-6, source: 'from memory' },
  { id: 'aluminium', value: 23.6e-6, source: 'from memory: alloy 6061' },
];

export interface ThermalTensionInput {
  readonly tensileStiffness_N: number;
  readonly frameExpansion_1_K: number;
  /** 0 leaves the belt's own expansion out. */
  readonly beltExpansion_1_K: number;
  readonly temperatureDifference_K: number;
}

/**
 * Change of the pull of a strand when frame and belt warm up together. F = EA (a_frame - a_belt) dT.
 *
 * @param input.tensileStiffness_N - EA [N], 1 to 1e9
 * @param input.frameExpansion_1_K - of the frame [1/K], -1e-4 to 1e-3
 * @param input.beltExpansion_1_K - of the belt along its length [1/K], -1e-4 to 1e-3
 * @param input.temperatureDifference_K - warmer is positive [K], -150 to 150
 * @returns change of pull of one strand [N]
 * @throws not-finite, out-of-range
 * @validity fixed centres; modulus taken as constant
 * @source derived: strain hindered by the frame
 * @verified T4.5 aluminium frame
 */
export function thermalTension_N(input: ThermalTensionInput): number {
  const expansion = { min: -1e-4, max: 1e-3, unit: '1/K' };
  const EA = inRange(input.tensileStiffness_N, 'tensileStiffness_N', { min: 1, max: 1e9, unit: 'N' });
  const frame = inRange(input.frameExpansion_1_K, 'frameExpansion_1_K', expansion);
  const belt = inRange(input.beltExpansion_1_K, 'beltExpansion_1_K', expansion);
  const dT = inRange(input.temperatureDifference_K, 'temperatureDifference_K', { min: -150, max: 150, unit: 'K' });
  return EA * (frame - belt) * dT;
}
