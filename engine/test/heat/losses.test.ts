import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  airAt,
  backToFace_K,
  blownPlate_W_m2K,
  edgeCoolness_K,
  edgeReach,
  faceLoss_W_m2K,
  hotFaceDown_W_m2K,
  hotFaceUp_W_m2K,
  radiation_W_m2K,
  rayleigh,
  sensorLag_K,
  verticalWall_W_m2K,
  verticalWallLaminar_W_m2K,
  waterCooling_W_m2K,
} from '../../src/press/index.ts';
import { checkHeat as check } from '../book.ts';

const seeded = { seed: 42, numRuns: Number(process.env['LW_RUNS'] ?? 2000) };
/** Properties of the reference values, film at 102.5 degC. */
const film = {
  kinematicViscosity_m2_s: 2.39e-5,
  diffusivity_m2_s: 3.43e-5,
  prandtl: 0.697,
  conductivity_W_mK: 0.0317,
  expansion_1_K: 1 / 375.65,
};
const hot = { wall_degC: 180, air_degC: 25 };
const memory = { source: 'tables of air at 1 atm (from memory)', evidence: 'practice' as const };

describe('air', () => {
  it('[LOSS-01] conductivity, viscosity and density of air agree with the usual tables', () => {
    const why = 'tables differ by that much';
    for (const [t, k] of [
      [20, 0.0257],
      [102, 0.0317],
      [180, 0.0378],
    ] as const) {
      const ours = airAt(t).conductivity_W_mK;
      check(`LOSS-01 conductivity of air at ${t} degC`, '1 atm', 'W/mK', k, ours, 0.015 * k, { ...memory, why });
    }
    const { kinematicViscosity_m2_s: nu, diffusivity_m2_s: a } = airAt(102.5);
    check('LOSS-01 viscosity of air at 102.5 degC', '1 atm', 'm2/s', 2.39e-5, nu, 0.035 * 2.39e-5, { ...memory, why });
    check('LOSS-01 diffusivity of air at 102.5 degC', '1 atm', 'm2/s', 3.43e-5, a, 0.035 * 3.43e-5, { ...memory, why });
  });
});

describe('losses', () => {
  it('[LOSS-02] vertical wall in still air', () => {
    const wall = { ...hot, length_m: 0.1 };
    const inputs = '180 degC in air of 25 degC, 0.1 m';
    check('LOSS-02 Rayleigh number of a vertical wall', inputs, '1', 4936020.6, rayleigh(wall, film), 0.051);
    check('LOSS-02 vertical wall', inputs, 'W/m2K', 8.09184, verticalWall_W_m2K(wall, film), 0.51e-5);
    check('LOSS-02 vertical wall, laminar', inputs, 'W/m2K', 7.883364, verticalWallLaminar_W_m2K(wall, film), 0.51e-6);
  });

  it('[LOSS-03] hot horizontal faces', () => {
    const wall = { ...hot, length_m: 0.05 };
    const inputs = '300 x 150 mm, 180 degC in air of 25 degC';
    check('LOSS-03 Rayleigh number of a platen', inputs, '1', 617002.57, rayleigh(wall, film), 0.0051);
    check('LOSS-03 hot face up', inputs, 'W/m2K', 9.595216, hotFaceUp_W_m2K(wall, film), 0.51e-6);
    check('LOSS-03 hot face down', inputs, 'W/m2K', 4.744058, hotFaceDown_W_m2K(wall, film), 0.51e-6);
  });

  it('[LOSS-03] the two branches of the upper face meet near 1e7', () => {
    // 0.54 Ra^(1/4) and 0.15 Ra^(1/3) at Ra = 1e7: 30.4 and 32.3.
    const [below, above] = [0.54 * 1e7 ** 0.25, 0.15 * 1e7 ** (1 / 3)];
    expect(above / below).toBeLessThan(1.07);
    const large = { ...hot, length_m: 0.2 };
    expect(rayleigh(large, film)).toBeGreaterThan(1e7);
    expect(hotFaceUp_W_m2K(large, film) * (0.2 / 0.0317)).toBeCloseTo(0.15 * Math.cbrt(rayleigh(large, film)), 9);
  });

  it('[LOSS-04] plate with air blown along it', () => {
    const ours = blownPlate_W_m2K(5, 0.3, film);
    check('LOSS-04 blown plate', '5 m/s, 0.3 m, 102.5 degC', 'W/m2K', 15.58465, ours, 0.51e-5);
    expect(blownPlate_W_m2K(20, 0.3, film)).toBeCloseTo(2 * ours, 9);
  });

  it.each([
    [0.05, 0.62675, 0.51e-5],
    [0.1, 1.2535, 0.51e-4],
    [0.3, 3.7605, 0.51e-4],
    [0.9, 11.2815, 0.51e-4],
  ])('[LOSS-05] radiation at emissivity %d', (emissivity, published, tolerance) => {
    const ours = radiation_W_m2K(emissivity, 180, 25);
    check(`LOSS-05 radiation at emissivity ${emissivity}`, '180 degC to 25 degC', 'W/m2K', published, ours, tolerance);
  });

  it('[LOSS-05] radiation is the difference of fourth powers over the difference of temperatures', () => {
    const t = fc.double({ min: -40, max: 390, noNaN: true });
    fc.assert(
      fc.property(t, t, (a, b) => {
        const flux = 5.670374419e-8 * ((a + 273.15) ** 4 - (b + 273.15) ** 4);
        return Math.abs(radiation_W_m2K(1, a, b) * (a - b) - flux) < 1e-9;
      }),
      seeded,
    );
  });

  it('[LOSS-06] a bare face loses by air and by radiation, more when hotter', () => {
    const face = { faces: 'up', length_m: 0.05, emissivity: 0.1 } as const;
    const ours = faceLoss_W_m2K(face, 180, 25);
    const published = 9.595216 + 1.2535;
    const why = 'air by formula, not by table';
    check('LOSS-06 loss of a bare platen', '300 x 150 mm facing up, emissivity 0.1', 'W/m2K', published, ours, 0.25, {
      why,
    });
    expect(faceLoss_W_m2K(face, 100, 25)).toBeLessThan(ours);
    expect(faceLoss_W_m2K({ ...face, faces: 'down' }, 180, 25)).toBeLessThan(ours);
    expect(faceLoss_W_m2K({ ...face, faces: 'side' }, 180, 25)).toBeGreaterThan(5);
  });
});

