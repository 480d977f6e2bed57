import { describe, expect, it } from 'vitest';
import { checkHeat as check } from '../book.ts';
import { cover, deepWall, fluid, held, layer, type Material, silicone, states } from './walls.ts';

const why = 'exact solution, 60 cells a layer';
const inversion = { source: 'numerical Laplace inversion (Talbot, degree 60) by a separate program', why };
const platen = fluid(1000, 190);

const cloth: Material = { k: 0.22, rho: 1350, c: 1150 };

/** Platens of 190 degC at once, cloth, cover, silicone template. */
const stack = {
  layers: [layer(0.4e-3, cloth), layer(2e-3, cover), layer(3e-3, silicone)],
  contacts_W_m2K: [2000, 2000],
  cells: [60, 60, 60],
  top: platen,
  bottom: platen,
  start_degC: 25,
  probes: [
    { layer: 0, fraction: 0 },
    { layer: 1, fraction: 0 },
    { layer: 1, fraction: 0.5 },
    { layer: 1, fraction: 1 },
    { layer: 2, fraction: 0.5 },
  ],
};

describe('layers', () => {
  it('[HEAT-08] two layers in perfect contact', () => {
    const table = [
      [2, 42.83833006, 25.26494149, 25.00008212],
      [5, 74.46231913, 32.54197801, 25.24179405],
      [10, 99.83118988, 50.88622215, 29.00191301],
      [20, 121.8052758, 76.88030116, 42.36962799],
      [60, 143.6307315, 108.7362139, 65.69394905],
      [200, 146.5928725, 113.1867176, 69.0925841],
    ] as const;
    const input = {
      layers: [layer(2e-3, cover), layer(3e-3, silicone)],
      cells: [60, 60],
      top: held(180),
      bottom: held(25),
      start_degC: 25,
      times_s: [2, 5, 10, 20, 60, 200, 5000],
      probes: [
        { layer: 0, fraction: 0.5 },
        { layer: 0, fraction: 1 },
        { layer: 1, fraction: 0.5 },
      ],
    };
    const all = states(input);
    for (const [row, [time_s, ...published]] of table.entries()) {
      for (const [i, place] of ['1 mm', 'interface', '3.5 mm'].entries()) {
        const ours = all[row]?.probes_degC[i] ?? Number.NaN;
        check(
          `HEAT-08 two layers after ${time_s} s, ${place}`,
          '2 mm cover, 3 mm silicone, 180 to 25 degC',
          'degC',
          published[i] ?? Number.NaN,
          ours,
          0.01,
          inversion,
        );
      }
    }
    const last = all.at(-1);
    for (const [i, published] of [146.5948276, 113.1896552, 69.09482759].entries()) {
      const ours = last?.probes_degC[i] ?? Number.NaN;
      check(
        `HEAT-08 two layers at rest, place ${i + 1}`,
        '2 mm cover, 3 mm silicone, 180 to 25 degC',
        'degC',
        published,
        ours,
        1e-6,
        inversion,
      );
    }
    const [before, after] = states({ ...input, times_s: [4000, 5000] });
    const flux_W_m2 = ((after?.top.heat_J_m2 ?? 0) - (before?.top.heat_J_m2 ?? 0)) / 1000;
    check('HEAT-08 flux at rest', '155 K over 0.02109090909 m2K/W', 'W/m2', 7349.137931, flux_W_m2, 1e-3, inversion);
  });

  it('[HEAT-09] press stack with contact resistances', () => {
    const table = [
      [5, 165.5185577, 111.6121975, 43.55007532, 28.58935524, 53.78943019],
      [10, 171.6432023, 130.298251, 68.1190797, 47.59970406, 81.22238239],
      [30, 181.1638339, 161.1464424, 129.789373, 118.9965652, 137.887684],
      [60, 186.9516816, 180.0469439, 169.2442764, 165.554733, 172.0930416],
      [120, 189.6386829, 188.8202698, 187.5399176, 187.1027836, 187.8778717],
      [300, 189.9993985, 189.998036, 189.9959045, 189.9951768, 189.9964671],
    ] as const;
    const all = states({ ...stack, times_s: table.map(([time_s]) => time_s) });
    const places = ['cloth top', 'belt top', 'belt middle', 'belt bottom', 'template middle'];
    for (const [row, [time_s, ...published]] of table.entries()) {
      for (const [i, place] of places.entries()) {
        const ours = all[row]?.probes_degC[i] ?? Number.NaN;
        check(
          `HEAT-09 press stack after ${time_s} s, ${place}`,
          'platens 190 degC at once',
          'degC',
          published[i] ?? Number.NaN,
          ours,
          0.01,
          inversion,
        );
      }
    }
    const marks = [49.633001, 61.04364, 80.545627];
    for (const [i, state] of states({ ...stack, times_s: marks }).entries()) {
      const published = 160 + 10 * i;
      check(
        `HEAT-09 belt middle when it should reach ${published} degC`,
        `${marks[i]} s`,
        'degC',
        published,
        state.probes_degC[2] ?? Number.NaN,
        0.01,
        inversion,
      );
    }
  });

  it.each([
    [3, 500, 70.78],
    [3, 1000, 61.04],
    [3, 3000, 54.65],
    [1, 500, 39.69],
    [1, 1000, 33.09],
    [1, 3000, 28.78],
  ])('[HEAT-09] time to 170 degC under a template of %d mm, contact %d W/m2K', (template_mm, contact, published) => {
    const faces = fluid(contact, 190);
    const [state] = states({
      ...stack,
      layers: [layer(0.4e-3, cloth), layer(2e-3, cover), layer(template_mm / 1000, silicone)],
      top: faces,
      bottom: faces,
      times_s: [published],
    });
    const id = `HEAT-09 belt middle at the time to 170 degC, template ${template_mm} mm, ${contact} W/m2K`;
    // The times are printed to 0.01 s and the middle warms by 0.7 K/s at most.
    check(id, `${published} s`, 'degC', 170, state?.probes_degC[2] ?? Number.NaN, 0.02, {
      ...inversion,
      why: 'time printed to 0.01 s',
    });
  });

  it.each([
    ['no template, contact still in series', 500, 25.57, cover, 1 / (1 / 500 + 1 / 2000)],
    ['no template, contact still in series', 1000, 20.46, cover, 1 / (1 / 1000 + 1 / 2000)],
    ['no template, contact still in series', 3000, 17.11, cover, 1 / (1 / 3000 + 1 / 2000)],
    ['bare belt', 500, 24.11, cover, 500],
    ['bare belt', 1000, 19.01, cover, 1000],
    ['bare belt', 3000, 15.67, cover, 3000],
  ])('[HEAT-09] time to 170 degC: %s, %d W/m2K', (name, contact, published, material, below) => {
    const [state] = states({
      ...stack,
      layers: [layer(0.4e-3, cloth), layer(2e-3, material)],
      contacts_W_m2K: [2000],
      cells: [60, 60],
      top: fluid(contact, 190),
      bottom: fluid(below, 190),
      times_s: [published],
      probes: [{ layer: 1, fraction: 0.5 }],
    });
    const id = `HEAT-09 belt middle at the time to 170 degC, ${name}, ${contact} W/m2K`;
    const of = { ...inversion, why: 'time printed to 0.01 s' };
    check(id, `${published} s`, 'degC', 170, state?.probes_degC[0] ?? Number.NaN, 0.02, of);
  });

  it.each([
    ['0.18 W/mK', { ...cover, k: 0.18 }, 64.63],
    ['0.26 W/mK', { ...cover, k: 0.26 }, 58.38],
    ['2200 J/kgK', { ...cover, c: 2200 }, 66.83],
  ])('[HEAT-09] time to 170 degC: belt of %s', (name, material, published) => {
    const layers = [layer(0.4e-3, cloth), layer(2e-3, material), layer(3e-3, silicone)];
    const [state] = states({ ...stack, layers, times_s: [published] });
    const id = `HEAT-09 belt middle at the time to 170 degC, belt of ${name}`;
    const of = { ...inversion, why: 'time printed to 0.01 s' };
    check(id, `${published} s`, 'degC', 170, state?.probes_degC[2] ?? Number.NaN, 0.02, of);
  });

  it('[HEAT-10] conductivity that falls with temperature: the Kirchhoff transform', () => {
    const sloped = layer(2e-3, cover, { conductivitySlope_1_K: -5e-4 });
    const all = states({
      layers: [sloped],
      cells: [120],
      top: held(180),
      bottom: held(25),
      start_degC: 25,
      times_s: [500, 600],
      probes: [0.25, 0.5, 0.75].map((fraction) => ({ layer: 0, fraction })),
    });
    const kirchhoff = { evidence: 'derived' as const, source: 'Kirchhoff transform', why: 'exact solution, cells' };
    for (const [i, published] of [140.054709, 100.9385405, 62.60191347].entries()) {
      check(
        `HEAT-10 quarter ${i + 1}`,
        '0.22 W/mK falling by 5e-4 1/K, 2 mm, 180 to 25 degC',
        'degC',
        published,
        all[1]?.probes_degC[i] ?? Number.NaN,
        1e-3,
        kirchhoff,
      );
    }
    const flux_W_m2 = ((all[1]?.top.heat_J_m2 ?? 0) - (all[0]?.top.heat_J_m2 ?? 0)) / 100;
    check(
      'HEAT-10 flux',
      '0.22 W/mK falling by 5e-4 1/K, 2 mm, 180 to 25 degC',
      'W/m2',
      16389.3125,
      flux_W_m2,
      0.5,
      kirchhoff,
    );
  });
});

