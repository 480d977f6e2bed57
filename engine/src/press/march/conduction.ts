import { tableSpecificHeat_J_kgK, tableTemperature_degC } from '../stack/enthalpy-table.ts';
import type { End } from './end.ts';
import type { Slab } from './slab.ts';

/** Capacity that stands for a plate whose temperature nothing changes. */
const heldCapacity_J_m2K = 1e30;
const reference_degC = 25;

/** Enthalpy of a plate above 25 degC: C25*(T + s/2*T^2). */
function plateEnthalpy_J_m2(end: End, temperature_degC: number): number {
  const above = temperature_degC - reference_degC;
  return end.capacity_J_m2K * above * (1 + 0.5 * end.capacitySlope_1_K * above);
}

function plateTemperature_degC(end: End, enthalpy_J_m2: number): number {
  const plain = enthalpy_J_m2 / end.capacity_J_m2K;
  return reference_degC + (2 * plain) / (1 + Math.sqrt(1 + 2 * end.capacitySlope_1_K * plain));
}

function plateCapacity_J_m2K(end: End, temperature_degC: number): number {
  if (end.held) return heldCapacity_J_m2K;
  return end.capacity_J_m2K * (1 + end.capacitySlope_1_K * (temperature_degC - reference_degC));
}

/**
 * Capacities at the step's start, to which the whole step refers.
 *
 * @param slab - slab, changed
 * @returns nothing
 * @source derived: slope of the enthalpy
 */
export function freezeCapacities(slab: Slab): void {
  const { capacity, count } = slab;
  freezePlate(slab, slab.top, 0);
  freezePlate(slab, slab.bottom, count - 1);
  const { tabled } = slab;
  for (let t = 0; t < tabled.length; t += 1) {
    const cells = tabled[t];
    if (cells === undefined) continue;
    const { from, to, table, enthalpy_J_kg, specificHeat_J_kgK } = cells;
    for (let i = from; i < to; i += 1) {
      const heat = tableSpecificHeat_J_kgK(table, enthalpy_J_kg[i - from] as number);
      specificHeat_J_kgK[i - from] = heat;
      capacity[i] = (slab.grid.mass_kg_m2[i] as number) * heat;
    }
  }
}

function freezePlate({ capacity, temperature }: Slab, end: End, at: number): void {
  const now = temperature[at] as number;
  capacity[at] = plateCapacity_J_m2K(end, now);
  if (end.capacitySlope_1_K !== 0) end.enthalpy_J_m2 = plateEnthalpy_J_m2(end, now);
}

/**
 * Replaces linear temperatures by true ones where capacity changes with temperature; the others are left alone.
 *
 * @param slab - slab at the step's start
 * @param linear - linear temperatures of all unknowns [degC]
 * @param out - the same numbers, or the same array [degC]; the true temperatures are written into it
 * @returns nothing
 * @source derived: enthalpy as the unknown
 */
export function lookUpTemperatures(slab: Slab, linear: Float64Array, out: Float64Array): void {
  const { temperature, tabled } = slab;
  lookUpPlate(slab, slab.top, 0, linear, out);
  lookUpPlate(slab, slab.bottom, slab.count - 1, linear, out);
  for (let t = 0; t < tabled.length; t += 1) {
    const cells = tabled[t];
    if (cells === undefined) continue;
    const { from, to, table, enthalpy_J_kg, specificHeat_J_kgK } = cells;
    for (let i = from; i < to; i += 1) {
      const gained = (specificHeat_J_kgK[i - from] as number) * ((linear[i] as number) - (temperature[i] as number));
      out[i] = tableTemperature_degC(table, (enthalpy_J_kg[i - from] as number) + gained);
    }
  }
}

function lookUpPlate(slab: Slab, end: End, at: number, linear: Float64Array, out: Float64Array): void {
  if (end.capacitySlope_1_K === 0 || end.held) return;
  const gained = (slab.capacity[at] as number) * ((linear[at] as number) - (slab.temperature[at] as number));
  out[at] = plateTemperature_degC(end, end.enthalpy_J_m2 + gained);
}

/**
 * Slopes of the fluxes at the start of a step, where conductivity changes with temperature.
 *
 * @param slab - slab, changed
 * @returns nothing
 * @source derived: derivative of (T_i - T_j)/(r_i/(1 + s_i T_i) + R + r_j/(1 + s_j T_j))
 */
export function fluxesWithSlopes(slab: Slab): void {
  const at = slab.temperature;
  const { half_m2K_W, conductivitySlope_1_K, contact_m2K_W } = slab.grid;
  for (let i = 0; i + 1 < slab.count; i += 1) {
    const upper = at[i] as number;
    const lower = at[i + 1] as number;
    const upperSlope = conductivitySlope_1_K[i] as number;
    const lowerSlope = conductivitySlope_1_K[i + 1] as number;
    const upperRatio = 1 / (1 + upperSlope * (upper - reference_degC));
    const lowerRatio = 1 / (1 + lowerSlope * (lower - reference_degC));
    const upperHalf = (half_m2K_W[i] as number) * upperRatio;
    const lowerHalf = (half_m2K_W[i + 1] as number) * lowerRatio;
    const conductance = 1 / (upperHalf + (contact_m2K_W[i] as number) + lowerHalf);
    const flux = conductance * (upper - lower);
    slab.fluxByUpper[i] = conductance + flux * conductance * upperHalf * upperRatio * upperSlope;
    slab.fluxByLower[i] = conductance - flux * conductance * lowerHalf * lowerRatio * lowerSlope;
  }
}

