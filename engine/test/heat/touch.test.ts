import { describe, expect, it } from 'vitest';
import {
  type Body,
  burnThreshold_degC,
  burnThresholds,
  contactTemperature_degC,
  coolingTime_s,
  effusivity,
  skin,
  whenTouched,
} from '../../src/press/index.ts';
import { Refusal } from '../../src/refusal.ts';
import { checkHeat as check } from '../book.ts';

const body = (conductivity_W_mK: number, density_kg_m3: number, specificHeat_J_kgK: number): Body => ({
  conductivity_W_mK,
  density_kg_m3,
  specificHeat_J_kgK,
});
const aluminium = body(167, 2700, 896);
const cover = body(0.22, 1150, 1900);
const silicone = body(0.25, 1200, 1300);

describe('touch', () => {
  it('[TOUCH-01] effusivities', () => {
    check(
      'TOUCH-01 effusivity of aluminium',
      '167, 2700, 896',
      'W*s^0.5/m2K',
      20099.9104,
      effusivity(aluminium),
      0.51e-4,
    );
    check('TOUCH-01 effusivity of a cover', '0.22, 1150, 1900', 'W*s^0.5/m2K', 693.32532, effusivity(cover), 0.51e-5);
    check('TOUCH-01 effusivity of skin', '0.37, 1000, 3770', 'W*s^0.5/m2K', 1181.05885, effusivity(skin), 0.51e-5);
    check(
      'TOUCH-01 effusivity of another cover',
      '0.20, 1150, 1600',
      'W*s^0.5/m2K',
      606.63,
      effusivity(body(0.2, 1150, 1600)),
      0.0051,
    );
    check(
      'TOUCH-01 effusivity of silicone',
      '0.23, 1200, 1300',
      'W*s^0.5/m2K',
      599,
      effusivity(body(0.23, 1200, 1300)),
      0.0051,
    );
  });

  it.each([
    ['aluminium of 180 degC on a cover', aluminium, 180, cover, 25, 174.831712, 0.51e-6],
    ['two covers', cover, 180, cover, 25, 102.5, 1e-12],
    ['a cover of 190 degC on silicone', cover, 190, silicone, 25, 111.808694, 0.51e-6],
    ['aluminium of 80 degC on skin', aluminium, 80, skin, 33, 77.3915772, 0.51e-7],
    ['a cover of 80 degC on skin', cover, 80, skin, 33, 50.3850647, 0.51e-7],
    ['aluminium of 50 degC on skin', aluminium, 50, skin, 33, 49.06, 0.0051],
    ['a cover of 50 degC on skin', body(0.2, 1150, 1600), 50, skin, 33, 38.77, 0.0051],
    ['silicone of 50 degC on skin', body(0.23, 1200, 1300), 50, skin, 33, 38.72, 0.0051],
  ])('[TOUCH-01] contact temperature: %s', (name, first, t1, second, t2, published, tolerance) => {
    const ours = contactTemperature_degC({ body: first, temperature_degC: t1 }, { body: second, temperature_degC: t2 });
    check(`TOUCH-01 ${name}`, `${t1} and ${t2} degC`, 'degC', published, ours, tolerance);
    expect(
      contactTemperature_degC({ body: second, temperature_degC: t2 }, { body: first, temperature_degC: t1 }),
    ).toBeCloseTo(ours, 12);
  });

  it('[TOUCH-02] thresholds fall with the time of contact; metal burns before stone, stone before plastic', () => {
    for (const [i, row] of burnThresholds.entries()) {
      const next = burnThresholds[i + 1];
      for (const surface of ['metal', 'plastic', 'stone'] as const) {
        expect(burnThreshold_degC(surface, row.contact_s)).toBe(row[`${surface}_degC`]);
        if (next) expect(next[`${surface}_degC`]).toBeLessThanOrEqual(row[`${surface}_degC`]);
      }
      expect(row.metal_degC).toBeLessThanOrEqual(row.stone_degC);
      expect(row.stone_degC).toBeLessThanOrEqual(row.plastic_degC);
    }
    const standard = { evidence: 'practice' as const, source: 'ISO 13732-1:2006 (from memory; check your copy)' };
    check('TOUCH-02 metal for 10 s', 'bare metal', 'degC', 55, burnThreshold_degC('metal', 10), 0, standard);
    check('TOUCH-02 plastic for 1 min', 'plastic', 'degC', 60, burnThreshold_degC('plastic', 60), 0, standard);
    check('TOUCH-02 metal for 1 min', 'bare metal', 'degC', 51, burnThreshold_degC('metal', 60), 0, standard);
    // Between two rows the longer contact counts.
    expect(burnThreshold_degC('metal', 2)).toBe(55);
    expect(burnThreshold_degC('metal', 5, [{ contact_s: 5, metal_degC: 1, plastic_degC: 2, stone_degC: 3 }])).toBe(1);
    for (const bad of [0, -1, 28_801, Number.NaN]) expect(() => burnThreshold_degC('metal', bad)).toThrow(Refusal);
  });

  it('[TOUCH-03] time to cool as one lump', () => {
    const from = { from_degC: 185, to_degC: 50, timeConstant_s: 1 };
    const at = (around_degC: number) => coolingTime_s({ ...from, around_degC });
    check('TOUCH-03 cooling 185 to 50 degC', 'air 25 degC, in time constants', '1', 1.8563, at(25), 0.51e-4);
    check('TOUCH-03 cooling in warm air', '38 against 25 degC', '1', 1.35, at(38) / at(25), 0.51e-3);
    check('TOUCH-03 cooling in cold air', '5 against 25 degC', '1', 0.747, at(5) / at(25), 0.51e-3);
    expect(coolingTime_s({ ...from, from_degC: 40, around_degC: 25 })).toBe(0);
    expect(() => at(50)).toThrow('never-cools');
    expect(() => at(Number.NaN)).toThrow('around_degC');
    expect(() => coolingTime_s({ ...from, around_degC: 25, timeConstant_s: 0 })).toThrow('timeConstant_s');
  });

  it('[TOUCH-04] how long to wait before a surface is touched', () => {
    const platen = { surface: 'metal', surface_degC: 80, room_degC: 25, timeConstant_s: 300 } as const;
    const touch = whenTouched(platen);
    const wait = (contact_s: number) => touch.times.find((one) => one.contact_s === contact_s)?.wait_s ?? Number.NaN;
    const derived = { evidence: 'derived' as const, source: '300 s times ln(55/30)' };
    check(
      'TOUCH-04 wait for a touch of 10 s',
      'metal 80 degC, room 25 degC, 300 s',
      's',
      300 * Math.log(55 / 30),
      wait(10),
      1e-9,
      derived,
    );
    expect(touch.burnsAtOnce).toBe(true);
    expect(wait(1)).toBeLessThan(wait(10));
    expect(wait(60)).toBeLessThan(wait(600));
    expect(whenTouched({ ...platen, surface_degC: 40 }).times.every(({ wait_s }) => wait_s === 0)).toBe(true);
    const sauna = whenTouched({ ...platen, room_degC: 50 });
    expect(sauna.times.find((one) => one.contact_s === 600)?.wait_s).toBeNull();
    expect(() => whenTouched({ ...platen, surface_degC: 1e4 })).toThrow('surface_degC');
  });
});
