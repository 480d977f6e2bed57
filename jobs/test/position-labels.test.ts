import { describe, expect, it } from 'vitest';
import { positionLabels } from '../src/labels/position-labels.ts';
import { demoPlant } from './demo-plant.ts';

const plant = demoPlant();

const ids = (choice?: Parameters<typeof positionLabels>[1]) =>
  positionLabels(plant, choice).map(({ position }) => position);

describe('labels of positions', () => {
  it('[LABELS-01] one for every position, line by line, by the number on the line', () => {
    const numbers = (line: string, count: number) => Array.from({ length: count }, (_, i) => `${line}-${i + 1}`);
    // Lines and their counts of positions as the plant's description gives them.
    const walk = [
      ...numbers('QM-01', 8),
      ...numbers('QM-02', 14),
      ...numbers('QM-03', 12),
      ...numbers('QM-04', 6),
      ...numbers('QM-05', 10),
      ...numbers('QM-06', 10),
    ];
    expect(ids()).toEqual(walk);
  });

  it('[LABELS-02] only those of the lines and positions named; an unknown name gives none', () => {
    expect(ids({ lines: ['QM-04'] })).toEqual(['QM-04-1', 'QM-04-2', 'QM-04-3', 'QM-04-4', 'QM-04-5', 'QM-04-6']);
    expect(ids({ positions: ['QM-05-2', 'QM-01-3'] })).toEqual(['QM-01-3', 'QM-05-2']);
    expect(ids({ positions: ['QM-01-3'], lines: ['QM-04'] })).toHaveLength(7);
    expect(ids({ positions: [], lines: [] })).toEqual([]);
    expect(ids({ lines: ['QM-99', '__proto__'], positions: ['constructor'] })).toEqual([]);
  });

  it('[LABELS-03] says line, place, belt and width; a position whose line is not there gets none', () => {
    expect(positionLabels(plant, { positions: ['QM-04-3'] })).toEqual([
      {
        position: 'QM-04-3',
        line: 'QM-04',
        lineName: 'Spine',
        place: 'Spine section 3',
        belt: 'Flint-30',
        width_m: 0.06,
        plant: { id: 'quillmoor', name: 'Quillmoor Crate Works' },
      },
    ]);
    expect(positionLabels({ ...plant, lines: {} })).toEqual([]);
  });
});