/**
 * Conductances of a stack whose conductivities do not change, once and for all.
 *
 * @param slab - slab, changed
 * @returns nothing
 * @source cell-centred finite volumes: half cells and contacts in series
 */
export function setConductances(slab: Slab): void {
  const { half_m2K_W, contact_m2K_W } = slab.grid;
  for (let i = 0; i + 1 < slab.count; i += 1) {
    const resistance = (half_m2K_W[i] as number) + (contact_m2K_W[i] as number) + (half_m2K_W[i + 1] as number);
    slab.fluxByUpper[i] = 1 / resistance;
    slab.fluxByLower[i] = 1 / resistance;
  }
}

/**
 * Right-hand side of all rows at a stage: what flows in less what flows out, plus the earlier stages' share.
 *
 * @param slab - slab with stage temperatures and sums
 * @param perStep_1_s - one over the length of the step [1/s]
 * @param into - right-hand side [W/m2], overwritten
 * @returns nothing
 * @source cell-centred finite volumes
 */
export function balanceCells(slab: Slab, perStep_1_s: number, into: Float64Array): void {
  const { count, capacity, stage, sum, fluxByUpper, source } = slab;
  if (slab.grid.slopes) {
    balanceSlopedCells(slab, perStep_1_s, into);
    return;
  }
  let above = stage[0] as number;
  let inflow = 0;
  const last = count - 1;
  for (let i = 0; i < last; i += 1) {
    const below = stage[i + 1] as number;
    const outflow = (fluxByUpper[i] as number) * (above - below);
    into[i] = inflow - outflow + (capacity[i] as number) * (sum[i] as number) * perStep_1_s;
    inflow = outflow;
    above = below;
  }
  into[last] = inflow + (capacity[last] as number) * (sum[last] as number) * perStep_1_s;
  slab.flux[0] = (fluxByUpper[0] as number) * ((stage[0] as number) - (stage[1] as number));
  slab.flux[last - 1] = inflow;
  if (source !== undefined) for (let i = 1; i < last; i += 1) into[i] = (into[i] as number) + (source.now[i] as number);
}

/** As above; only the fluxes are new, the slopes of the step's start stay. */
function balanceSlopedCells(slab: Slab, perStep_1_s: number, into: Float64Array): void {
  const { half_m2K_W, conductivitySlope_1_K, contact_m2K_W } = slab.grid;
  const { count, capacity, stage, sum, source, flux } = slab;
  let inflow = 0;
  for (let i = 0; i < count; i += 1) {
    let outflow = 0;
    if (i + 1 < count) {
      const upper = stage[i] as number;
      const lower = stage[i + 1] as number;
      const upperRatio = 1 + (conductivitySlope_1_K[i] as number) * (upper - reference_degC);
      const lowerRatio = 1 + (conductivitySlope_1_K[i + 1] as number) * (lower - reference_degC);
      const halves = (half_m2K_W[i] as number) / upperRatio + (half_m2K_W[i + 1] as number) / lowerRatio;
      outflow = (upper - lower) / (halves + (contact_m2K_W[i] as number));
    }
    flux[i] = outflow;
    into[i] = inflow - outflow + (capacity[i] as number) * (sum[i] as number) * perStep_1_s;
    if (source !== undefined) into[i] = (into[i] as number) + (source.now[i] as number);
    inflow = outflow;
  }
}

/**
 * Heat in plates and cells above a fixed temperature; a held plate has none.
 *
 * @param slab - slab
 * @returns heat per area [J/m2]
 * @source derived: sum of enthalpies
 */
export function heatContent_J_m2(slab: Slab): number {
  const { temperature, count, grid } = slab;
  let heat_J_m2 = plateEnthalpy_J_m2(slab.top, temperature[0] as number);
  heat_J_m2 += plateEnthalpy_J_m2(slab.bottom, temperature[count - 1] as number);
  for (let i = 1; i + 1 < count; i += 1) {
    heat_J_m2 +=
      (grid.mass_kg_m2[i] as number) *
      (grid.specificHeat_J_kgK[i] as number) *
      ((temperature[i] as number) - reference_degC);
  }
  for (const { from, to, enthalpy_J_kg } of slab.tabled) {
    for (let i = from; i < to; i += 1) {
      const plain = (grid.specificHeat_J_kgK[i] as number) * ((temperature[i] as number) - reference_degC);
      heat_J_m2 += (grid.mass_kg_m2[i] as number) * ((enthalpy_J_kg[i - from] as number) - plain);
    }
  }
  return heat_J_m2;
}
