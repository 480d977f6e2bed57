import { inRange } from '../in-range.ts';
import { Refusal } from '../refusal.ts';
import type { FusedStrengthOptions } from './fused-strength.ts';
import { type GradeLimits, gradeLimits } from './grade.ts';
import type { FusionParameters } from './parameters.ts';

/** Strength of a perfect splice and of the belt, and how the estimate is made. */
export interface StrengthInput extends FusedStrengthOptions {
  readonly best_N_mm: number;
  readonly belt_N_mm: number;
}

/** What the points of the flank went through. */
export interface FusionInput {
  readonly times_s: readonly number[];
  /** One list of temperatures a point, from face to face of the belt. */
  readonly nodes_degC: readonly (readonly number[])[];
  /** On the belt over ambient: one number, or one per time. */
  readonly pressure_Pa: number | readonly number[];
  readonly fusion?: Partial<FusionParameters> | undefined;
  /** When the press was opened; left out, opening is not judged. */
  readonly open_s?: number | undefined;
  readonly limits?: Partial<GradeLimits> | undefined;
  readonly strength?: StrengthInput | undefined;
}

const mostTimes = 20_000;
const mostNodes = 200;
/** Bounds the work: a hundred thousand temperatures take about a second. */
const mostTemperatures = 100_000;

/**
 * Lets a history through when times rise, lists fit each other, and every number is one that can be.
 *
 * @param input - history of the flank [units in the names]
 * @returns pressure on the belt at each time [Pa]
 * @throws too-few, too-many, wrong-count, wrong-way-round, not-finite, out-of-range
 * @source derived: plain comparison
 */
export function checkedHistory(input: FusionInput): readonly number[] {
  const { times_s, nodes_degC } = input;
  counted(times_s.length, 'times_s', 2, mostTimes);
  counted(nodes_degC.length, 'nodes_degC', 1, mostNodes);
  counted(times_s.length * nodes_degC.length, 'nodes_degC', 1, mostTemperatures);
  for (const [i, time] of times_s.entries()) {
    inRange(time, `times_s[${i}]`, { min: -1e6, max: 1e6, unit: 's' });
    const before = times_s[i - 1];
    if (before !== undefined && time <= before) {
      throw new Refusal('wrong-way-round', `times_s[${i}]`, { value: time, min: before, max: 1e6, unit: 's' });
    }
  }
  for (const [n, node] of nodes_degC.entries()) {
    fitted(node.length, `nodes_degC[${n}]`, times_s.length);
    for (const [i, t] of node.entries()) {
      inRange(t, `nodes_degC[${n}][${i}]`, { min: -60, max: 400, unit: 'degC' });
    }
  }
  return pressures(input);
}

function pressures({ pressure_Pa, times_s }: FusionInput): readonly number[] {
  const limits = { min: 0, max: 5e6, unit: 'Pa' };
  if (typeof pressure_Pa === 'number') {
    const held = inRange(pressure_Pa, 'pressure_Pa', limits);
    return times_s.map(() => held);
  }
  fitted(pressure_Pa.length, 'pressure_Pa', times_s.length);
  for (const [i, p] of pressure_Pa.entries()) inRange(p, `pressure_Pa[${i}]`, limits);
  return pressure_Pa;
}

function counted(count: number, path: string, min: number, max: number): void {
  if (count < min) throw new Refusal('too-few', path, { count, min, max });
  if (count > max) throw new Refusal('too-many', path, { count, min, max });
}

function fitted(value: number, path: string, expected: number): void {
  if (value !== expected) throw new Refusal('wrong-count', path, { value, min: expected, max: expected });
}

/**
 * Limits of the process window with the defaults filled in, each checked.
 *
 * @param given - those that are known [1] and [degC]
 * @returns all limits [1] and [degC]
 * @throws not-finite, out-of-range
 * @source defaults: engineering priors, no source
 */
export function checkedLimits(given: Partial<GradeLimits> = {}): GradeLimits {
  const share = (name: keyof GradeLimits, max: number): number =>
    inRange(given[name] ?? gradeLimits[name], `limits.${name}`, { min: 0, max, unit: '1' });
  const warm = (name: keyof GradeLimits): number =>
    inRange(given[name] ?? gradeLimits[name], `limits.${name}`, { min: 0, max: 400, unit: 'degC' });
  return {
    bondMin: share('bondMin', 10),
    fillMin: share('fillMin', 100),
    fillMax: share('fillMax', 1000),
    damageMax: share('damageMax', 1),
    voidMax: share('voidMax', 100),
    beltMax_degC: warm('beltMax_degC'),
    openMax_degC: warm('openMax_degC'),
  };
}

/**
 * Lets the numbers of the strength estimate through.
 *
 * @param given - strengths [N/mm], exponent [1], hard segments [degC], [K], [1]
 * @returns the same
 * @throws not-finite, out-of-range
 * @source derived: plain comparison
 */
export function checkedStrength(given: StrengthInput): StrengthInput {
  const above = true;
  inRange(given.best_N_mm, 'strength.best_N_mm', { min: 0, max: 1e5, unit: 'N/mm', above });
  inRange(given.belt_N_mm, 'strength.belt_N_mm', { min: 0, max: 1e5, unit: 'N/mm', above });
  inRange(given.molarMassExponent ?? 1, 'strength.molarMassExponent', { min: 0, max: 10, unit: '1' });
  const hard = given.hardSegments;
  if (hard) {
    inRange(hard.centre_degC, 'strength.hardSegments.centre_degC', { min: 80, max: 260, unit: 'degC' });
    inRange(hard.width_K, 'strength.hardSegments.width_K', { min: 0.5, max: 30, unit: 'K' });
    inRange(hard.without, 'strength.hardSegments.without', { min: 0, max: 1, unit: '1' });
  }
  return given;
}
