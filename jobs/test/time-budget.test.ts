import { describe, expect, it } from 'vitest';
import { computed, type Quantity } from '../src/quantity.ts';
import { timeBudget } from '../src/splice-card/time-budget.ts';

const minutes = (seconds: number | undefined): number => (seconds ?? Number.NaN) / 60;

describe('time budget of a torn belt (common practice, no source)', () => {
  it('[CARD-20] two people: the parts add to 72-103 min, middle 88', () => {
    const { total } = timeBudget(64.222, 2, undefined);
    expect(minutes(total.low)).toBeCloseTo(72, 9);
    expect(minutes(total.high)).toBeCloseTo(103, 9);
    expect(Math.round(minutes(total.value))).toBe(88);
  });

  it('[CARD-21] alone on a 64 m loop: 100-130 min', () => {
    const { total } = timeBudget(64.222, 1, undefined);
    expect(minutes(total.low)).toBeGreaterThan(97);
    expect(minutes(total.low)).toBeLessThan(103);
    expect(minutes(total.high)).toBeGreaterThan(127);
    expect(minutes(total.high)).toBeLessThan(133);
  });

  it('[CARD-22] a known press cycle takes the place of the usual 17-18 min', () => {
    const cycle = (value: number): Quantity => computed('time', value, 60);
    const usual = timeBudget(10, 2, cycle(17.5 * 60)).total;
    const slow = timeBudget(10, 2, cycle(50 * 60)).total;
    expect(minutes(slow.value - usual.value)).toBeCloseTo(32.5, 9);
    expect(minutes((slow.high ?? 0) - slow.value)).toBeCloseTo(103 - 87.5 - 0.5 + 1, 9);
  });

  it('[CARD-23] an unknown loop length adds no walking and still gives a time', () => {
    expect(timeBudget(undefined, 1, undefined).total.value).toBe(timeBudget(undefined, 2, undefined).total.value);
  });
});
