import { describe, expect, it } from 'vitest';
import { type Answer, solve, topicOf } from '../../src/solve/index.ts';
import { examples } from './examples.ts';

const say = ({ code, path }: { readonly code: string; readonly path: string }) => `${path}: ${code}`;
const cycleTopic = topicOf('cycle');
const example = (examples.find(({ topic }) => topic === 'cycle')?.input ?? {}) as Readonly<Record<string, never>> & {
  readonly layers: readonly object[];
  readonly contacts_W_m2K: readonly (number | null)[];
  readonly top: object;
  readonly supply: object;
  readonly recipe: object;
};

async function answer(change: Readonly<Record<string, unknown>>): Promise<Answer> {
  if (cycleTopic === undefined) throw new Error('no topic');
  return solve(cycleTopic, { ...example, ...change }, { say });
}

async function refused(change: Readonly<Record<string, unknown>>) {
  const given = await answer(change);
  if (given.status !== 'refused') throw new Error(given.status);
  return given;
}

const layersWith = (of: object) => ({
  layers: example.layers.map((layer, i) => (i === 2 ? { ...layer, ...of } : layer)),
});
const bothWith = (of: object) => ({ top: { ...example.top, ...of }, bottom: { ...example.top, ...of } });
const recipeWith = (of: object) => ({ recipe: { ...example.recipe, ...of } });

describe('press cycles that cannot be computed', () => {
  it('[SOLVE-29] zero and negative thickness, NaN: refused with the layer', async () => {
    for (const thickness_m of [0, -0.001]) {
      expect(await refused(layersWith({ thickness_m }))).toMatchObject({
        code: 'out-of-range',
        path: 'layers[2].thickness_m',
        data: { value: thickness_m, unit: 'm' },
      });
    }
    expect(await refused(layersWith({ density_kg_m3: Number.NaN }))).toMatchObject({
      code: 'not-finite',
      path: 'layers[2].density_kg_m3',
    });
  });

  it('[SOLVE-29] no belt, no layers, 500 layers: refused', async () => {
    const belt = example.layers.map((layer) => ({ ...layer, belt: false }));
    expect(await refused({ layers: belt })).toMatchObject({ code: 'no-belt', path: 'layers' });
    expect(await refused({ layers: [], contacts_W_m2K: [null] })).toMatchObject({ code: 'no-layers' });
    const many = { layers: Array(500).fill(example.layers[2]), contacts_W_m2K: Array(501).fill(null) };
    expect(await refused(many)).toMatchObject({ code: 'too-many-layers', data: { value: 500 } });
    expect(await refused({ contacts_W_m2K: [1000] })).toMatchObject({ code: 'contact-count', data: { expected: 7 } });
  });

  it('[SOLVE-29] absurd contacts: refused with their place', async () => {
    for (const contact of [0, -5, 1e-3, 1e12]) {
      const contacts_W_m2K = example.contacts_W_m2K.map((given, i) => (i === 1 ? contact : given));
      expect(await refused({ contacts_W_m2K })).toMatchObject({ code: 'out-of-range', path: 'contacts_W_m2K[1]' });
    }
  });

  it('[SOLVE-29] a set point never reached says how hot it gets, with what heat, voltage and loss', async () => {
    const weak = await refused({ supply: { ...example.supply, volts_V: 30 } });
    expect(weak).toMatchObject({
      code: 'set-point-not-reached',
      data: { volts_V: 30, nominal_V: 120, fullPower: true },
    });
    const { value, max, given_W, lost_W } = weak.data as Record<string, number>;
    // At rest the two platens lose what they are given: a heater of 700 W at a quarter of its voltage.
    expect(Math.abs((given_W ?? 0) - 700 / 16)).toBeLessThan(1);
    expect(Math.abs((given_W ?? 0) - (lost_W ?? 0))).toBeLessThan(8);
    expect(max).toBeGreaterThan(100);
    expect(max).toBeLessThan(value ?? 0);
    const leaky = await refused(bothWith({ loss_W_m2K: 120 }));
    expect(leaky).toMatchObject({ code: 'set-point-not-reached', data: { volts_V: 120, fullPower: true } });
    // A proportional controller stays below its set point with power to spare.
    const shy = await refused({
      ...bothWith({ control: { kind: 'proportional', band_K: 60 } }),
      ...recipeWith({ ready_K: 1 }),
    });
    expect(shy).toMatchObject({ code: 'set-point-not-reached', data: { fullPower: false } });
  });

  it('[SOLVE-29] cooling that never ends says where it stays', async () => {
    expect(await refused(recipeWith({ open_degC: 25 }))).toMatchObject({
      code: 'never-cools',
      path: 'recipe.open_degC',
      data: { value: 25, min: 25, unit: 'degC' },
    });
    const water = { inlet_degC: 60, flow_kg_s: 1, transferUnits: 3 };
    const warm = await refused(bothWith({ water }));
    expect(warm.code).toBe('never-cools');
    expect(Number(warm.data['min'])).toBeGreaterThan(59);
  });

  it('[SOLVE-29] a controller that switches without end is stopped: not-converged, in bounded time', async () => {
    const control = { kind: 'on-off', hysteresis_K: 0, sample_s: 0.05 };
    const thin = { layers: [example.layers[3]], contacts_W_m2K: [null, null], probes: [] };
    const endless = await answer({
      ...thin,
      ...bothWith({ control, sensorLag_s: 0 }),
      ...recipeWith({ dwell_s: 86_400 }),
    });
    expect(endless).toMatchObject({ status: 'not-converged', reason: 'too-many-steps' });
    expect(Number((endless as { iterations?: number }).iterations)).toBeLessThan(500_000);
  }, 120_000);
});

