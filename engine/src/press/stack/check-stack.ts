import { inRange, type Limits } from '../../in-range.ts';
import { Refusal } from '../../refusal.ts';
import type { Layer } from './layer.ts';

/** More layers than any press holds: it bounds the work, it is not advice. */
const mostLayers = 40;
// Wide enough for metals, gels and fabrics in other units of thickness than a press's; they catch wrong units.
const limits = {
  thickness_m: { min: 1e-6, max: 10, unit: 'm' },
  conductivity_W_mK: { min: 1e-3, max: 5000, unit: 'W/(m*K)' },
  density_kg_m3: { min: 0.1, max: 25_000, unit: 'kg/m3' },
  specificHeat_J_kgK: { min: 50, max: 20_000, unit: 'J/(kg*K)' },
} as const satisfies Record<string, Limits>;
const optional = {
  conductivitySlope_1_K: { min: -1.5e-3, max: 5e-3, unit: '1/K' },
  specificHeatSlope_J_kgK2: { min: 0, max: 100, unit: 'J/(kg*K2)' },
  specificHeatCap_J_kgK: { min: 50, max: 20_000, unit: 'J/(kg*K)' },
} as const satisfies Record<string, Limits>;
const melt = {
  heat_J_kg: { min: 0, max: 1e6, unit: 'J/kg' },
  centre_degC: { min: -60, max: 400, unit: 'degC' },
  width_K: { min: 0.1, max: 300, unit: 'K' },
} as const satisfies Record<string, Limits>;
/** Worse than a millimetre of air to better than any joint. */
const contact: Limits = { min: 1, max: 1e6, unit: 'W/(m2*K)' };

/**
 * Lets a stack through whose layers and contacts can be computed with.
 *
 * @param layers - layers from the top
 * @param contacts_W_m2K - one per interface from the upper platen down; null = perfect [W/(m2*K)]
 * @returns nothing
 * @throws no-layers, too-many-layers, contact-count, not-finite, out-of-range
 * @source derived: plain comparison
 */
export function checkStack(layers: readonly Layer[], contacts_W_m2K: readonly (number | null)[]): void {
  if (layers.length === 0) throw new Refusal('no-layers', 'layers', { value: 0, min: 1 });
  if (layers.length > mostLayers) {
    throw new Refusal('too-many-layers', 'layers', { value: layers.length, max: mostLayers });
  }
  if (contacts_W_m2K.length !== layers.length + 1) {
    throw new Refusal('contact-count', 'contacts_W_m2K', { value: contacts_W_m2K.length, expected: layers.length + 1 });
  }
  layers.forEach((layer, index) => {
    checkLayer(layer, `layers[${index}]`);
  });
  contacts_W_m2K.forEach((value, index) => {
    if (value !== null) inRange(value, `contacts_W_m2K[${index}]`, contact);
  });
}

function checkLayer(layer: Layer, path: string): void {
  for (const name of Object.keys(limits) as (keyof typeof limits)[])
    inRange(layer[name], `${path}.${name}`, limits[name]);
  for (const name of Object.keys(optional) as (keyof typeof optional)[]) {
    const value = layer[name];
    if (value !== undefined) inRange(value, `${path}.${name}`, optional[name]);
  }
  const cap = layer.specificHeatCap_J_kgK;
  if (cap !== undefined && cap < layer.specificHeat_J_kgK) {
    throw new Refusal('out-of-range', `${path}.specificHeatCap_J_kgK`, {
      value: cap,
      min: layer.specificHeat_J_kgK,
      max: optional.specificHeatCap_J_kgK.max,
      unit: 'J/(kg*K)',
    });
  }
  if (layer.melt === undefined) return;
  for (const name of Object.keys(melt) as (keyof typeof melt)[]) {
    inRange(layer.melt[name], `${path}.melt.${name}`, melt[name]);
  }
}
