import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkAgainst } from '../../../../tools/validation/check.ts';
import { facesLaw } from '../../../src/press/cycle/faces-law.ts';
import { type BareFace, type CycleInput, faceLoss_W_m2K, type Platen } from '../../../src/press/index.ts';
import { lawLoss_W_m2, lawSlope_W_m2K } from '../../../src/press/march/loss-law.ts';
import { barePlatens } from './bare-platens.ts';
import { done, refusal } from './done.ts';
import { pressed } from './presses.ts';

const alder = pressed('light', 'Alder-24');
/** Outside of a platen of 300 mm x 150 mm: its back and its edges. */
const faces: readonly BareFace[] = [
  { faces: 'up', length_m: 0.05, emissivity: 0.1, area_m2: 0.045 },
  { faces: 'side', length_m: 0.01, emissivity: 0.1, area_m2: 0.009 },
];
const bothOf = (of: Partial<Platen>): Pick<CycleInput, 'top' | 'bottom'> => ({
  top: { ...alder.top, ...of },
  bottom: { ...alder.bottom, ...of },
});

/** Loss of those faces by the formulas themselves. */
function loss_W_m2(temperature_degC: number): number {
  const lost_W = faces.reduce(
    (sum, face) => sum + face.area_m2 * faceLoss_W_m2K(face, temperature_degC, 25) * (temperature_degC - 25),
    0,
  );
  return lost_W / 0.045;
}

