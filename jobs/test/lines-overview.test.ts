import { describe, expect, it } from 'vitest';
import { keepLengths, linesOverview, recallLengths } from '../src/index.ts';
import { endlessLength } from '../src/loop/endless-length.ts';
import { isLoop, loopOf } from '../src/loop/loop.ts';
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

  it('[LINES-04] the length in the list is the length on the card, whatever it is known from', () => {
    let compared = 0;
    for (const { line, belt, positions } of overview.lines) {
      const loop = belt && loopOf(plant, line, belt);
      for (const { position, endless_m } of positions) {
        const onCard = endlessLength(position, line, isLoop(loop) ? loop : undefined)?.endless.value;
        expect(endless_m === undefined).toBe(onCard === undefined);
        if (onCard === undefined || endless_m === undefined) continue;
        // Two ways to sum the same few numbers differ by rounding only.
        expect(Math.abs(endless_m - onCard)).toBeLessThan(1e-12 * onCard);
        compared += 1;
      }
    }
    expect(compared).toBeGreaterThan(50);
  });

  it('[LINES-06] lengths kept beside a plant are those computed, and come back only for what has not changed', () => {
    const kept = structuredClone(keepLengths(plant));
    const again = structuredClone(plant);
    const doubled = kept.map(({ endless_m }) => ({ path_m: 1, endless_m: endless_m.map(() => 2) }));
    recallLengths(again, doubled);
    expect(linesOverview(again, now).lines.every(({ path_m }) => path_m === 1)).toBe(true);
    const [first] = Object.values(again.positions).filter(({ line }) => line === 'QM-01');
    if (first === undefined) throw new Error('the line has no position');
    const changed = { ...again, positions: { ...again.positions, [first.id]: { ...first, recordedLength_m: 44 } } };
    expect(linesOverview(changed, now).lines.map(({ path_m }) => path_m === 1)).toEqual([
      false,
      ...Array(5).fill(true),
    ]);
    const third = structuredClone(plant);
    recallLengths(third, kept);
    expect(linesOverview(third, now)).toEqual(overview);
    const fourth = structuredClone(plant);
    recallLengths(fourth, kept.slice(1));
    expect(linesOverview(fourth, now)).toEqual(overview);
  });

  it('[LINES-05] what changed is computed afresh: a pulley, a belt, a position, a new one', () => {
    const pathOf = (changed: typeof plant) => linesOverview(changed, now).lines[3]?.path_m ?? Number.NaN;
    const before_m = pathOf(plant);
    const [end] = Object.values(plant.pulleys).filter(({ line, role }) => line === 'QM-04' && role === 'end');
    if (end === undefined) throw new Error('the line has no end pulley');
    const moved = { ...plant, pulleys: { ...plant.pulleys, [end.id]: { ...end, x_m: end.x_m - 0.1 } } };
    expect(pathOf(moved)).not.toBe(before_m);
    expect(pathOf(plant)).toBe(before_m);
    const torn = plant.positions['QM-04-4'];
    if (torn === undefined) throw new Error('the plant has no QM-04-4');
    const worse = { ...plant, positions: { ...plant.positions, 'QM-04-4': { ...torn, status: 'torn' as const } } };
    expect(linesOverview(worse, now).counts.torn).toBe(2);
    const more = { ...plant, positions: { ...plant.positions, 'QM-04-99': { ...torn, id: 'QM-04-99', number: 99 } } };
    expect(linesOverview(more, now).lines[3]?.positions.at(-1)?.endless_m).toBeGreaterThan(1);
    const belt = plant.belts['Flint-30'];
    if (belt === undefined) throw new Error('the plant has no Flint-30');
    const thicker = { ...plant, belts: { ...plant.belts, 'Flint-30': { ...belt, thickness_m: belt.thickness_m * 2 } } };
    expect(pathOf(thicker)).not.toBe(before_m);
  });
});
