import { describe, expect, it } from 'vitest';
import { loopwright } from './terminal.ts';

const platen = {
  area_m2: 0.045,
  capacity_J_m2K: 25_300,
  heater_W: 700,
  nominal_V: 120,
  loss_W_m2K: 8,
  fan_W_m2K: 130,
  sensorLag_s: 0,
  control: { kind: 'on-off', hysteresis_K: 0, sample_s: 0.05 },
};

/** A controller that is to switch for a whole day, twenty times a second. */
const restless = {
  layers: [
    {
      name: 'belt',
      thickness_m: 0.0008,
      conductivity_W_mK: 0.2,
      density_kg_m3: 1150,
      specificHeat_J_kgK: 1575,
      belt: true,
    },
  ],
  contacts_W_m2K: [null, null],
  ambient_degC: 25,
  top: platen,
  bottom: platen,
  supply: { volts_V: 120, leadResistance_ohm: 0.08 },
  recipe: { top_degC: 182, bottom_degC: 188, ready_K: 2, dwell_s: 86_400, open_degC: 50, pressure_Pa: 2e5 },
  probes: [],
};

describe('solve, where the solver gives up', () => {
  it('[TERM-58] not-converged is printed as JSON with its reason, exit 1, in bounded time', () => {
    const { code, stdout, stderr, ms } = loopwright(['solve', 'cycle'], { input: JSON.stringify(restless) });
    expect(code).toBe(1);
    expect(stderr).not.toMatch(/\bat .*\.js/);
    const answer = JSON.parse(stdout) as Readonly<Record<string, unknown>>;
    expect(answer).toMatchObject({ status: 'not-converged', reason: 'too-many-steps' });
    expect(answer['residual']).toBeTypeOf('number');
    expect(answer['iterations']).toBeGreaterThan(1000);
    expect(answer).not.toHaveProperty('marks');
    expect(ms).toBeLessThan(45_000);
  });

  it('[TERM-58] in a map such a point has no numbers, the map itself is answered: exit 0', () => {
    const { probes: _, ...rest } = restless;
    const input = JSON.stringify({ ...rest, map: { shift_K: [0], dwell_s: [86_400] } });
    const { code, stdout } = loopwright(['solve', 'cycle-map'], { input });
    expect(code).toBe(0);
    const { cells } = JSON.parse(stdout) as { cells: readonly object[] };
    expect(cells).toMatchObject([{ status: 'not-converged', grade: null, open_s: null, bondMin: null }]);
  });
});