describe('losses of bare faces', () => {
  it('[LOSS-12] tabulated, they are the formulas; colder than the room they take heat in', () => {
    const law = facesLaw({ ...alder.top, faces }, 25);
    if (law === undefined) throw new Error('no law');
    const temperatures = Array.from({ length: 300 }, (_, i) => 30 + i * 1.01);
    checkAgainst({
      topic: 'heat',
      id: 'LOSS-12 tabulated loss',
      source: 'the formulas of still air and radiation themselves',
      evidence: 'derived',
      inputs: 'back and edges of a platen of 300 mm x 150 mm from 30 to 332 degC, largest relative difference',
      unit: '1',
      published: 0,
      ours: Math.max(...temperatures.map((t) => Math.abs(lawLoss_W_m2(law, t) / loss_W_m2(t) - 1))),
      tolerance: 5e-4,
      why: 'far below what the formulas themselves are worth',
    });
    for (const t of temperatures) {
      const slope = (lawLoss_W_m2(law, t + 1e-4) - lawLoss_W_m2(law, t - 1e-4)) / 2e-4;
      expect(Math.abs(lawSlope_W_m2K(law, t) / slope - 1)).toBeLessThan(1e-4);
    }
    expect(Math.abs(lawLoss_W_m2(law, 25))).toBeLessThan(1e-9);
    expect(lawLoss_W_m2(law, 5)).toBeLessThan(-30);
    // Outside the table in a straight line.
    const above = (t: number) => lawLoss_W_m2(law, t);
    expect(above(420) - above(410)).toBeCloseTo(above(410) - above(400), 6);
  });

  it('[LOSS-13] a platen that cools in still air takes as long as the integral of capacity over loss says', () => {
    const input = barePlatens({ faces, loss_W_m2K: 0, fan_W_m2K: 0 }, { open_degC: 60 });
    const { marks, platens } = done(input);
    const [from_s, to_s] = [marks.dwellEnd_s + 60, marks.open_s - 60];
    const [hot, cold] = done({ ...input, times_s: [from_s, to_s] }).platens.top.values_degC ?? [];
    if (typeof hot !== 'number' || typeof cold !== 'number') throw new Error('no temperatures');
    // Simpson's rule on a fine grid, with nothing of the cycle's own steps or tables.
    const n = 20_000;
    const width = (hot - cold) / n;
    const time = (t: number) => (25_300 * (1 + 4.4e-4 * (t - 25))) / loss_W_m2(t);
    let sum = time(hot) + time(cold);
    for (let i = 1; i < n; i += 1) sum += (i % 2 === 0 ? 2 : 4) * time(cold + i * width);
    checkAgainst({
      topic: 'heat',
      id: 'LOSS-13 platen in still air',
      source: 't = integral of C(T)/q(T) dT, by Simpson’s rule in 20 000 panels',
      evidence: 'derived',
      inputs: 'one lump, still air and radiation alone, from 60 s after the dwell to 60 s before 60 degC',
      unit: 's',
      published: (sum * width) / 3,
      ours: to_s - from_s,
      tolerance: 0.5,
      why: '0.01 K a step: the time to lose 0.02 K at the end',
    });
    expect(platens.top.atOpen_degC).toBeCloseTo(60, 2);
    const fine = done(input, { refine: 1, tolerance_K: 1e-4 }).marks.open_s;
    expect(Math.abs(fine - marks.open_s)).toBeLessThan(0.5);
  });

  it('[LOSS-13] with bare faces, fan and water the heat put in is all accounted for, to rounding', () => {
    const any = fc.record({
      emissivity: fc.double({ min: 0, max: 1, noNaN: true }),
      area_m2: fc.double({ min: 0, max: 0.15, noNaN: true }),
      flow_kg_s: fc.double({ min: 1e-4, max: 0.1, noNaN: true }),
      from_degC: fc.double({ min: 40, max: 200, noNaN: true }),
    });
    fc.assert(
      fc.property(any, ({ emissivity, area_m2, flow_kg_s, from_degC }) => {
        const face = { faces: 'down', length_m: 0.05, emissivity, area_m2 } as const;
        const water = { inlet_degC: 18, flow_kg_s, transferUnits: 1, from_degC };
        const result = done({ ...alder, ...bothOf({ loss_W_m2K: 2, faces: [face], water }) });
        expect(Math.abs(result.balanceResidual)).toBeLessThan(1e-10);
      }),
      { seed: 42, numRuns: Number(process.env['LW_RUNS'] ?? 25) },
    );
  });

  it('[LOSS-13] the same accuracy with bare faces as with a coefficient', () => {
    const bare = { ...alder, ...bothOf({ loss_W_m2K: 0, faces }) };
    const [usual, fine] = [done(bare), done(bare, { refine: 3, tolerance_K: 1e-4 })];
    expect(Math.abs(usual.marks.ready_s - fine.marks.ready_s)).toBeLessThan(0.1);
    expect(Math.abs(usual.marks.open_s - fine.marks.open_s)).toBeLessThan(0.1);
    expect(Math.abs((usual.probes[1]?.peak_degC ?? 0) - (fine.probes[1]?.peak_degC ?? 0))).toBeLessThan(0.02);
    // About as much as the coefficient of 8 W/(m2 K) that the example press states.
    expect(Math.abs(usual.marks.ready_s - done(alder).marks.ready_s)).toBeLessThan(15);
  });
});

