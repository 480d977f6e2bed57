import { inRange } from '../in-range.ts';
import { Refusal } from '../refusal.ts';
import { workInRange } from '../worked/compute-in-range.ts';
import type { Worked } from '../worked/worked-formula.ts';
import { bendingStrainBackRow, bendingStrainRow, pulleyByFabricRow } from './life-formulas.ts';
import type { BeltFace } from './path-input.ts';

export interface BendingInput {
  readonly pulleyRadius_m: number;
  readonly thickness_m: number;
  /** Distance of the neutral line from the running face. */
  readonly neutralLine_m: number;
  /** Face that touches the pulley. */
  readonly face: BeltFace;
}

/**
 * Strain of the belt's outer face on a pulley, without the pull.
 *
 * Running face on the pulley (t - y)/(R + y); back on the pulley y/(R + t - y).
 *
 * @param input.pulleyRadius_m - bare surface [m], 0.001 to 5
 * @param input.thickness_m - belt thickness [m], 0.0001 to 0.1
 * @param input.neutralLine_m - from the running face [m], 0 to thickness
 * @param input.face - face that touches the pulley
 * @returns strain of the outer face [1]
 * @throws not-finite, out-of-range
 * @validity plane sections; no shift of the neutral line by traction
 * @source derived
 * @verified T4.5 bending strain D30, T4.5 bending strain D60
 */
export function bendingStrain(input: BendingInput): Worked {
  const { pulleyRadius_m: R, thickness_m: t, neutralLine_m: y } = input;
  const row = input.face === 'running' ? bendingStrainRow : bendingStrainBackRow;
  inRange(y, 'neutralLine_m', { min: 0, max: t, unit: 'm' });
  return workInRange(row, { t, y, R }, { t: 'thickness_m', y: 'neutralLine_m', R: 'pulleyRadius_m' });
}

/** Rule of thumb 1.2 to 1.5, from memory: how much larger a pulley on the back of the belt must be. */
export const counterBendFactor = 1.25;

export interface PulleyLimitInput {
  readonly diameter_m: number;
  readonly face: BeltFace;
  /** Smallest pulley on the running face, from the data sheet. */
  readonly minPulley_m: number;
  /** Smallest pulley on the back. Default 1.25 times minPulley_m. */
  readonly minCounterBend_m?: number;
}

export interface PulleyLimit {
  readonly status: 'ok' | 'under-limit';
  readonly counterBend: boolean;
  readonly limit_m: number;
  /** Diameter over limit: under 1 the pulley is too small. */
  readonly share: number;
}

/**
 * Holds a pulley against the smallest one the belt may run round, on the face that touches it.
 *
 * @param input.diameter_m - pulley diameter [m], > 0, to 10
 * @param input.face - face that touches it
 * @param input.minPulley_m - smallest on the running face [m], > 0, to 10
 * @param input.minCounterBend_m - smallest on the back [m], > 0, to 15, default 1.25 minPulley_m
 * @returns limit [m], share of it [1] and status
 * @throws not-finite, out-of-range
 * @validity the data sheet's limit; wear of a splice may ask for more
 * @source data sheet of the belt; the factor for counter-bends from memory
 * @verified T4.5 counter-bend limit
 */
export function checkPulley(input: PulleyLimitInput): PulleyLimit {
  const limits = { min: 0, max: 10, unit: 'm', above: true };
  inRange(input.diameter_m, 'diameter_m', limits);
  inRange(input.minPulley_m, 'minPulley_m', limits);
  const counterBend = input.face === 'back';
  const back_m = input.minCounterBend_m ?? counterBendFactor * input.minPulley_m;
  inRange(back_m, 'minCounterBend_m', { ...limits, max: 15 });
  const limit_m = counterBend ? back_m : input.minPulley_m;
  const share = input.diameter_m / limit_m;
  return { status: share >= 1 ? 'ok' : 'under-limit', counterBend, limit_m, share };
}

/** Fabrics of ISO 3684-type rules: factor on the fabric's thickness. */
export const fabricFactors: readonly { readonly id: string; readonly factor: number; readonly source: string }[] = [
  { id: 'cotton', factor: 80, source: 'DIN 22101 (from memory)' },
  { id: 'polyamide', factor: 90, source: 'DIN 22101 (from memory)' },
  { id: 'polyester', factor: 108, source: 'DIN 22101 (from memory)' },
  { id: 'aramid', factor: 138, source: 'DIN 22101 (from memory)' },
  { id: 'steel', factor: 145, source: 'DIN 22101 (from memory)' },
];

/**
 * Smallest pulley by the thickness of the fabric. D = c d. For belts without a data sheet.
 *
 * @param fabric - id of a row of `fabricFactors`
 * @param fabricThickness_m - thickness of the tension member [m], 1e-5 to 0.05
 * @returns diameter [m]
 * @throws unknown-fabric, not-finite, out-of-range
 * @validity conservative for narrow drive belts; the data sheet wins; up to 0.8 mm between plies, up to 100 degC
 * @source ISO 3684:1990, structure; factors of DIN 22101 (from memory)
 * @verified T4.5 polyester fabric, T4.5 polyamide fabric
 */
export function smallestPulleyByFabric(fabric: string, fabricThickness_m: number): Worked {
  const row = fabricFactors.find(({ id }) => id === fabric);
  if (row === undefined) {
    throw new Refusal('unknown-fabric', 'fabric', {
      value: fabric,
      allowed: fabricFactors.map(({ id }) => id).join(', '),
    });
  }
  return workInRange(pulleyByFabricRow, { c: row.factor, d: fabricThickness_m }, { d: 'fabricThickness_m' });
}
