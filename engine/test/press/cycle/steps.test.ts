import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkAgainst } from '../../../../tools/validation/check.ts';
import { fusion } from '../../../src/fusion/index.ts';
import type { Cycle, CycleInput, Recipe, RecipeStep } from '../../../src/press/index.ts';
import { done, refusal } from './done.ts';
import { cards } from './press-cards.ts';
import { type Belt, pressed, run } from './presses.ts';

const alder = pressed('light', 'Alder-24');
const runs = Number(process.env['LW_RUNS'] ?? 20);

function stepped(steps: readonly RecipeStep[], of: Partial<CycleInput> = {}, recipe: Partial<Recipe> = {}): CycleInput {
  return { ...alder, ...of, recipe: { ...alder.recipe, ...recipe, steps } };
}
const middle = ({ probes }: Cycle) => {
  const [, probe] = probes;
  if (probe === undefined) throw new Error('no probe');
  return probe;
};
/** What a recipe without steps answers. */
const withoutEnds = ({ marks: { stepEnds_s: _, ...marks }, ...rest }: Cycle) => ({ ...rest, marks });
const ramp: RecipeStep = { kind: 'ramp' };
const cool: RecipeStep = { kind: 'cool' };

describe('steps of a recipe', () => {
  it('[CYCLE-11] a ramp, a dwell and a cool are the simple recipe, to the last bit', () => {
    for (const { press, belt, run: name } of cards) {
      const simple = run(press, belt as Belt, name);
      const same = { ...simple, recipe: { ...simple.recipe, steps: [ramp, { kind: 'dwell' } as const, cool] } };
      expect(withoutEnds(done(same))).toEqual(done(simple));
    }
  });

  it('[CYCLE-11] a dwell in two parts, with a pressure that changes nothing between them, is one dwell', () => {
    const whole = done(alder);
    fc.assert(
      fc.property(fc.double({ min: 0, max: 160, noNaN: true }), (first_s) => {
        const parts = [
          ramp,
          { kind: 'dwell', time_s: first_s },
          { kind: 'pressure', pressure_Pa: 2e5 },
          { kind: 'dwell', time_s: 160 - first_s },
          cool,
        ] as const;
        const split = done(stepped(parts));
        expect(Math.abs(split.marks.open_s - whole.marks.open_s)).toBeLessThan(1e-6);
        expect(Math.abs(middle(split).flow / middle(whole).flow - 1)).toBeLessThan(1e-9);
        expect(Math.abs(middle(split).healing / middle(whole).healing - 1)).toBeLessThan(1e-9);
        expect(Math.abs(middle(split).peak_degC - middle(whole).peak_degC)).toBeLessThan(1e-9);
      }),
      { seed: 42, numRuns: runs },
    );
    const split = done(stepped([ramp, { kind: 'dwell', time_s: 60 }, { kind: 'dwell', time_s: 100 }, cool]));
    checkAgainst({
      topic: 'heat',
      id: 'CYCLE-11 dwell in two parts',
      source: 'the same dwell in one part',
      evidence: 'derived',
      inputs: 'light example press, Alder-24, 160 s as 60 s and 100 s; healing in the middle',
      unit: '1',
      published: middle(whole).healing,
      ours: middle(split).healing,
      tolerance: 1e-9,
      why: 'nothing happens between both parts',
    });
    const [heated_s, half_s, end_s, open_s] = split.marks.stepEnds_s ?? [];
    expect([heated_s, end_s, open_s]).toEqual([split.marks.ready_s, split.marks.dwellEnd_s, split.marks.open_s]);
    expect(half_s).toBe(split.marks.ready_s + 60);
  });

  it('[CYCLE-12] flow under two pressures is the sum of each times its own integral of the fluidity', () => {
    const flow = (first_Pa: number, second_Pa: number) => {
      const steps = [
        ramp,
        { kind: 'dwell', time_s: 60 },
        { kind: 'pressure', pressure_Pa: second_Pa },
        { kind: 'dwell', time_s: 100 },
        cool,
      ] as const;
      return middle(done(stepped(steps, {}, { pressure_Pa: first_Pa }))).flow;
    };
    // Two runs give both integrals; a third must be made of them.
    const [a, b] = [flow(1e5, 3e5), flow(3e5, 1e5)];
    const [early, late] = [(3 * b - a) / 8e5, (3 * a - b) / 8e5];
    checkAgainst({
      topic: 'fusion',
      id: 'CYCLE-12 flow over two pressures',
      source: 'J = sum of p times the integral of phi/eta over each part of the dwell',
      evidence: 'derived',
      inputs:
        'light example press, Alder-24: 2.5 bar up to 60 s of the dwell, then 0.7 bar; both integrals from other pairs',
      unit: '1',
      published: 2.5e5 * early + 0.7e5 * late,
      ours: flow(2.5e5, 0.7e5),
      tolerance: 1e-8 * a,
      why: 'a sum, to rounding',
    });
    expect(early).toBeGreaterThan(0);
    expect((early + late) * 2e5).toBeCloseTo(middle(done(alder)).flow, -1);
  });

  it('[CYCLE-12] pressures in dwell and cooling: the history added up apart gives the same fusion and grade', () => {
    const steps = [
      { kind: 'pressure', pressure_Pa: 0.5e5 },
      ramp,
      { kind: 'dwell', time_s: 40 },
      { kind: 'pressure', pressure_Pa: 2.5e5 },
      { kind: 'dwell', time_s: 80 },
      { kind: 'cool', below_degC: 150 },
      { kind: 'pressure', pressure_Pa: 1e5 },
      cool,
    ] as const;
    const wet = { fusion: { moisture_share: 0.0012 } };
    const ends_s = done(stepped(steps, wet)).marks.stepEnds_s ?? [];
    const changes = [0, 3, 6].map((step, i) => ({ at_s: ends_s[step] ?? 0, p: [0.5e5, 2.5e5, 1e5][i] ?? 0 }));
    const open_s = ends_s.at(-1) ?? 0;
    // Every second, and both sides of each change.
    const even = Array.from({ length: Math.floor(open_s) }, (_, i) => i);
    const times_s = [...new Set([...even, ...changes.flatMap(({ at_s }) => [at_s, at_s + 1e-6])])].sort(
      (x, y) => x - y,
    );
    const result = done({ ...stepped(steps, wet), times_s });
    const apart = fusion({
      times_s,
      nodes_degC: result.probes.map(({ values_degC }) => (values_degC ?? []).map((value) => value ?? Number.NaN)),
      pressure_Pa: times_s.map((time) => changes.findLast(({ at_s }) => at_s < time || time === 0)?.p ?? 0.5e5),
      fusion: wet.fusion,
    });
    apart.nodes.forEach((node, index) => {
      const own = result.probes[index];
      expect(Math.abs(node.flow / (own?.flow ?? 0) - 1)).toBeLessThan(3e-3);
      expect(Math.abs(node.healing / (own?.healing ?? 0) - 1)).toBeLessThan(2e-3);
      expect(node.peak_degC).toBeCloseTo(own?.peak_degC ?? 0, 1);
      expect((own?.fillValues_m ?? []).at(-1)).toBeCloseTo(own?.fill_m ?? 0, 6);
    });
    expect(apart.grade).toBe('voids-likely');
    expect(result.grade).toBe(apart.grade);
    const voids = ({ reasons }: { reasons: Cycle['reasons'] }) => reasons.find(({ code }) => code === 'voids')?.value;
    expect(voids(result)).toBeCloseTo(voids(apart) ?? 0, 2);
  });

  const strong = { ...alder.top, heater_W: 20_000, control: { kind: 'proportional', band_K: 0.5 } } as const;

  it('[CYCLE-13] a heater that can do it follows a ramp, and is ready when the slower set point comes to rest', () => {
    const steps = [{ kind: 'ramp', rate_K_s: 0.4 }, { kind: 'dwell' }, cool] as const;
    const times_s = [100, 200, 300, 390];
    const result = done({ ...stepped(steps, { top: strong, bottom: strong }), times_s });
    checkAgainst({
      topic: 'heat',
      id: 'CYCLE-13 ramp of a strong heater',
      source: 'time = (188 - 25)/0.4',
      evidence: 'derived',
      inputs: 'from 25 degC to 182 and 188 degC with 0.4 K/s, 20 kW a platen',
      unit: 's',
      published: 407.5,
      ours: result.marks.ready_s,
      tolerance: 1e-6,
      why: 'events are met exactly',
    });
    times_s.forEach((time, i) => {
      const set_degC = 25 + 0.4 * time;
      // Under steady rise the sensor is behind by the share of the band that the heat takes, and the platen before it by lag times rate.
      expect(Math.abs((result.sensors.top.values_degC?.[i] ?? 0) - set_degC)).toBeLessThan(0.03);
      expect(Math.abs((result.platens.top.values_degC?.[i] ?? 0) - set_degC - 3 * 0.4)).toBeLessThan(0.03);
    });
  });

  it('[CYCLE-13] under proportional control a slower ramp is never ready earlier, and none before its set points rest', () => {
    const platen = { ...alder.top, control: { kind: 'proportional', band_K: 6 } } as const;
    const of = { top: platen, bottom: platen };
    const at = (rate_K_s: number) =>
      done(stepped([{ kind: 'ramp', rate_K_s }, { kind: 'dwell' }, cool], of)).marks.ready_s;
    const plain = done({ ...alder, ...of }).marks.ready_s;
    expect(at(100) - plain).toBeLessThan(2);
    const times = [100, 5, 1, 0.6, 0.45, 0.4, 0.35, 0.3, 0.2].map(at);
    times.forEach((time, i) => {
      expect(time).toBeGreaterThan((times[i - 1] ?? plain) - 0.05);
    });
    expect(times.at(-1)).toBeGreaterThan((188 - 25) / 0.2 - 1e-6);
  });

  it('[CYCLE-14] soaks between ramps hold their set points for their times; a ramp down ends from above', () => {
    const steps = [
      { kind: 'ramp', top_degC: 120, bottom_degC: 125 },
      { kind: 'soak', time_s: 200 },
      ramp,
      { kind: 'soak', time_s: 30 },
      { kind: 'dwell', time_s: 50 },
      { kind: 'ramp', top_degC: 160, bottom_degC: 165, rate_K_s: 0.05 },
      { kind: 'dwell', time_s: 60 },
      cool,
    ] as const;
    const first = done(stepped(steps)).marks;
    const [atLow = 0, soaked = 0, atHigh = 0, rested = 0, dwelt = 0, down = 0, end = 0] = first.stepEnds_s ?? [];
    const gaps = [soaked - atLow, rested - atHigh, dwelt - rested, end - down];
    [200, 30, 50, 60].forEach((wanted, i) => {
      expect(gaps[i]).toBeCloseTo(wanted, 6);
    });
    expect([first.ready_s, first.dwellEnd_s]).toEqual([rested, end]);
    expect(down - dwelt).toBeGreaterThan(23 / 0.05 - 1);
    const { sensors } = done({ ...stepped(steps), times_s: [soaked, atHigh, down, end] });
    const [low = 0, high = 0, lower = 0, last = 0] = (sensors.top.values_degC ?? []).map((value) => value ?? 0);
    expect(Math.abs(low - 120)).toBeLessThan(0.5);
    expect(high).toBeGreaterThan(180 - 1e-3);
    expect(lower).toBeLessThan(162 + 1e-3);
    expect(Math.abs(last - 160)).toBeLessThan(2);
  });

  it('[CYCLE-14] a press that waits before it heats up does the same later', () => {
    const late = done(stepped([{ kind: 'soak', time_s: 100 }, ramp, { kind: 'dwell' }, cool]));
    const plain = done(alder);
    expect(late.marks.ready_s - 100).toBeCloseTo(plain.marks.ready_s, 6);
    expect(late.marks.open_s - 100).toBeCloseTo(plain.marks.open_s, 6);
    expect(middle(late).healing).toBeCloseTo(middle(plain).healing, 6);
    expect(middle(late).flow / middle(plain).flow).toBeCloseTo(1, 9);
  });

  it('[CYCLE-14] a cool may end after a time, opened hot, and heaters never come on again', () => {
    const early = done(stepped([ramp, { kind: 'dwell' }, { kind: 'cool', time_s: 120 }]));
    expect(early.marks.open_s - early.marks.dwellEnd_s).toBeCloseTo(120, 6);
    expect(early.reasons.map(({ code }) => code)).toContain('opened-hot');
    const twice = done(stepped([ramp, { kind: 'dwell' }, { kind: 'cool', below_degC: 120 }, cool]));
    expect(twice.marks.open_s).toBeCloseTo(done(alder).marks.open_s, 1);
    expect(Math.abs(twice.balanceResidual)).toBeLessThan(1e-10);
  });

  it('[CYCLE-08] a set point or a cooling of a step that is never reached is said with its step', () => {
    const weak = stepped([{ kind: 'ramp', top_degC: 60 }, ramp, { kind: 'dwell' }, cool], {
      supply: { ...alder.supply, volts_V: 45 },
    });
    expect(refusal(weak)).toMatchObject({ code: 'set-point-not-reached', path: 'recipe.steps[0]' });
    const down = stepped([ramp, { kind: 'ramp', top_degC: 20, bottom_degC: 20 }, { kind: 'dwell' }, cool]);
    expect(refusal(down)).toMatchObject({ code: 'never-cools', path: 'recipe.steps[1]', data: { value: 20 } });
    const cold = stepped([ramp, { kind: 'dwell' }, { kind: 'cool', below_degC: 20 }]);
    expect(refusal(cold)).toMatchObject({ code: 'never-cools', path: 'recipe.steps[2]', data: { value: 20, min: 25 } });
  });

  it('[CYCLE-16] steps out of order, none, too many, unknown or with absurd numbers are refused by their place', () => {
    const dwell = { kind: 'dwell' } as const;
    const refused = (steps: readonly RecipeStep[]) => {
      const { code, path } = refusal(stepped(steps));
      return [code, path];
    };
    expect(refused([])).toEqual(['too-few', 'recipe.steps']);
    expect(refused(Array(61).fill(dwell))).toEqual(['too-many', 'recipe.steps']);
    expect(refused([dwell, ramp, cool])).toEqual(['step-out-of-order', 'recipe.steps[0]']);
    expect(refused([ramp, dwell])).toEqual(['step-out-of-order', 'recipe.steps[1]']);
    expect(refused([ramp, cool])).toEqual(['step-out-of-order', 'recipe.steps[1]']);
    expect(refused([ramp, dwell, cool, ramp, cool])).toEqual(['step-out-of-order', 'recipe.steps[3]']);
    expect(refused([ramp, { kind: 'dance' } as unknown as RecipeStep, cool])).toEqual([
      'unknown-step',
      'recipe.steps[1].kind',
    ]);
    expect(refused([{ kind: 'ramp', rate_K_s: 0 }, dwell, cool])).toEqual(['out-of-range', 'recipe.steps[0].rate_K_s']);
    expect(refused([ramp, { kind: 'dwell', time_s: Number.NaN }, cool])).toEqual([
      'not-finite',
      'recipe.steps[1].time_s',
    ]);
  });
});
