import { describe, expect, it } from 'vitest';
import { checkHeat as check } from '../book.ts';
import { cover, fluid, held, insulated, layer, type Material, states } from './walls.ts';

const exact = { evidence: 'derived' as const, source: 'full series, Incropera et al. section 5.5 (from memory)' };
const why = 'exact solution, cells and steps';
/** 10 mm whose diffusion time is 500 s, cooled from 100 to 0 degC: temperatures are 100 times theta. */
const plain: Material = { k: 0.2, rho: 1000, c: 1000 };
const diffusion_s = 500;

function cooled(Bi: number, fouriers: readonly number[], tolerance_K = 1e-5) {
  return states({
    layers: [layer(0.01, plain)],
    cells: [120],
    top: Bi === Number.POSITIVE_INFINITY ? held(0) : fluid(20 * Bi, 0),
    bottom: insulated,
    start_degC: 100,
    times_s: fouriers.map((Fo) => Fo * diffusion_s),
    probes: [],
    tolerance_K,
  });
}

describe('slab in a fluid', () => {
  it.each([
    [0.01, 0.0998336385511, 1.00166084413],
    [0.05, 0.221760393941, 1.00818885449],
    [0.1, 0.3110528482, 1.0160942168],
    [0.2, 0.432840719905, 1.03108764999],
    [0.5, 0.653271187094, 1.07012813694],
    [1, 0.860333589019, 1.11913200841],
    [2, 1.07687398631, 1.17845578734],
    [5, 1.31383771649, 1.240249309],
    [10, 1.42887001121, 1.2619625891],
    [20, 1.49612895164, 1.2699160158],
    [100, 1.55524512926, 1.27308761985],
    [Number.POSITIVE_INFINITY, 1.57079632679, 1.27323954474],
  ])('[HEAT-05] first root and its constant at Bi %d, read from how a slab cools', (Bi, zeta, C1) => {
    const [early, late] = cooled(Bi, [2, 3], 1e-7).map((state) => state.bottom.surface_degC / 100);
    const root = Math.sqrt(-Math.log((late ?? 0) / (early ?? 1)));
    check(`HEAT-05 first root at Bi ${Bi}`, 'decay from Fo 2 to 3', '1', zeta, root, 3e-5 * zeta, { ...exact, why });
    const constant = (early ?? 0) * Math.exp(2 * root ** 2);
    check(`HEAT-05 constant at Bi ${Bi}`, 'middle at Fo 2', '1', C1, constant, 2e-4 * C1, { ...exact, why });
  });

  it.each([
    [0.1, 0.2, 0.993998502, 0.951419855, 0.0193465083],
    [0.1, 1, 0.922388572, 0.878126488, 0.0924129206],
    [1, 0.05, 0.999750955, 0.790376764, 0.0426900159],
    [1, 0.2, 0.950641779, 0.643390784, 0.148404542],
    [1, 0.5, 0.772526383, 0.504521928, 0.318895435],
    [1, 1, 0.533859401, 0.348176852, 0.529602751],
    [1, 2, 0.254668042, 0.166090581, 0.775605996],
    [10, 0.05, 0.998529613, 0.232326294, 0.175545882],
    [10, 0.2, 0.829254731, 0.122482238, 0.416737967],
    [10, 0.5, 0.454640556, 0.0643289553, 0.684983733],
    [10, 1, 0.163817642, 0.0231720602, 0.886504359],
  ])('[HEAT-05] middle, face and heat at Bi %d, Fo %d', (Bi, Fo, middle, face, share) => {
    const [state] = cooled(Bi, [Fo]);
    const of = `at Bi ${Bi}, Fo ${Fo}`;
    const inputs = '100 degC in a fluid of 0 degC';
    check(`HEAT-05 middle ${of}`, inputs, 'degC', 100 * middle, state?.bottom.surface_degC ?? Number.NaN, 0.01, {
      ...exact,
      why,
    });
    check(`HEAT-05 face ${of}`, inputs, 'degC', 100 * face, state?.top.surface_degC ?? Number.NaN, 0.01, {
      ...exact,
      why,
    });
    const lost = -(state?.top.heat_J_m2 ?? Number.NaN) / (0.01 * 1e6 * 100);
    check(`HEAT-05 heat ${of}`, 'of all there was', '1', share, lost, 1e-4, { ...exact, why });
  });

  it.each([
    [0.05, 0.9968691955, 0.2523132522],
    [0.1, 0.9493053627, 0.3568234005],
    [0.2, 0.7723116069, 0.5040878202],
    [0.5, 0.3707774298, 0.7639503307],
    [1, 0.1079770444, 0.9312596785],
  ])('[HEAT-05] faces held, Fo %d', (Fo, middle, share) => {
    const [state] = cooled(Number.POSITIVE_INFINITY, [Fo]);
    check(
      `HEAT-05 middle with held faces, Fo ${Fo}`,
      '100 to 0 degC',
      'degC',
      100 * middle,
      state?.bottom.surface_degC ?? Number.NaN,
      0.01,
      { ...exact, why },
    );
    const lost = -(state?.top.heat_J_m2 ?? Number.NaN) / (0.01 * 1e6 * 100);
    check(`HEAT-05 heat with held faces, Fo ${Fo}`, 'of all there was', '1', share, lost, 2e-4, { ...exact, why });
  });
});

