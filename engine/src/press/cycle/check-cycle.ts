import { indexInRange, inRange, type Limits } from '../../in-range.ts';
import { Refusal } from '../../refusal.ts';
import { checkStack } from '../stack/check-stack.ts';
import type { CycleInput, Platen, PlatenControl } from './cycle-input.ts';

// The limits catch wrong units and keep the work bounded; they are not advice.
const ambient: Limits = { min: -40, max: 70, unit: 'degC' };
const temperature: Limits = { min: -40, max: 350, unit: 'degC' };
const platenLimits = {
  area_m2: { min: 1e-4, max: 10, unit: 'm2' },
  capacity_J_m2K: { min: 100, max: 1e7, unit: 'J/(m2*K)' },
  heater_W: { min: 0, max: 1e5, unit: 'W' },
  nominal_V: { min: 1, max: 1000, unit: 'V' },
  loss_W_m2K: { min: 0, max: 2000, unit: 'W/(m2*K)' },
  fan_W_m2K: { min: 0, max: 1e4, unit: 'W/(m2*K)' },
  sensorLag_s: { min: 0, max: 600, unit: 's' },
} as const satisfies Record<string, Limits>;
const capacitySlope: Limits = { min: 0, max: 0.01, unit: '1/K' };
const controlLimits: Readonly<Record<PlatenControl['kind'], Readonly<Record<string, Limits>>>> = {
  proportional: { band_K: { min: 0.01, max: 300, unit: 'K' } },
  pi: {
    band_K: { min: 0.01, max: 300, unit: 'K' },
    integral_s: { min: 0.1, max: 1e5, unit: 's' },
    tracking_s: { min: 0.1, max: 1e5, unit: 's' },
  },
  'on-off': {
    hysteresis_K: { min: 0, max: 100, unit: 'K' },
    sample_s: { min: 0.05, max: 600, unit: 's' },
  },
};
const supplyLimits = {
  volts_V: { min: 1, max: 1000, unit: 'V' },
  leadResistance_ohm: { min: 0, max: 100, unit: 'ohm' },
  control_W: { min: 0, max: 1e4, unit: 'W' },
  fan_W: { min: 0, max: 1e4, unit: 'W' },
} as const satisfies Record<string, Limits>;
const recipeLimits = {
  top_degC: temperature,
  bottom_degC: temperature,
  ready_K: { min: 0, max: 100, unit: 'K' },
  dwell_s: { min: 0, max: 86_400, unit: 's' },
  open_degC: temperature,
  pressure_Pa: { min: 0, max: 5e6, unit: 'Pa' },
} as const satisfies Record<string, Limits>;
const mostProbes = 500;
const mostTimes = 100_000;
const time: Limits = { min: 0, max: 1e6, unit: 's' };

/**
 * Lets the input of a press cycle through when it can be computed with.
 *
 * @param input - press, stack, supply and recipe [units in their names]
 * @returns nothing
 * @throws not-finite, out-of-range, no-belt, areas-differ, unknown-control, never-cools, and those of a stack
 * @source derived: plain comparison
 */
export function checkCycle(input: CycleInput): void {
  checkStack(input.layers, input.contacts_W_m2K);
  if (!input.layers.some(({ belt }) => belt === true)) throw new Refusal('no-belt', 'layers', {});
  inRange(input.ambient_degC, 'ambient_degC', ambient);
  if (input.start_degC !== undefined) inRange(input.start_degC, 'start_degC', temperature);
  checkPlaten(input.top, 'top');
  checkPlaten(input.bottom, 'bottom');
  if (input.top.area_m2 !== input.bottom.area_m2) {
    throw new Refusal('areas-differ', 'bottom.area_m2', {
      value: input.bottom.area_m2,
      expected: input.top.area_m2,
      unit: 'm2',
    });
  }
  checkFields(input.supply, 'supply', supplyLimits);
  checkFields(input.recipe, 'recipe', recipeLimits);
  checkCooling(input);
  checkWanted(input);
}

function checkFields(given: object, path: string, limits: Readonly<Record<string, Limits>>): void {
  for (const [name, own] of Object.entries(limits)) {
    const value = (given as Readonly<Record<string, number | undefined>>)[name];
    if (value !== undefined) inRange(value, `${path}.${name}`, own);
  }
}

function checkPlaten(platen: Platen, path: string): void {
  checkFields(platen, path, platenLimits);
  if (platen.capacitySlope_1_K !== undefined) {
    inRange(platen.capacitySlope_1_K, `${path}.capacitySlope_1_K`, capacitySlope);
  }
  const { control } = platen;
  const limits = controlLimits[control.kind];
  if (limits === undefined)
    throw new Refusal('unknown-control', `${path}.control.kind`, { value: String(control.kind) });
  checkFields(control, `${path}.control`, limits);
}

/** In air no colder than the opening temperature a press never opens. */
function checkCooling({ ambient_degC, recipe }: CycleInput): void {
  if (recipe.open_degC > ambient_degC) return;
  throw new Refusal('never-cools', 'recipe.open_degC', { value: recipe.open_degC, min: ambient_degC, unit: 'degC' });
}

function checkWanted({ probes, times_s = [], layers }: CycleInput): void {
  inRange(probes.length, 'probes', { min: 0, max: mostProbes, unit: '1' });
  inRange(times_s.length, 'times_s', { min: 0, max: mostTimes, unit: '1' });
  probes.forEach(({ layer, fraction }, index) => {
    indexInRange(layer, `probes[${index}].layer`, layers.length);
    inRange(fraction, `probes[${index}].fraction`, { min: 0, max: 1, unit: '1' });
  });
  times_s.forEach((time_s, index) => {
    inRange(time_s, `times_s[${index}]`, time);
  });
}
