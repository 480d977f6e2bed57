import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkAgainst } from '../../../../tools/validation/check.ts';
import { fusionParameters } from '../../../src/fusion/parameters.ts';
import { fluidity_1_Pa_s, healingRate_1_s, scissionRate_1_s } from '../../../src/fusion/rates.ts';
import { addRates, rateTable } from '../../../src/press/cycle/rate-table.ts';
import { type Cycle, type CycleInput, cycle } from '../../../src/press/index.ts';
import { Refusal } from '../../../src/refusal.ts';
import { pressed } from './presses.ts';

const alder = pressed('light', 'Alder-24');

function done(input: CycleInput, exactness?: Parameters<typeof cycle>[1]): Cycle {
  const result = cycle(input, exactness);
  if (result.status !== 'ok') throw new Error(result.reason);
  return result;
}

const middle = ({ probes }: Cycle) => {
  const [, probe] = probes;
  if (probe === undefined) throw new Error('no probe');
  return probe;
};

/** What two computations of one cycle may differ by. */
function expectAlike(a: Cycle, b: Cycle): void {
  expect(Math.abs(a.marks.ready_s - b.marks.ready_s)).toBeLessThan(0.1);
  expect(Math.abs(a.marks.open_s - b.marks.open_s)).toBeLessThan(0.1);
  expect(Math.abs(middle(a).peak_degC - middle(b).peak_degC)).toBeLessThan(0.02);
  expect(Math.abs(middle(a).healing / middle(b).healing - 1)).toBeLessThan(0.005);
  expect(Math.abs(middle(a).flow / middle(b).flow - 1)).toBeLessThan(0.005);
}