describe('published slabs', () => {
  const book = {
    evidence: 'printed' as const,
    source: 'Incropera, DeWitt, Bergman & Lavine, pipeline-wall example (from memory)',
  };

  it('[HEAT-06] wall of a pipeline warmed by oil for 480 s', () => {
    const steel: Material = { k: 63.9, rho: 7832, c: 434 };
    const input = {
      layers: [layer(0.04, steel)],
      cells: [120],
      top: fluid(500, 60),
      bottom: insulated,
      start_degC: -20,
      times_s: [480],
      probes: [],
    };
    const [state] = states(input);
    const [back, face] = [state?.bottom.surface_degC ?? Number.NaN, state?.top.surface_degC ?? Number.NaN];
    const inputs = '40 mm, -20 degC, oil 60 degC, 500 W/m2K';
    const rounded = 'book rounds root and constant';
    check('HEAT-06 printed insulated face', inputs, 'degC', 42.9, back, 0.2, { ...book, why: rounded });
    check('HEAT-06 printed warm face', inputs, 'degC', 45.2, face, 0.2, { ...book, why: rounded });
    check('HEAT-06 insulated face', inputs, 'degC', 43.016241, back, 0.01, { ...exact, why });
    check('HEAT-06 warm face', inputs, 'degC', 45.362505, face, 0.01, { ...exact, why });
    check('HEAT-06 flux', inputs, 'W/m2', -7318.7475, 500 * (face - 60), 5, {
      ...exact,
      why: '0.01 K times 500 W/m2K',
    });
    const perLength_J_m = -(state?.top.heat_J_m2 ?? Number.NaN) * Math.PI;
    check('HEAT-06 heat per length of pipe', 'diameter 1 m', 'J/m', -2.7254128e7, perLength_J_m, 3e3, {
      ...exact,
      why,
    });
    check('HEAT-06 printed heat per length of pipe', 'diameter 1 m', 'J/m', -2.73e7, perLength_J_m, 5e4, {
      ...book,
      why: 'half the last digit',
    });
  });

  it('[HEAT-06] brass plate in an oven for 420 s', () => {
    const brass: Material = { k: 110, rho: 8530, c: 380 };
    const [state] = states({
      layers: [layer(0.02, brass)],
      cells: [120],
      top: fluid(120, 500),
      bottom: insulated,
      start_degC: 20,
      times_s: [420],
      probes: [],
    });
    const inputs = 'half of 40 mm, 20 degC, oven 500 degC, 120 W/m2K';
    const cengel = {
      evidence: 'printed' as const,
      source: 'Cengel, Heat and Mass Transfer, brass-plate example (from memory)',
    };
    check('HEAT-06 face of a brass plate', inputs, 'degC', 279.76431, state?.top.surface_degC ?? Number.NaN, 0.01, {
      ...exact,
      why,
    });
    check(
      'HEAT-06 middle of a brass plate',
      inputs,
      'degC',
      277.35739,
      state?.bottom.surface_degC ?? Number.NaN,
      0.01,
      { ...exact, why },
    );
    check('HEAT-06 printed face of a brass plate', inputs, 'degC', 279, state?.top.surface_degC ?? Number.NaN, 1, {
      ...cengel,
      why: 'one-term solution, rounded',
    });
  });

  it('[HEAT-06] a belt of 3 mm heated from both sides', () => {
    const both = fluid(800, 190);
    const table = [
      [2, 27.66197364, 46.6733055, 140.2905046],
      [5, 53.35784148, 80.77457323, 156.4083148],
      [10, 97.17256812, 116.9492311, 167.9589973],
      [20, 147.9908236, 156.9602657, 180.0384979],
      [40, 181.4028642, 183.2384568, 187.9613922],
      [60, 188.2406057, 188.6162577, 189.5828012],
    ] as const;
    const all = states({
      layers: [layer(3e-3, cover)],
      cells: [120],
      top: both,
      bottom: both,
      start_degC: 25,
      times_s: [2, 5, 10, 20, 29.35613312, 40, 60],
      probes: [0.5, 0.25, 0, 1].map((fraction) => ({ layer: 0, fraction })),
    });
    for (const [time_s, ...published] of table) {
      const state = all.find((one) => one.time_s === time_s);
      for (const [i, place] of ['middle', 'quarter', 'face'].entries()) {
        const ours = state?.probes_degC[i] ?? Number.NaN;
        check(
          `HEAT-06 belt after ${time_s} s, ${place}`,
          '3 mm, 190 degC, 800 W/m2K',
          'degC',
          published[i] ?? Number.NaN,
          ours,
          0.01,
          { ...exact, why },
        );
      }
      expect(state?.probes_degC[3]).toBeCloseTo(state?.probes_degC[2] ?? Number.NaN, 6);
    }
    const at170 = all.find((one) => one.time_s === 29.35613312);
    check(
      'HEAT-06 middle of the belt when it should reach 170 degC',
      '29.35613312 s',
      'degC',
      170,
      at170?.probes_degC[0] ?? Number.NaN,
      0.01,
      { ...exact, why },
    );
  });
});

