import { Refusal } from './refusal.ts';

/** Allowed interval of an input; `above` excludes the lower end itself. */
export interface Limits {
  readonly min: number;
  readonly max: number;
  readonly unit: string;
  readonly above?: boolean;
}

/**
 * Lets a number through when it is finite and inside its limits.
 *
 * @param value - the number given [unit of the limits]
 * @param path - where it stands in the input, like `takeUp.max_m`
 * @param limits - smallest and largest allowed value and their unit
 * @returns the same number [unit of the limits]
 * @throws not-finite, out-of-range
 * @source derived: plain comparison
 */
export function inRange(value: number, path: string, limits: Limits): number {
  const { min, max, unit, above = false } = limits;
  if (!Number.isFinite(value)) throw new Refusal('not-finite', path, { value: String(value), unit });
  if (value < min || value > max || (above && value === min)) {
    throw new Refusal('out-of-range', path, { value, min, max, unit });
  }
  return value;
}

/**
 * Lets an index through when it names an element of a list.
 *
 * @param value - index counted from 0 [1]
 * @param path - where it stands in the input
 * @param count - how many elements the list has [1]
 * @returns the same index [1]
 * @throws not-finite, out-of-range
 * @source derived: plain comparison
 */
export function indexInRange(value: number, path: string, count: number): number {
  inRange(value, path, { min: 0, max: count - 1, unit: '1' });
  if (!Number.isInteger(value)) throw new Refusal('out-of-range', path, { value, min: 0, max: count - 1, unit: '1' });
  return value;
}