describe('what a cycle must keep to', () => {
  it('[CYCLE-03] the heat put in is all accounted for, to rounding', () => {
    const anyPress = fc.record({
      dwell_s: fc.double({ min: 1, max: 900, noNaN: true }),
      top: fc.double({ min: 120, max: 200, noNaN: true }),
      volts: fc.double({ min: 100, max: 132, noNaN: true }),
    });
    fc.assert(
      fc.property(anyPress, ({ dwell_s, top, volts }) => {
        const recipe = { ...alder.recipe, dwell_s, top_degC: top, bottom_degC: top + 5 };
        const result = done({ ...alder, recipe, supply: { ...alder.supply, volts_V: volts } });
        expect(Math.abs(result.balanceResidual)).toBeLessThan(1e-10);
      }),
      { seed: 42, numRuns: Number(process.env['LW_RUNS'] ?? 60) },
    );
  });

  it('[CYCLE-04] a stack turned over with its set points gives the same cycle turned over', () => {
    const turned: CycleInput = {
      ...alder,
      layers: [...alder.layers].reverse(),
      contacts_W_m2K: [...alder.contacts_W_m2K].reverse(),
      recipe: { ...alder.recipe, top_degC: alder.recipe.bottom_degC, bottom_degC: alder.recipe.top_degC },
      probes: [1, 2, 3].map((layer, index) => ({ layer, fraction: index / 2 })),
    };
    const [a, b] = [done(alder), done(turned)];
    expect(Math.abs(a.marks.open_s - b.marks.open_s)).toBeLessThan(0.02);
    expect(Math.abs(middle(a).peak_degC - middle(b).peak_degC)).toBeLessThan(0.005);
    expect(b.platens.top.overshoot_K).toBeCloseTo(a.platens.bottom.overshoot_K, 2);
  });

  it('[CYCLE-04] asking for temperatures on the way changes nothing', () => {
    const times_s = Array.from({ length: 300 }, (_, i) => i * 5);
    const watched = done({ ...alder, times_s });
    expectAlike(watched, done(alder));
    const after = times_s.filter((time) => time > watched.marks.open_s).length;
    const { values_degC, bondValues, fillValues_m, molarMassShareValues } = middle(watched);
    for (const values of [values_degC, bondValues, fillValues_m, molarMassShareValues]) {
      expect(values?.filter((value) => value === null).length).toBe(after);
    }
    // What healing and flow have come to never shrinks, and ends as the cycle itself says.
    for (const [values, end] of [
      [bondValues, middle(watched).bond],
      [fillValues_m, middle(watched).fill_m],
    ] as const) {
      const seen = (values ?? []).filter((value) => value !== null);
      seen.forEach((value, i) => {
        expect(value).toBeGreaterThanOrEqual(seen[i - 1] ?? 0);
      });
      expect(seen.at(-1)).toBeCloseTo(end, 5);
    }
  });

  it('[CYCLE-05] halved cells, and a tolerance eight times finer, change the middle by less than 0.02 K', () => {
    const off: number[] = [];
    for (const belt of ['Sedge-18', 'Alder-24', 'Flint-30'] as const) {
      for (const press of ['light', 'heavy'] as const) {
        const usual = done(pressed(press, belt));
        const fine = done(pressed(press, belt), { refine: 3, tolerance_K: 1e-4 });
        expectAlike(usual, fine);
        off.push(Math.abs(middle(usual).peak_degC - middle(fine).peak_degC));
      }
    }
    checkAgainst({
      topic: 'heat',
      id: 'CYCLE-05 halved cells',
      source: 'this program on three times the cells and a far finer tolerance: a check of the numerics alone',
      evidence: 'derived',
      inputs: 'peak in the middle of three belts in both example presses, largest difference',
      unit: 'K',
      published: 0,
      ours: Math.max(...off),
      tolerance: 0.02,
      why: 'accuracy asked for',
    });
  });

  it('[CYCLE-05] halved steps change the middle by less than 0.02 K, healing and flow by less than 0.5 %', () => {
    for (const belt of ['Sedge-18', 'Alder-24', 'Flint-30'] as const) {
      const usual = done(pressed('light', belt));
      // The error of a step grows with the fourth power of its length: a sixteenth of it halves the steps.
      const halved = done(pressed('light', belt), { refine: 1, tolerance_K: 0.01 / 16 });
      expect(halved.steps).toBeGreaterThan(1.5 * usual.steps);
      expectAlike(usual, halved);
    }
  });

  it('[MARCH-05] between the ends of steps the temperature is as true as at them', () => {
    const times_s = Array.from({ length: 340 }, (_, i) => i * 3 + 1);
    const values = (result: Cycle) => middle(result).values_degC ?? [];
    const usual = values(done({ ...alder, times_s }));
    const fine = values(done({ ...alder, times_s }, { refine: 3, tolerance_K: 1e-4 }));
    checkAgainst({
      topic: 'heat',
      id: 'MARCH-05 interpolation inside a step',
      source: 'this program with far shorter steps: a check of the numerics alone',
      evidence: 'derived',
      inputs: 'Alder-24 in the light example press, every 3 s',
      unit: 'K',
      published: 0,
      ours: Math.max(...usual.map((value, i) => Math.abs((value ?? 0) - (fine[i] ?? 0)))),
      tolerance: 0.03,
      why: 'accuracy asked for',
    });
  });

  it('[CYCLE-06] tabulated rates are the exponentials to a few thousandths where anything happens', () => {
    const parameters = fusionParameters();
    const table = rateTable(parameters);
    const temperatures = Array.from({ length: 108 }, (_, i) => 155 + 0.7 * i);
    const off = ([healingRate_1_s, fluidity_1_Pa_s, scissionRate_1_s] as const).flatMap((rate, which) =>
      temperatures.map((temperature) => {
        const sums = new Float64Array(3);
        addRates(table, temperature, 1, sums, 0);
        return Math.abs((sums[which] ?? Number.NaN) / rate(temperature, parameters) - 1);
      }),
    );
    checkAgainst({
      topic: 'fusion',
      id: 'CYCLE-06 tabulated rates',
      source: 'the exponentials themselves',
      evidence: 'derived',
      inputs: 'healing, fluidity and scission from 155 to 230 degC, largest relative difference',
      unit: '1',
      published: 0,
      ours: Math.max(...off),
      tolerance: 0.003,
      why: '0.5 % wanted of the integrals',
    });
  });

  it('[CYCLE-07] on/off control holds the platen within its band and the swing of the sensor', () => {
    const control = { kind: 'on-off', hysteresis_K: 2, sample_s: 2 } as const;
    const times_s = Array.from({ length: 60 }, (_, i) => 500 + i);
    const top = { ...alder.top, control };
    const result = done({ ...alder, top, bottom: top, recipe: { ...alder.recipe, dwell_s: 240 }, times_s });
    const seen = (result.sensors.top.values_degC ?? []).filter((value) => value !== null);
    expect(Math.min(...seen)).toBeGreaterThan(182 - 4);
    expect(Math.max(...seen)).toBeLessThan(182 + 4);
  });
});

