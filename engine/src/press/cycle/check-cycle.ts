import { indexInRange, inRange, type Limits } from '../../in-range.ts';
import { Refusal } from '../../refusal.ts';
import { checkStack } from '../stack/check-stack.ts';
import { checkWetted } from '../stack/check-wetted.ts';
import { checkRecipe } from './check-recipe.ts';
import { coolsTowards_degC } from './cooling.ts';
import type { BareFace, CycleInput, Platen, PlatenControl } from './cycle-input.ts';
import { highestSetPoints, recipePlan } from './recipe-plan.ts';

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
const faceLimits = {
  length_m: { min: 1e-3, max: 10, unit: 'm' },
  emissivity: { min: 0, max: 1, unit: '1' },
  area_m2: { min: 0, max: 10, unit: 'm2' },
} as const satisfies Record<string, Limits>;
const mostFaces = 20;
const waterLimits = {
  inlet_degC: { min: 0, max: 100, unit: 'degC' },
  flow_kg_s: { min: 0, max: 10, unit: 'kg/s', above: true },
  transferUnits: { min: 0, max: 100, unit: '1', above: true },
  from_degC: temperature,
} as const satisfies Record<string, Limits>;
const ways: ReadonlySet<string> = new Set(['up', 'down', 'side']);
const deviation: Limits = { min: -50, max: 50, unit: 'K' };
const leastExcess_K = 50;
const mostProbes = 500;
const mostTimes = 100_000;
const time: Limits = { min: 0, max: 1e6, unit: 's' };

/**
 * Lets the input of a press cycle through when it can be computed with.
 *
 * @param input - press, stack, supply and recipe [units in their names]
 * @returns nothing
 * @throws not-finite, out-of-range, no-belt, areas-differ, unknown-control, unknown-face, never-cools, and those of a stack, its contacts and a recipe
 * @source derived: plain comparison
 */
export function checkCycle(input: CycleInput): void {
  checkStack(input.layers, input.contacts_W_m2K);
  if (input.contactsWetted_W_m2K !== undefined) {
    checkWetted(input.layers, input.contacts_W_m2K, input.contactsWetted_W_m2K);
  }
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
  checkRecipe(input.recipe);
  checkCooling(input);
  checkColumns(input);
  checkWanted(input);
}

/** A deviation is stated at the set point: that must be well above the air. */
function checkColumns({ columns, recipe, ambient_degC }: CycleInput): void {
  if (columns === undefined) return;
  checkFields(columns, 'columns', { left_K: deviation, right_K: deviation });
  const min = ambient_degC + leastExcess_K;
  const { top_degC, bottom_degC } = highestSetPoints(recipePlan(recipe));
  inRange(top_degC, 'recipe.top_degC', { ...temperature, min });
  inRange(bottom_degC, 'recipe.bottom_degC', { ...temperature, min });
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
  checkFaces(platen.faces ?? [], `${path}.faces`);
  if (platen.water !== undefined) checkFields(platen.water, `${path}.water`, waterLimits);
  const { control } = platen;
  const limits = controlLimits[control.kind];
  if (limits === undefined)
    throw new Refusal('unknown-control', `${path}.control.kind`, { value: String(control.kind) });
  checkFields(control, `${path}.control`, limits);
}

function checkFaces(faces: readonly BareFace[], path: string): void {
  inRange(faces.length, path, { min: 0, max: mostFaces, unit: '1' });
  faces.forEach((face, index) => {
    if (!ways.has(face.faces))
      throw new Refusal('unknown-face', `${path}[${index}].faces`, { value: String(face.faces) });
    checkFields(face, `${path}[${index}]`, faceLimits);
  });
}

/** A press never opens at a temperature that neither of its platens cools down to by itself. */
function checkCooling(input: CycleInput): void {
  const { recipe } = input;
  const min = Math.min(coldest_degC(input, 'top'), coldest_degC(input, 'bottom'));
  const check = (value: number, path: string) => {
    if (value <= min) throw new Refusal('never-cools', path, { value, min, unit: 'degC' });
  };
  if (recipe.steps === undefined) check(recipe.open_degC, 'recipe.open_degC');
  recipe.steps?.forEach((step, index) => {
    if (step.kind === 'cool' && step.time_s === undefined) {
      check(step.below_degC ?? recipe.open_degC, `recipe.steps[${index}]`);
    }
  });
}

/** With bare faces the air draws too. */
function coldest_degC(input: CycleInput, side: 'top' | 'bottom'): number {
  const towards_degC = coolsTowards_degC(input, side);
  return input[side].faces === undefined ? towards_degC : Math.min(towards_degC, input.ambient_degC);
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
