import { describe, expect, it } from 'vitest';
import { linesOverview } from '../src/index.ts';
import { demoPlant } from './demo-plant.ts';

const plant = demoPlant();
const now = '2026-11-25T02:10:00Z';
const overview = linesOverview(plant, now);
const stateOf = (id: string) =>
  overview.lines.flatMap(({ positions }) => positions).find(({ position }) => position.id === id)?.state;

describe('lines', () => {
  it('[LINES-01] torn, empty, past its life, due and running are told apart', () => {
    expect(stateOf('QM-04-3')).toBe('torn');
    expect(stateOf('QM-03-12')).toBe('empty');
    expect(overview.counts.torn).toBe(1);
    expect(overview.counts['past-life']).toBeGreaterThan(0);
    expect(overview.counts['retension-due']).toBeGreaterThan(0);
    expect(overview.counts.running).toBeGreaterThan(40);
  });

  it('[LINES-02] sixty positions on six lines, and the counts add up', () => {
    expect(overview.lines.map(({ line }) => line.id)).toEqual(['QM-01', 'QM-02', 'QM-03', 'QM-04', 'QM-05', 'QM-06']);
    const total = Object.values(overview.counts).reduce((sum, n) => sum + n, 0);
    expect(total).toBe(60);
    const perLine = overview.lines.map(({ positions }) => positions.length);
    expect(perLine).toEqual([8, 14, 12, 6, 10, 10]);
  });

  it('[LINES-03] a belt runs past its life when the clock moves on', () => {
    const later = linesOverview(plant, '2029-01-01T00:00:00Z');
    expect(later.counts['past-life']).toBeGreaterThan(overview.counts['past-life']);
    expect(later.counts.torn).toBe(1);
  });
});