describe('heat made inside', () => {
  const incropera = 'Incropera, DeWitt, Bergman & Lavine';

  it('[HEAT-07] steady wall of two layers, one of them making heat', () => {
    const [state] = states({
      layers: [layer(0.05, { k: 75, rho: 1000, c: 1000 }), layer(0.02, { k: 150, rho: 1000, c: 1000 })],
      cells: [50, 50],
      top: insulated,
      bottom: fluid(1000, 30),
      start_degC: 100,
      source_W_m3: (depth_m) => (depth_m < 0.05 ? 1.5e6 : 0),
      times_s: [1e5],
      probes: [{ layer: 0, fraction: 1 }],
    });
    const inputs = '1.5 MW/m3 in 50 mm of 75 W/mK, 20 mm of 150 W/mK, 1000 W/m2K to 30 degC';
    const printed = {
      evidence: 'printed' as const,
      source: `${incropera}, composite-wall example with generation (from memory)`,
    };
    const of = { ...printed, why: 'printed whole and exact; cells' };
    check('HEAT-07 outer face', inputs, 'degC', 105, state?.bottom.surface_degC ?? Number.NaN, 0.01, of);
    check('HEAT-07 between the layers', inputs, 'degC', 115, state?.probes_degC[0] ?? Number.NaN, 0.01, of);
    check('HEAT-07 insulated face', inputs, 'degC', 140, state?.top.surface_degC ?? Number.NaN, 0.02, of);
  });

  it('[HEAT-07] a fuel plate whose power doubles', () => {
    const [L, k, h] = [0.01, 30, 1100];
    const steady = (source: number) => (x_m: number) =>
      250 + (source * L) / h + ((source * L * L) / (2 * k)) * (1 - (x_m / L) ** 2);
    const fractions = [0, 0.2, 0.4, 0.6, 0.8, 1];
    const all = states({
      layers: [layer(L, { k, rho: 6000, c: 1000 })],
      cells: [100],
      top: insulated,
      bottom: fluid(h, 250),
      start_degC: steady(1e7),
      source_W_m3: () => 2e7,
      times_s: [1.5, 10, 60, 3000],
      probes: fractions.map((fraction) => ({ layer: 0, fraction })),
    });
    const table = [
      [360.075414, 359.408064, 357.404298, 354.05683, 349.346378, 343.232129],
      [373.586949, 372.849644, 370.630052, 366.905206, 361.637061, 354.772877],
      [424.614545, 423.545174, 420.333624, 414.969627, 407.436218, 397.709956],
      [465.1515, 463.8182, 459.8182, 453.1515, 443.8182, 431.8182],
    ];
    const printed_degC = [360.08, 359.41, 357.41, 354.07, 349.37, 343.27];
    for (const [row, state] of all.entries()) {
      for (const [i, fraction] of fractions.entries()) {
        const ours = state.probes_degC[i] ?? Number.NaN;
        const id = `HEAT-07 fuel plate after ${state.time_s} s at ${fraction}`;
        check(id, '10 mm, 10 to 20 MW/m3', 'degC', table[row]?.[i] ?? Number.NaN, ours, 0.01, { ...exact, why });
        if (row > 0) continue;
        const book = { evidence: 'printed' as const, source: `${incropera}, fuel-element example (from memory)` };
        check(`HEAT-07 printed fuel plate at ${fraction}`, '1.5 s', 'degC', printed_degC[i] ?? Number.NaN, ours, 0.05, {
          ...book,
          why: 'the book steps 2 mm and 0.3 s',
        });
      }
    }
  });
});