describe('a press asked for again', () => {
  it('[CYCLE-20] whatever was asked before, and changed since by whoever asked, the answer is the same bit by bit', () => {
    const other = pressed('light', 'Flint-30');
    const layers = alder.layers.map((layer) => ({ ...layer }));
    const own = { ...alder, layers };
    const first = done(own);
    expect(done({ ...own, recipe: { ...own.recipe, dwell_s: 30 } }).marks.open_s).toBeLessThan(first.marks.open_s);
    expect(done(other).marks.open_s).not.toBe(first.marks.open_s);
    expect(done(own)).toEqual(first);
    const [plate] = layers;
    if (plate === undefined) throw new Error('no layer');
    plate.thickness_m = 0.004;
    const thicker = done(own);
    expect(thicker.marks.open_s).toBeGreaterThan(first.marks.open_s + 5);
    expect(done({ ...alder, layers: structuredClone(layers) })).toEqual(thicker);
    const changes: readonly Partial<CycleInput>[] = [
      { ambient_degC: 20 },
      { start_degC: 30 },
      { contacts_W_m2K: alder.contacts_W_m2K.map((given) => (given === 3000 ? 2000 : given)) },
      { contactsWetted_W_m2K: alder.contacts_W_m2K.map((given) => (given === 1500 ? 4000 : null)) },
      { fusion: { weldingTime_s: 40 } },
      { top: { ...alder.top, capacity_J_m2K: 26_000 } },
      { bottom: { ...alder.bottom, capacitySlope_1_K: 0 } },
      { bottom: { ...alder.bottom, faces: [{ faces: 'down', length_m: 0.05, emissivity: 0.1, area_m2: 0.045 }] } },
      { probes: alder.probes.map((probe) => ({ ...probe, fraction: 0.25 })) },
    ];
    for (const change of changes) expect(done({ ...alder, ...change })).not.toEqual(first);
    expect(done(alder)).toEqual(first);
  });
});

describe('what cannot be computed', () => {
  const refused = (change: Partial<CycleInput>) => {
    try {
      cycle({ ...alder, ...change });
    } catch (cause) {
      if (cause instanceof Refusal) return cause;
      throw cause;
    }
    throw new Error('not refused');
  };
  const withLayer = (of: object) => alder.layers.map((layer, i) => (i === 2 ? { ...layer, ...of } : layer));

  it('[CYCLE-08] a set point never reached says how hot it gets; cooling that never ends says where it stays', () => {
    const cold = refused({ supply: { ...alder.supply, volts_V: 25 } });
    expect(cold.code).toBe('set-point-not-reached');
    const { min: _min, ...data } = cold.data as Record<string, unknown>;
    expect(Object.values(data).some((value) => typeof value === 'number' && value > 25 && value < 182)).toBe(true);
    const hot = refused({ ambient_degC: 45, recipe: { ...alder.recipe, open_degC: 44 } });
    expect(hot.code).toBe('never-cools');
  });

  it('[CYCLE-09] no belt, no thickness, too many layers, numbers that are none: refused by name', () => {
    expect(refused({ layers: alder.layers.map(({ belt: _, ...layer }) => layer) }).code).toBe('no-belt');
    expect(refused({ layers: withLayer({ thickness_m: 0 }) }).path).toContain('layers[2]');
    expect(refused({ layers: withLayer({ thickness_m: -0.001 }) }).path).toContain('thickness_m');
    expect(refused({ layers: withLayer({ conductivity_W_mK: Number.NaN }) }).code).toBe('not-finite');
    const many = Array.from({ length: 500 }, () => alder.layers[2] as CycleInput['layers'][number]);
    expect(refused({ layers: many, contacts_W_m2K: Array(501).fill(null) }).code).toBe('too-many-layers');
    expect(refused({ contacts_W_m2K: [1000] }).code).toBe('contact-count');
  });

  it('[CYCLE-09] absurd contacts still end', () => {
    for (const contact of [1e-3, 1e8]) {
      const contacts_W_m2K = alder.contacts_W_m2K.map((given) => (given === null ? null : contact));
      const before = performance.now();
      try {
        expect(['ok', 'not-converged']).toContain(cycle({ ...alder, contacts_W_m2K }).status);
      } catch (cause) {
        expect(cause).toBeInstanceOf(Refusal);
      }
      expect(performance.now() - before).toBeLessThan(20_000);
    }
  });
});
