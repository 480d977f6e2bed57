import { describe, expect, it } from 'vitest';
import { fieldsOf } from '../../src/folder/fields.ts';
import { thingSchemas } from '../../src/plant.ts';
import { meltPrior } from '../../src/things/belt.ts';
import { lineAir } from '../../src/things/line.ts';
import { lightPress } from '../../src/things/press-heat.ts';
import { siliconeMat } from '../../src/things/tooling.ts';

const priors = { presses: lightPress, belts: meltPrior, lines: lineAir, templates: siliconeMat } as const;

describe('what stands in for what nobody said', () => {
  it('[PLANT-64] lies in its own range and in the limits of its field', () => {
    for (const [kind, table] of Object.entries(priors)) {
      const fields = fieldsOf(thingSchemas[kind as keyof typeof priors]);
      for (const [key, { value, low, high }] of Object.entries(table)) {
        expect(value, key).toBeGreaterThanOrEqual(low);
        expect(value, key).toBeLessThanOrEqual(high);
        const field = fields.find((each) => each.key === key);
        // Heater power is a field of its own, in watts; the example knows it per area.
        if (key === 'heaterFlux_W_m2') continue;
        expect(field, key).toMatchObject({ prior: value, required: false });
        expect(low, key).toBeGreaterThanOrEqual(field?.min ?? Number.NaN);
        expect(high, key).toBeLessThanOrEqual(field?.max ?? Number.NaN);
      }
    }
  });

  it('[PLANT-64] is never put into a thing', () => {
    const press = {
      id: 'P9',
      source: 'person',
      name: 'Bare',
      platenLength_m: 0.3,
      platenWidth_m: 0.15,
      bagWidth_m: 0.11,
    };
    const read = thingSchemas.presses.parse(press);
    for (const key of Object.keys(lightPress)) expect(read).not.toHaveProperty(key);
  });

  it('[PLANT-65] the example is a light press of ordinary engineering numbers', () => {
    // 2700 kg/m3 and 900 J/kgK from memory; 1000 J/m2K for what hangs on the platen.
    expect(lightPress.platenCapacity_J_m2K.value).toBe(0.01 * 2700 * 900 + 1000);
    expect(lightPress.heaterFlux_W_m2.value * 0.3 * 0.15).toBeCloseTo(1400, 0);
    expect(lightPress.fanCooling_W_m2K.value).toBe(32.5 * 4);
  });
});
