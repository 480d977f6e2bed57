import { describe, expect, it } from 'vitest';
import { checkAgainst } from '../../../../tools/validation/check.ts';
import { conduct } from '../../../src/press/index.ts';
import { enthalpy_J_kg, specificHeat_J_kgK } from '../../../src/press/stack/enthalpy.ts';
import { enthalpyTable, tableTemperature_degC } from '../../../src/press/stack/enthalpy-table.ts';

const cover = {
  specificHeat_J_kgK: 1575,
  specificHeatSlope_J_kgK2: 3.75,
  specificHeatCap_J_kgK: 2200,
  melt: { heat_J_kg: 8000, centre_degC: 165, width_K: 50 },
};
const derived = { topic: 'heat', evidence: 'derived', inputs: 'cover of 8 kJ/kg at 165 degC over 50 K' } as const;

describe('heat of a layer', () => {
  it('[STACK-01] melting adds exactly its heat, most at the middle of its range', () => {
    checkAgainst({
      ...derived,
      id: 'STACK-01 specific heat at the melting peak',
      source: '1575 + 3.75*145 + 2*8000/50 by hand',
      unit: 'J/(kg K)',
      published: 2438.75,
      ours: specificHeat_J_kgK(cover, 165),
      tolerance: 1e-9,
      why: 'rounding',
    });
    const { melt: _, ...plain } = cover;
    checkAgainst({
      ...derived,
      id: 'STACK-01 enthalpy over the melting range',
      source: 'the melting heat itself',
      unit: 'J/kg',
      published: 8000,
      ours: enthalpy_J_kg(cover, 195) - enthalpy_J_kg(plain, 195),
      tolerance: 1e-8,
      why: 'rounding',
    });
    // Below the cap, 20 to 140 degC: 1575*120 + 3.75*120^2/2.
    expect(enthalpy_J_kg(plain, 140)).toBeCloseTo(216_000, 6);
  });

  it('[STACK-02] the table gives the temperature of an enthalpy back', () => {
    const table = enthalpyTable(cover);
    const off = Array.from({ length: 2000 }, (_, i) => -40 + i * 0.2).map((t) =>
      Math.abs(tableTemperature_degC(table, 0, enthalpy_J_kg(cover, t)) - t),
    );
    checkAgainst({
      ...derived,
      id: 'STACK-02 table gives the temperature back',
      source: 'the inverse of the enthalpy in closed form',
      unit: 'K',
      published: 0,
      ours: Math.max(...off),
      tolerance: 0.002,
      why: 'a tenth of the accuracy asked for',
    });
  });

  it('[STACK-03] a steady composite with contacts is exact to rounding', () => {
    const layer = (thickness_m: number, conductivity_W_mK: number) => ({
      name: 'layer',
      thickness_m,
      conductivity_W_mK,
      density_kg_m3: 1200,
      specificHeat_J_kgK: 1000,
    });
    const result = conduct({
      layers: [layer(0.002, 0.22), layer(0.003, 0.25)],
      contacts_W_m2K: [500],
      cells: [5, 7],
      top: { kind: 'fixed', temperature_degC: 180 },
      bottom: { kind: 'fixed', temperature_degC: 25 },
      start_degC: 25,
      times_s: [50_000],
      probes: [{ layer: 0, fraction: 1 }],
      tolerance_K: 1e-8,
    });
    if (result.status !== 'ok') throw new Error(result.reason);
    const resistance = 0.002 / 0.22 + 1 / 500 + 0.003 / 0.25;
    checkAgainst({
      ...derived,
      id: 'STACK-03 steady composite',
      inputs: '2 mm of 0.22, contact 500, 3 mm of 0.25, 180 to 25 degC',
      source: 'resistances in series',
      unit: 'degC',
      published: 180 - (155 / resistance) * (0.002 / 0.22),
      ours: result.states[0]?.probes_degC[0] ?? Number.NaN,
      tolerance: 1e-7,
      why: 'rounding over the march',
    });
  });
});
