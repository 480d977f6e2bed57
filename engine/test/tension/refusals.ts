import { expect } from 'vitest';
import { Refusal } from '../../src/refusal.ts';

/** Calls and gives back what was refused; fails when nothing was. */
export function refusalOf(call: () => unknown): Refusal {
  try {
    call();
  } catch (error) {
    expect(error).toBeInstanceOf(Refusal);
    return error as Refusal;
  }
  throw new Error('nothing was refused');
}

/** Every number inside a result is finite, however deep it lies. */
export function allFinite(value: unknown): boolean {
  if (typeof value === 'number') return Number.isFinite(value);
  if (value === null || typeof value !== 'object') return true;
  return Object.values(value).every(allFinite);
}

/** True when the call gives finite numbers and nulls, or refuses; anything else is thrown on or false. */
export function finiteOrRefused(call: () => unknown): boolean {
  try {
    return allFinite(call());
  } catch (error) {
    if (error instanceof Refusal) return allFinite(error.data);
    throw error;
  }
}