describe('press cycles with steps, bare faces and water', () => {
  const steps = [
    { kind: 'ramp', top_degC: 120, bottom_degC: 125, rate_K_s: 0.3 },
    { kind: 'soak', time_s: 60 },
    { kind: 'ramp' },
    { kind: 'dwell', time_s: 60 },
    { kind: 'pressure', pressure_Pa: 1e5 },
    { kind: 'dwell', time_s: 100 },
    { kind: 'cool', below_degC: 90 },
    { kind: 'cool' },
  ];

  it('[SOLVE-30] steps are answered with the end of each; those of the simple recipe give its answer', async () => {
    const whole = (await answer(recipeWith({ steps }))) as unknown as {
      status: string;
      marks: { stepEnds_s: number[] };
    };
    expect(whole.status).toBe('ok');
    expect(whole.marks.stepEnds_s.length).toBe(steps.length);
    expect(whole.marks.stepEnds_s).toEqual([...whole.marks.stepEnds_s].sort((a, b) => a - b));
    const simple = await answer(recipeWith({ steps: [{ kind: 'ramp' }, { kind: 'dwell' }, { kind: 'cool' }] }));
    const plain = (await answer({})) as unknown as { marks: object };
    expect(simple).toMatchObject({ ...plain, marks: plain.marks });
  });

  it('[SOLVE-30] a step of another kind, a field of another step, and steps out of order are refused', async () => {
    expect(await refused(recipeWith({ steps: [{ kind: 'dance' }] }))).toMatchObject({ path: 'recipe.steps[0].kind' });
    expect(await refused(recipeWith({ steps: [{ kind: 'soak', time_s: 5, below_degC: 50 }] }))).toMatchObject({
      code: 'unknown-field',
      path: 'recipe.steps[0].below_degC',
    });
    expect(await refused(recipeWith({ steps: [{ kind: 'cool' }, { kind: 'ramp' }, { kind: 'dwell' }] }))).toMatchObject(
      {
        code: 'step-out-of-order',
      },
    );
  });

  it('[SOLVE-30] a map varies the last dwell of a recipe with steps and the ramp before it', async () => {
    const map = topicOf('cycle-map');
    if (map === undefined) throw new Error('no topic');
    const { probes: _, ...rest }: Record<string, unknown> = { ...example, ...recipeWith({ steps }) };
    const mapped = await solve(map, { ...rest, map: { shift_K: [-5], dwell_s: [10, 60] } }, { say });
    expect(mapped).toMatchObject({
      cells: [
        { status: 'ok', dwell_s: 10 },
        { status: 'ok', dwell_s: 60 },
      ],
    });
  });

  it('[SOLVE-30] columns are answered with fusion and grade of each, and the worst', async () => {
    const edge = await answer({ columns: { left_K: 0, right_K: -14 }, ...recipeWith({ dwell_s: 10 }) });
    expect(edge).toMatchObject({ columns: { worst: 'right', right: { grade: 'not-filled' } } });
    expect(await refused({ columns: { left_K: 0, right_K: 99 } })).toMatchObject({ path: 'columns.right_K' });
  });

  it('[SOLVE-30] contacts that are wetted as the belt melts are taken, and refused by their place', async () => {
    const wetting = (at: number, wetted: number) => ({
      contactsWetted_W_m2K: example.contacts_W_m2K.map((_, i) => (i === at ? wetted : null)),
    });
    const bonded = async (change: Readonly<Record<string, unknown>>) =>
      ((await answer(change)) as unknown as { marks: { bonded_s: number } }).marks;
    const belt = 2;
    expect((await bonded(wetting(belt, 5000))).bonded_s).toBeLessThan((await bonded({})).bonded_s);
    expect(await refused(wetting(0, 5000))).toMatchObject({
      code: 'wetted-not-at-belt',
      path: 'contactsWetted_W_m2K[0]',
    });
    expect(await refused(wetting(belt, 5))).toMatchObject({ code: 'out-of-range', path: 'contactsWetted_W_m2K[2]' });
    expect(await refused({ contactsWetted_W_m2K: [5000] })).toMatchObject({ code: 'contact-count' });
  });

  it('[SOLVE-30] bare faces and water are taken; water on a platen above 100 degC is warned of', async () => {
    const face = { faces: 'up', length_m: 0.05, emissivity: 0.1, area_m2: 0.045 };
    const water = { inlet_degC: 15, flow_kg_s: 0.03, transferUnits: 1 };
    const wet = await answer(bothWith({ loss_W_m2K: 1, faces: [face], water }));
    expect(wet).toMatchObject({ status: 'ok', warnings: [{ code: 'water-boils', data: { max: 100, unit: 'degC' } }] });
    const late = await answer(bothWith({ loss_W_m2K: 1, faces: [face], water: { ...water, from_degC: 95 } }));
    expect(late).toMatchObject({ status: 'ok', warnings: [] });
  });
});