describe('platen', () => {
  it.each([
    ['an aluminium', 167, 0.42902],
    ['a steel', 45, 1.57122],
    ['a stainless', 16, 4.27979],
  ])('[LOSS-07] edge of %s platen', (name, conductivity_W_mK, published) => {
    const strip = { thickness_m: 0.01, halfWidth_m: 0.075, conductivity_W_mK, faceLoss_W_m2K: 8, edgeLoss_W_m2K: 12 };
    const inputs = '10 mm, 150 mm wide, 8 and 12 W/m2K, 160 K above air';
    const ours = edgeCoolness_K(strip, 160);
    check(`LOSS-07 edge of ${name} platen`, inputs, 'K', published, ours, 0.51e-5);
    // For a good conductor h*w*excess/(2k) is close.
    expect(Math.abs(ours / ((12 * 0.075 * 160) / (2 * conductivity_W_mK)) - 1)).toBeLessThan(0.06);
  });

  it('[LOSS-08] the edge error dies off inside the stack', () => {
    check('LOSS-08 edge error one stack height inside', 'exp(-pi)', '%', 4.3, edgeReach(5e-3, 5e-3) * 100, 0.051);
    check('LOSS-08 edge error one and a half inside', 'exp(-1.5*pi)', '%', 0.9, edgeReach(7.5e-3, 5e-3) * 100, 0.051);
  });

  it('[LOSS-09] lag of a sensor, and back against face of a platen', () => {
    check('LOSS-09 lag at 0.5 K/s', '3 s', 'K', 1.5, sensorLag_K(3, 0.5), 1e-12);
    check(
      'LOSS-09 back against face',
      '15.6 kW/m2, 10 mm, 167 W/mK',
      'K',
      0.47,
      backToFace_K(15600, 0.01, 167),
      0.0051,
    );
  });

  it('[LOSS-10] water cooling by the number of transfer units', () => {
    const ours = waterCooling_W_m2K(2 / 60, 1, 0.045);
    check('LOSS-10 water cooling at 2 L/min', 'NTU 1 on 0.045 m2', 'W/m2K', 1957, ours, 0.51);
    check('LOSS-10 time constant', '29 030 J/m2K', 's', 15, 29030.4 / ours, 0.5, { why: 'digits given' });
  });

  it('[LOSS-11] heat that a platen takes to warm up, and power by the square of the voltage', () => {
    const flux = (29030.4 * 155) / 180;
    check('LOSS-11 flux for 12 mm of aluminium', '25 to 180 degC in 180 s', 'W/m2', 24998, flux, 0.51);
    check('LOSS-11 time constant with a fan', '29 030 J/m2K at 100 W/m2K', 's', 290, 29030.4 / 100, 0.51);
  });
});