describe('melting', () => {
  const neumann = { evidence: 'derived' as const, source: 'Neumann, Carslaw & Jaeger 2nd ed. section 11.2' };

  it.each([
    [12_000, [0.228817929, 0.560487169], [172.836365, 162.142634, 144.777467, 112.486867]],
    [100_000, [0.217754475, 0.533387353], [172.47547, 161.243, 143.939336, 111.874686]],
  ])(
    '[HEAT-11] a front moves into a belt that melts at 160 degC with %d J/kg',
    (heat_J_kg, fronts_mm, temperatures_degC) => {
      const melt = { heat_J_kg, centre_degC: 160, width_K: 0.5 };
      const all = states({
        ...deepWall(1e-3, cover, { melt }),
        cells: [200, 100, 80, 80, 80],
        top: held(180),
        bottom: held(25),
        start_degC: 25,
        times_s: [10, 60],
        tolerance_K: 1e-3,
        probes: [
          ...Array.from({ length: 201 }, (_, i) => ({ layer: 0, fraction: i / 200 })),
          { layer: 1, fraction: 1 },
        ],
      });
      for (const [row, state] of all.entries()) {
        const line = state.probes_degC;
        const beyond = line.findIndex((t) => t < 160);
        const [warm, cold] = [line[beyond - 1] ?? Number.NaN, line[beyond] ?? Number.NaN];
        const front_mm = (beyond - 1 + (warm - 160) / (warm - cold)) / 200;
        const published = fronts_mm[row] ?? Number.NaN;
        const id = `HEAT-11 front after ${state.time_s} s with ${heat_J_kg} J/kg`;
        check(id, 'wall 180 degC, melts at 160 degC over 0.5 K', 'mm', published, front_mm, 0.01 * published, {
          ...neumann,
          why: '1 %: melting spread over 0.5 K',
        });
      }
      const at60 = [40, 100, 200, 201].map((i) => all[1]?.probes_degC[i] ?? Number.NaN);
      for (const [i, published] of temperatures_degC.entries()) {
        const id = `HEAT-11 place ${i + 1} after 60 s with ${heat_J_kg} J/kg`;
        check(id, '0.2, 0.5, 1 and 2 mm deep', 'degC', published, at60[i] ?? Number.NaN, 0.1, {
          ...neumann,
          why: 'melting spread over 0.5 K',
        });
      }
    },
  );

  it('[HEAT-11] frost goes into wet soil', () => {
    const soil = { k: 2, rho: 1000, c: 2500 };
    const all = states({
      ...deepWall(0.25, soil, { melt: { heat_J_kg: 1e5, centre_degC: 0, width_K: 0.1 } }),
      cells: [100, 100, 80, 80, 80],
      top: held(-10),
      bottom: held(2),
      start_degC: 2,
      times_s: [86_400, 864_000],
      tolerance_K: 1e-3,
      probes: [
        ...Array.from({ length: 101 }, (_, i) => ({ layer: 0, fraction: i / 100 })),
        ...Array.from({ length: 100 }, (_, i) => ({ layer: 1, fraction: (i + 1) / 100 })),
        ...Array.from({ length: 100 }, (_, i) => ({ layer: 2, fraction: (i + 1) / 100 })),
      ],
    });
    const depth_m = (i: number) => (i <= 200 ? i * 0.0025 : 0.5 + (i - 200) * 0.005);
    for (const [row, published] of [0.169517397, 0.536061078].entries()) {
      const line = all[row]?.probes_degC ?? [];
      const beyond = line.findIndex((t) => t > 0);
      const [cold, warm] = [line[beyond - 1] ?? Number.NaN, line[beyond] ?? Number.NaN];
      const front_m = depth_m(beyond - 1) + ((0 - cold) / (warm - cold)) * (depth_m(beyond) - depth_m(beyond - 1));
      const id = `HEAT-11 frost after ${row === 0 ? 1 : 10} d`;
      check(id, '2 W/mK, 2.5e6 J/m3K, 1e8 J/m3, -10 and 2 degC', 'm', published, front_m, 0.01 * published, {
        ...neumann,
        why: '1 %: freezing spread over 0.1 K',
      });
    }
    const last = all[1]?.probes_degC ?? [];
    check('HEAT-11 soil at 1 m after 10 d', 'as above', 'degC', 0.781577258, last[300] ?? Number.NaN, 0.02, {
      ...neumann,
      why: 'freezing spread over 0.1 K',
    });
    check('HEAT-11 soil at 0.5 m after 10 d', 'as above', 'degC', -0.631679162, last[200] ?? Number.NaN, 0.05, {
      ...neumann,
      why: 'freezing spread over 0.1 K',
    });
  });

  it('[HEAT-11] the sharper the melting, the nearer to the front of a pure substance', () => {
    const middle = (width_K: number) =>
      states({
        layers: [layer(2e-3, cover, { melt: { heat_J_kg: 8000, centre_degC: 160, width_K } })],
        cells: [60],
        top: held(180),
        bottom: held(180),
        start_degC: 25,
        times_s: [12],
        probes: [{ layer: 0, fraction: 0.5 }],
      })[0]?.probes_degC[0] ?? Number.NaN;
    const [sharp, near, wide] = [middle(1), middle(4), middle(50)];
    expect(Math.abs(near - sharp)).toBeLessThan(Math.abs(wide - sharp) + 1e-9);
    expect(Math.abs(wide - sharp)).toBeLessThan(3);
  });
});
