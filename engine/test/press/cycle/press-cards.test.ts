import { describe, expect, it } from 'vitest';
import { checkAgainst } from '../../../../tools/validation/check.ts';
import { type Cycle, cycle } from '../../../src/press/index.ts';
import { cards } from './press-cards.ts';
import { type Belt, pressed, run } from './presses.ts';

/** A cycle that must come to its end. */
function done(input: Parameters<typeof cycle>[0], exactness?: Parameters<typeof cycle>[1]): Cycle {
  const result = cycle(input, exactness);
  if (result.status !== 'ok') throw new Error(result.reason);
  return result;
}

/** How each mark is named in the book, its unit, and how far two programs may lie apart. */
const marks = [
  ['ready_s', 'CYCLE-01 ready', 's', 0.5, ({ marks }: Cycle) => marks.ready_s],
  ['open_s', 'CYCLE-01 opening', 's', 0.5, ({ marks }: Cycle) => marks.open_s],
  [
    'peakMid_degC',
    'CYCLE-01 peak in the middle',
    'degC',
    0.1,
    ({ probes }: Cycle) => probes[1]?.peak_degC ?? Number.NaN,
  ],
  [
    'midAtOpen_degC',
    'CYCLE-01 middle at opening',
    'degC',
    0.1,
    ({ probes }: Cycle) => probes[1]?.atOpen_degC ?? Number.NaN,
  ],
  ['healing', 'CYCLE-01 healing', '1', 0.05, ({ belt }: Cycle) => belt.healingMin],
  ['flow', 'CYCLE-01 flow', '1', 30, ({ belt }: Cycle) => belt.flowMin],
  ['molarMassShare', 'CYCLE-01 molar mass left', '1', 1e-4, ({ belt }: Cycle) => belt.molarMassShareMin],
  ['energy_Wh', 'CYCLE-01 energy at the plug', 'Wh', 0.1, (result: Cycle) => result.energy_Wh],
  ['peakCurrent_A', 'CYCLE-01 peak current', 'A', 0.002, (result: Cycle) => result.peakCurrent_A],
] as const;

describe('two example presses', () => {
  it.each(cards)('[CYCLE-01] $press press, $belt, $run', ({ press, belt, run: name, ...published }) => {
    const result = done(run(press, belt as Belt, name));
    for (const [field, what, unit, tolerance, ours] of marks) {
      const wanted = published[field];
      const relative = field === 'healing' || field === 'flow' ? 0.005 * wanted : tolerance;
      checkAgainst({
        topic: 'heat',
        id: `${what}: ${belt}, ${name}`,
        source: 'the same equations on other cells and steps by a separate program; computed, nothing measured',
        evidence: 'independent',
        inputs: `${press} example press, ${belt}`,
        unit,
        published: wanted,
        ours: ours(result),
        tolerance: Math.max(relative, field === 'molarMassShare' ? 1e-4 * (1 + 50 * (1 - wanted)) : 0),
        why: '0.5 s and 0.1 K; healing and flow 0.5 %',
      });
    }
  });

  it('[CYCLE-02] a whole cycle of the light press takes 17 to 18 minutes: common practice, no source', () => {
    for (const belt of ['Sedge-18', 'Alder-24', 'Flint-30'] as const) {
      const { marks, grade } = done(pressed('light', belt));
      expect(marks.open_s / 60).toBeGreaterThan(17);
      expect(marks.open_s / 60).toBeLessThan(18);
      expect(grade).toBe('good');
    }
  });

  it('[CYCLE-02] too cold is not filled, too hot and wet is over-fused, opened at 90 degC is said', () => {
    const gradeOf = (name: string) => done(run('light', 'Alder-24', name));
    expect(gradeOf('162/166').grade).toBe('not-filled');
    expect(gradeOf('210/216').grade).toBe('over-fused');
    expect(gradeOf('opened at 90').reasons.map(({ code }) => code)).toContain('opened-hot');
  });

  it('[CYCLE-02] Flint-30 on the heavy press over-fills with 160 s, is good with 40 s', () => {
    const stated = pressed('heavy', 'Flint-30');
    expect(done(stated).grade).toBe('over-fused');
    expect(done({ ...stated, recipe: { ...stated.recipe, dwell_s: 40 } }).grade).toBe('good');
  });
});
