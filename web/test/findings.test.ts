import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { byId, checkPlant, type Kind, type Plant, readPlantFolder } from '@loopwright/plant';
import { describe, expect, test } from 'vitest';
import type { PlainThing } from '../src/form/entries.ts';
import { findingsOf, plantWith } from '../src/form/findings.ts';

const folder = join(import.meta.dirname, '../../demo');
const files = readdirSync(folder)
  .filter((name) => name.endsWith('.csv'))
  .map((name) => [name, readFileSync(join(folder, name))] as const);
const demo = readPlantFolder(new Map(files)).plant;
if (demo === undefined) throw new Error('the demo plant cannot be read');

const changed = (kind: Kind, id: string, change: PlainThing): PlainThing => ({ ...demo[kind][id], ...change });
const codes = (problems: readonly { readonly code: string; readonly id: string }[]) =>
  problems.map(({ code, id }) => `${code} ${id}`);

/** Every change that a test below makes, held against the whole plant by the checks of the plant alone. */
const changes: readonly (readonly [Kind, string, PlainThing])[] = [
  ['belts', 'Alder-24', { maxElongation: 0.002 }],
  ['belts', 'Alder-24', { thickness_m: 0.004, minPulley_m: 0.3 }],
  ['dies', 'die-10x80', { maxWidth_m: 0.03 }],
  ['dies', 'die-10x80', { pitch_m: 0.012 }],
  ['templates', 'template-alder-50', { pocketWidth_m: 0.2 }],
  ['recipes', 'alder-north', { top_degC: 60, open_degC: 60 }],
  ['recipes', 'alder-north', { beltPressure_Pa: 1_900_000 }],
  ['presses', 'P1', { maxPressure_Pa: 10_000 }],
  ['lines', 'QM-04', { takeUpStroke_m: 0.1 }],
  ['lines', 'QM-04', { setElongation: 0.05, width_m: 0.5 }],
  ['lines', 'QM-04', { belt: 'Sedge-18' }],
  ['positions', 'QM-04-3', { takeUp_m: 5 }],
  ['rolls', 'roll-A24-1', { left_m: 3 }],
  ['badges', 'b1', { word: 'Newt' }],
];

describe('held against the plant', () => {
  test.each(changes)(
    '[STORES-08] %s %s %j: what the part near it finds is what the whole plant finds',
    (kind, id, change) => {
      const thing = changed(kind, id, change);
      const name = (problem: object) => JSON.stringify(problem);
      const before = new Set(
        checkPlant(demo).map(({ code, kind: of, id: which, field }) => name([code, of, which, field])),
      );
      const expected = checkPlant(plantWith(demo, kind, thing)).filter(
        ({ code, kind: of, id: which, field }) =>
          !before.has(name([code, of, which, field])) || (of === kind && which === id),
      );
      const { errors, cares } = findingsOf(demo, kind, thing);
      expect([...errors, ...cares].map(name).sort()).toEqual(expected.map(name).sort());
    },
  );

  test('[STORES-08] the changes above find something of every sort', () => {
    const found = changes.map(([kind, id, change]) => findingsOf(demo, kind, changed(kind, id, change)));
    expect(found.filter(({ errors }) => errors.length > 0).length).toBeGreaterThanOrEqual(4);
    expect(found.filter(({ cares }) => cares.length > 0).length).toBeGreaterThanOrEqual(8);
  });

  test('[STORES-08] a contradiction that was there before does not stop another change', () => {
    const broken = plantWith(demo, 'belts', changed('belts', 'Alder-24', { maxElongation: 0.002 })) as Plant;
    const thing = { ...broken.belts['Alder-24'], note: 'seen' };
    const { errors, cares } = findingsOf(broken, 'belts', thing);
    expect(errors).toEqual([]);
    expect(codes(cares)).toContain('elongation-window-empty Alder-24');
  });

  test('[STORES-08] in a plant of a thousand lines and ten thousand positions one line is held in a moment', () => {
    const many = (kind: 'lines' | 'pulleys' | 'positions') =>
      byId(
        Array.from({ length: 167 }, (_, at) =>
          Object.values(demo[kind]).map((thing) => ({
            ...thing,
            id: `${thing.id}.${at}`,
            ...('line' in thing ? { line: `${thing.line}.${at}` } : {}),
          })),
        ).flat(),
      );
    const big = { ...demo, lines: many('lines'), pulleys: many('pulleys'), positions: many('positions') } as Plant;
    expect(Object.keys(big.positions).length).toBeGreaterThan(10_000);
    const line = { ...big.lines['QM-04.7'], takeUpStroke_m: 0.1 };
    findingsOf(big, 'lines', line);
    const start = process.cpuUsage();
    const { errors } = findingsOf(big, 'lines', line);
    const spent_ms = process.cpuUsage(start).user / 1000;
    expect(errors.length).toBeGreaterThan(0);
    // The whole of such a plant takes half a second; the part near a line a few milliseconds.
    expect(spent_ms).toBeLessThan(150);
  });
});