describe('water cooling', () => {
  const water = { inlet_degC: 15, flow_kg_s: 0.0333, transferUnits: 1 };

  it('[CYCLE-15] with water in both platens one lump cools by an exponential towards air and water', () => {
    const input = barePlatens({ capacitySlope_1_K: 0, water }, { open_degC: 50 });
    const { marks } = done(input);
    const [start] = done({ ...input, times_s: [marks.dwellEnd_s] }).platens.top.values_degC ?? [];
    const [air, wet] = [8 + 130, (0.0333 * 4180 * (1 - Math.exp(-1))) / 0.045];
    const towards = (air * 25 + wet * 15) / (air + wet);
    const time_s = (25_300 / (air + wet)) * Math.log(((start ?? 0) - towards) / (50 - towards));
    checkAgainst({
      topic: 'heat',
      id: 'CYCLE-15 water in both platens',
      source: 't = C/(U + w)*ln((T0 - Tm)/(T1 - Tm)), Tm between air and water by their coefficients',
      evidence: 'derived',
      inputs: 'platens of 25.3 kJ/(m2 K) with 2 L/min at 15 degC, fan 130 W/(m2 K), air 25 degC, to 50 degC',
      unit: 's',
      published: time_s,
      ours: marks.open_s - marks.dwellEnd_s,
      tolerance: 0.02,
      why: 'accuracy of the steps; sensors lag by 1 ms',
    });
  });

  it('[CYCLE-15] water waits for its temperature; let in above 100 degC it is said that boiling is not computed', () => {
    const dry = done(alder);
    const [late, early] = [95, undefined].map((from_degC) => ({
      ...alder,
      ...bothOf({ water: { ...water, ...(from_degC !== undefined && { from_degC }) } }),
    })) as [CycleInput, CycleInput];
    const after = done(late);
    expect(after.warnings).toBeUndefined();
    expect(after.marks.open_s).toBeLessThan(dry.marks.open_s - 60);
    const times_s = Array.from({ length: 60 }, (_, i) => dry.marks.dwellEnd_s + 5 * i);
    const seen = (input: CycleInput) => done({ ...input, times_s }).sensors.top.values_degC ?? [];
    const [withWater, without] = [seen(late), seen(alder)];
    without.forEach((value, i) => {
      if ((value ?? 0) > 96) expect(Math.abs((withWater[i] ?? 0) - (value ?? 0))).toBeLessThan(0.05);
    });
    const boiling = done(early);
    expect(boiling.marks.open_s).toBeLessThan(after.marks.open_s);
    expect(boiling.warnings?.map(({ code, path }) => [code, path])).toEqual([['water-boils', 'top.water']]);
    expect(boiling.warnings?.[0]?.data['value']).toBeGreaterThan(180);
  });

  it('[CYCLE-15] water below the air’s temperature lets a press open colder than the air; never colder than between both', () => {
    const of = (open_degC: number): CycleInput => ({
      ...barePlatens({ water }),
      recipe: { ...alder.recipe, open_degC },
    });
    expect(done(of(18)).marks.open_s).toBeGreaterThan(0);
    const [air, wet] = [138, (0.0333 * 4180 * (1 - Math.exp(-1))) / 0.045];
    const refused = refusal(of(15.5));
    expect(refused).toMatchObject({ code: 'never-cools', path: 'recipe.open_degC' });
    expect(refused.data['min']).toBeCloseTo((air * 25 + wet * 15) / (air + wet), 9);
    const hot = { ...barePlatens({ water: { ...water, inlet_degC: 60 } }), recipe: { ...alder.recipe, open_degC: 50 } };
    expect(refusal(hot).data['min']).toBeGreaterThan(55);
  });

  it('[CYCLE-15] faces and water with absurd numbers are refused by name', () => {
    const face = faces[0] as BareFace;
    const code = (of: Partial<Platen>) => {
      const { code, path } = refusal({ ...alder, top: { ...alder.top, ...of } });
      return `${path}: ${code}`;
    };
    expect(code({ faces: [{ ...face, faces: 'inside' as 'up' }] })).toBe('top.faces[0].faces: unknown-face');
    expect(code({ faces: [{ ...face, emissivity: 1.2 }] })).toBe('top.faces[0].emissivity: out-of-range');
    expect(code({ faces: [{ ...face, length_m: 0 }] })).toBe('top.faces[0].length_m: out-of-range');
    expect(code({ faces: Array(21).fill(face) })).toBe('top.faces: out-of-range');
    expect(code({ water: { ...water, inlet_degC: -5 } })).toBe('top.water.inlet_degC: out-of-range');
    expect(code({ water: { ...water, flow_kg_s: 0 } })).toBe('top.water.flow_kg_s: out-of-range');
    expect(code({ water: { ...water, transferUnits: Number.NaN } })).toBe('top.water.transferUnits: not-finite');
  });
});
