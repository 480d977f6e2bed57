import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { conductors, resistanceAt20_ohm_km, type SupplyInput, supply } from '../../src/press/index.ts';
import { Refusal } from '../../src/refusal.ts';
import { checkHeat as check } from '../book.ts';

const seeded = { seed: 42, numRuns: Number(process.env['LW_RUNS'] ?? 2000) };

function press(more: Partial<SupplyInput['supply']> = {}, heaters = [{ power_W: 2000, nominal_V: 230 }]): SupplyInput {
  return { supply: { volts_V: 230, lead: { length_m: 30, resistance_ohm_km: 13.3 }, breaker_A: 16, ...more }, heaters };
}

describe('supply of a press', () => {
  it('[SUP-01] 230 V, 2000 W, 30 m of 1.5 mm2', () => {
    const ours = supply(press());
    const inputs = '230 V, 2000 W, 30 m of 1.5 mm2';
    check('SUP-01 resistance of 30 m of 1.5 mm2', inputs, 'ohm', 0.798, ours.leadResistance_ohm, 1e-12);
    check('SUP-01 current through 30 m of 1.5 mm2', inputs, 'A', 8.440986, ours.current_A, 0.51e-6);
    check('SUP-01 current by the plate', inputs, 'A', 8.695652, ours.ratedCurrent_A, 0.51e-6);
    check('SUP-01 voltage at the heater', inputs, 'V', 223.264093, ours.heaterVolts_V, 0.51e-6);
    check('SUP-01 drop', inputs, '%', 2.928655, ours.dropShare * 100, 0.51e-6);
    check('SUP-01 power', inputs, 'W', 1884.569, ours.heaterPowers_W[0] ?? Number.NaN, 0.51e-3);
    check('SUP-01 loss in the lead', inputs, 'W', 56.8577, ours.leadLoss_W, 0.51e-4);
    check('SUP-01 time to warm up', inputs, '1', (230 / 223.264093) ** 2, ours.heatUpFactor, 1e-8);
    expect(ours.powerShare * ours.heatUpFactor).toBeCloseTo(1, 14);
    expect(ours.limit_A).toBe(12.8);
    expect(ours.withinLimit).toBe(true);
    const warm = supply(press({ lead: { length_m: 30, resistance_ohm_km: 13.3, temperature_degC: 50 } }));
    check('SUP-01 resistance at 50 degC', inputs, 'ohm', 0.892084, warm.leadResistance_ohm, 0.51e-6);
  });

  it.each([
    [13.3, 6.93913, 3.017013],
    [7.98, 4.163478, 1.810208],
  ])('[SUP-02] drop at the rated current through 30 m of %d ohm/km', (resistance_ohm_km, volts, percent) => {
    const { ratedCurrent_A, leadResistance_ohm } = supply(press({ lead: { length_m: 30, resistance_ohm_km } }));
    const drop_V = ratedCurrent_A * leadResistance_ohm;
    check(`SUP-02 drop through 30 m of ${resistance_ohm_km} ohm/km`, '8.695652 A', 'V', volts, drop_V, 0.51e-6);
    check(
      `SUP-02 drop in percent through 30 m of ${resistance_ohm_km} ohm/km`,
      'of 230 V',
      '%',
      percent,
      drop_V / 2.3,
      0.51e-6,
    );
  });

  it.each([
    [14, 3.14, 0.628, 7.85, 6.541667],
    [12, 1.98, 0.396, 4.95, 4.125],
    [10, 1.24, 0.248, 3.1, 2.583333],
  ])('[SUP-02] 120 V, 1500 W at 100 ft of %d AWG', (size, ohm_kft, loop_ohm, volts, percent) => {
    const lead = { length_m: 30.48, resistance_ohm_km: ohm_kft / 0.3048 };
    const ours = supply(press({ volts_V: 120, lead, breaker_A: 15 }, [{ power_W: 1500, nominal_V: 120 }]));
    const inputs = '100 ft one way at 75 degC, 12.5 A';
    check(`SUP-02 resistance of 100 ft of ${size} AWG`, inputs, 'ohm', loop_ohm, ours.leadResistance_ohm, 1e-9);
    check(
      `SUP-02 drop through 100 ft of ${size} AWG`,
      inputs,
      'V',
      volts,
      ours.ratedCurrent_A * ours.leadResistance_ohm,
      1e-9,
    );
    const share = (ours.ratedCurrent_A * ours.leadResistance_ohm) / 1.2;
    check(`SUP-02 drop in percent through 100 ft of ${size} AWG`, inputs, '%', percent, share, 0.51e-6);
  });

  it('[SUP-03] a plugged press may draw 80 % of the circuit: 12.5 A is too much on 15 A and allowed on 20 A', () => {
    const at = (breaker_A: number, length_m: number) =>
      supply(
        press({ volts_V: 120, breaker_A, lead: { length_m, resistance_ohm_km: 10.3 } }, [
          { power_W: 1500, nominal_V: 120 },
        ]),
      );
    expect(at(15, 3)).toMatchObject({ limit_A: 12, withinLimit: false });
    // A long lead lowers the current but not what the plate says.
    expect(at(15, 30).current_A).toBeLessThan(12);
    expect(at(15, 30).withinLimit).toBe(false);
    expect(at(20, 3)).toMatchObject({ limit_A: 16, withinLimit: true });
    expect(at(15, 30).warnings.map(({ code }) => code)).toEqual(['current-over-limit', 'lead-drops-voltage']);
  });

  it('[SUP-03] mains 10 % high draw 10 % more: a press of 11.58 A at 120 V is over 12 A at 132 V', () => {
    const heaters = [700, 700].map((power_W) => ({ power_W, nominal_V: 120 }));
    // 0.08 ohm of lead.
    const at = (volts_V: number) =>
      supply(press({ volts_V, breaker_A: 15, lead: { length_m: 4, resistance_ohm_km: 10 } }, heaters));
    check('SUP-03 current at 120 V', '2 x 700 W behind 0.08 ohm', 'A', 11.577, at(120).current_A, 0.51e-3);
    check('SUP-03 current 10 % high', '132 V', 'A', 12.73, at(132).current_A, 0.0051);
    check('SUP-03 current 10 % low', '108 V', 'A', 10.42, at(108).current_A, 0.0051);
    check('SUP-03 power 10 % low', '108 against 120 V', '1', 0.81, at(108).powerShare / at(120).powerShare, 1e-12);
    check('SUP-03 power 10 % high', '132 against 120 V', '1', 1.21, at(132).powerShare / at(120).powerShare, 1e-12);
    expect(at(120).withinLimit).toBe(true);
    expect(at(132).withinLimit).toBe(false);
  });

  it('[SUP-04] resistances of conductors fall with their section; a stated temperature is taken back to 20 degC', () => {
    const [metric, american] = [conductors.slice(0, 7), conductors.slice(7)];
    for (const row of [metric, american]) {
      for (const [i, one] of row.entries()) {
        expect(one.resistance_ohm_km).toBeLessThan(row[i - 1]?.resistance_ohm_km ?? Number.POSITIVE_INFINITY);
      }
    }
    // rho of 0.01724 ohm*mm2/m over 2.08 mm2, the section of 14 AWG.
    const wire = american[0] ?? { resistance_ohm_km: Number.NaN, at_degC: 75 };
    check(
      'SUP-04 14 AWG at 20 degC',
      '0.01724 ohm*mm2/m over 2.08 mm2',
      'ohm/km',
      8.29,
      resistanceAt20_ohm_km(wire),
      0.25,
      {
        why: 'stranding and its allowance are 2 %',
        evidence: 'derived',
        source: 'resistivity of annealed copper at 20 degC (from memory)',
      },
    );
  });

  it('[SUP-05] power in the lead and in the heaters is what the outlet gives; each heater by its own plate', () => {
    const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    const heater = fc.record({ power_W: number(100, 3000), nominal_V: number(100, 480) });
    fc.assert(
      fc.property(
        number(100, 480),
        number(0, 100),
        fc.array(heater, { minLength: 1, maxLength: 4 }),
        (volts_V, length_m, heaters) => {
          const ours = supply(press({ volts_V, lead: { length_m, resistance_ohm_km: 8 } }, heaters));
          const heat_W = ours.heaterPowers_W.reduce((sum, value) => sum + value, 0);
          return Math.abs((heat_W + ours.leadLoss_W) / (volts_V * ours.current_A) - 1) < 1e-12 && ours.dropShare >= 0;
        },
      ),
      seeded,
    );
  });

  it.each<[string, SupplyInput]>([
    ['supply.volts_V', press({ volts_V: 0 })],
    ['supply.volts_V', press({ volts_V: Number.NaN })],
    ['supply.lead.length_m', press({ lead: { length_m: -1, resistance_ohm_km: 8 } })],
    ['supply.lead.resistance_ohm_km', press({ lead: { length_m: 1, resistance_ohm_km: 1e9 } })],
    ['supply.lead.temperature_degC', press({ lead: { length_m: 1, resistance_ohm_km: 8, temperature_degC: 500 } })],
    ['supply.breaker_A', press({ breaker_A: 0 })],
    ['supply.cordShare', press({ cordShare: 1.2 })],
    ['heaters', press({}, [])],
    [
      'heaters',
      press(
        {},
        Array.from({ length: 21 }, () => ({ power_W: 1, nominal_V: 1 })),
      ),
    ],
    [
      'heaters[1].power_W',
      press({}, [
        { power_W: 1, nominal_V: 1 },
        { power_W: 0, nominal_V: 1 },
      ]),
    ],
    ['heaters[0].nominal_V', press({}, [{ power_W: 1, nominal_V: 0 }])],
  ])('[SUP-06] bad %s is refused', (path, input) => {
    expect(() => supply(input)).toThrow(Refusal);
    expect(() => supply(input)).toThrow(` at ${path}`);
  });
});
