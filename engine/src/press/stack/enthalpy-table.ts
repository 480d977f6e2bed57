import type { Layer } from './layer.ts';

/** Temperature as a function of enthalpy at equal spacing of enthalpy, cubic between the nodes. */
export interface EnthalpyTable {
  readonly lowest_J_kg: number;
  readonly spacing_J_kg: number;
  readonly intervals: number;
  /** Four coefficients an interval, for the share of the interval. */
  readonly cubic: Float64Array;
}

const reference_degC = 20;
/** Beyond these temperatures the specific heat of the last interval goes on. */
const coldest_degC = -60;
const hottest_degC = 420;
const widestSpacing_K = 2;

/**
 * Specific heat at a temperature: a straight line up to a cap, and the melting on top as a raised cosine.
 * c = min(cap, c20 + slope*(T - 20)) + (H/w)*[1 + cos(2 pi (T - Tm)/w)] within Tm +- w/2.
 *
 * @param layer - specific heat, slope, cap and melting range [units in their names]
 * @param temperature_degC - temperature T [degC]
 * @returns specific heat [J/(kg*K)]
 * @source derived: the cosine encloses exactly the melting heat H
 * @verified STACK-01 specific heat at the melting peak
 */
export function specificHeat_J_kgK(layer: Layer, temperature_degC: number): number {
  const { specificHeatSlope_J_kgK2: slope = 0, specificHeatCap_J_kgK: cap = Number.POSITIVE_INFINITY, melt } = layer;
  const plain = Math.min(cap, layer.specificHeat_J_kgK + slope * (temperature_degC - reference_degC));
  if (melt === undefined) return plain;
  const turns = (temperature_degC - melt.centre_degC) / melt.width_K;
  if (Math.abs(turns) >= 0.5) return plain;
  return plain + (melt.heat_J_kg / melt.width_K) * (1 + Math.cos(2 * Math.PI * turns));
}

/**
 * Enthalpy above 20 degC, the integral of the specific heat.
 * h = integral of c dT; melting adds H*(1/2 + u + sin(2 pi u)/(2 pi)), u = (T - Tm)/w.
 *
 * @param layer - specific heat, slope, cap and melting range [units in their names]
 * @param temperature_degC - temperature T [degC]
 * @returns enthalpy [J/kg]; the melting heat counts from the cold end of its range
 * @source derived: integral of the specific heat
 * @verified STACK-01 enthalpy over the melting range
 */
export function enthalpy_J_kg(layer: Layer, temperature_degC: number): number {
  const { specificHeatSlope_J_kgK2: slope = 0, specificHeatCap_J_kgK: cap, melt } = layer;
  const above = temperature_degC - reference_degC;
  let plain = layer.specificHeat_J_kgK * above + 0.5 * slope * above * above;
  if (cap !== undefined && layer.specificHeat_J_kgK + slope * above > cap) {
    const toCap = slope === 0 ? 0 : (cap - layer.specificHeat_J_kgK) / slope;
    plain = layer.specificHeat_J_kgK * toCap + 0.5 * slope * toCap * toCap + cap * (above - toCap);
  }
  if (melt === undefined) return plain;
  const turns = Math.max(-0.5, Math.min(0.5, (temperature_degC - melt.centre_degC) / melt.width_K));
  return plain + melt.heat_J_kg * (0.5 + turns + Math.sin(2 * Math.PI * turns) / (2 * Math.PI));
}

/**
 * Tabulates temperature over enthalpy for a layer whose specific heat changes with temperature.
 *
 * @param layer - specific heat, slope, cap and melting range [units in their names]
 * @returns table from -60 to 420 degC, at most 2 K and a twenty-fifth of the melting range between nodes
 * @validity monotone: specific heat above 0 over the whole table
 * @source derived: inverse of the enthalpy by safeguarded Newton steps, cubic Hermite between the nodes
 * @verified STACK-02 table gives the temperature back
 */
export function enthalpyTable(layer: Layer): EnthalpyTable {
  const finest_K = Math.min(widestSpacing_K, (layer.melt?.width_K ?? 50) / 25);
  const lowest_J_kg = enthalpy_J_kg(layer, coldest_degC);
  const range_J_kg = enthalpy_J_kg(layer, hottest_degC) - lowest_J_kg;
  const intervals = Math.min(8192, Math.ceil((hottest_degC - coldest_degC) / finest_K));
  const spacing_J_kg = range_J_kg / intervals;
  const cubic = new Float64Array(4 * intervals);
  let low = coldest_degC;
  let slopeLow = spacing_J_kg / specificHeat_J_kgK(layer, low);
  for (let i = 0; i < intervals; i += 1) {
    const high = temperatureAt(layer, lowest_J_kg + (i + 1) * spacing_J_kg, low, hottest_degC + 1);
    const slopeHigh = spacing_J_kg / specificHeat_J_kgK(layer, high);
    const rise = high - low;
    cubic[4 * i] = low;
    cubic[4 * i + 1] = slopeLow;
    cubic[4 * i + 2] = 3 * rise - 2 * slopeLow - slopeHigh;
    cubic[4 * i + 3] = slopeLow + slopeHigh - 2 * rise;
    low = high;
    slopeLow = slopeHigh;
  }
  return { lowest_J_kg, spacing_J_kg, intervals, cubic };
}

/** Newton steps on h(T) = target, kept inside a shrinking bracket. */
function temperatureAt(layer: Layer, target_J_kg: number, coldest: number, hottest: number): number {
  let low = coldest;
  let high = hottest;
  let guess = low;
  for (let i = 0; i < 80; i += 1) {
    const missing = target_J_kg - enthalpy_J_kg(layer, guess);
    if (missing > 0) low = guess;
    else high = guess;
    if (Math.abs(missing) <= 1e-11 * (Math.abs(target_J_kg) + 1000)) break;
    const next = guess + missing / specificHeat_J_kgK(layer, guess);
    guess = next > low && next < high ? next : 0.5 * (low + high);
  }
  return guess;
}

/**
 * Temperature at an enthalpy.
 *
 * @param table - table of one layer
 * @param enthalpy_J_kg - enthalpy above 20 degC [J/kg]
 * @returns temperature [degC]; beyond the table the last slope goes on
 * @source derived: cubic Hermite
 * @verified STACK-02 table gives the temperature back
 */
export function tableTemperature_degC(table: EnthalpyTable, enthalpy_J_kg: number): number {
  const { cubic, intervals } = table;
  const position = (enthalpy_J_kg - table.lowest_J_kg) / table.spacing_J_kg;
  const at = position > 0 ? (position < intervals ? Math.trunc(position) : intervals - 1) : 0;
  const share = position - at;
  const j = 4 * at;
  if (share < 0 || share > 1) return beyondTable(table, position);
  return (
    (cubic[j] as number) +
    share * ((cubic[j + 1] as number) + share * ((cubic[j + 2] as number) + share * (cubic[j + 3] as number)))
  );
}

function beyondTable({ cubic, intervals }: EnthalpyTable, position: number): number {
  const [j, edge] = position < 0 ? [0, 0] : [4 * (intervals - 1), 1];
  const [c0, c1, c2, c3] = [0, 1, 2, 3].map((n) => cubic[j + n] as number) as [number, number, number, number];
  const start = c0 + edge * (c1 + c2 + c3);
  return start + (position - (position < 0 ? 0 : intervals)) * (c1 + edge * (2 * c2 + 3 * c3));
}

/**
 * Specific heat at an enthalpy: the slope of the table, turned over.
 *
 * @param table - table of one layer
 * @param enthalpy_J_kg - enthalpy above 20 degC [J/kg]
 * @returns specific heat [J/(kg*K)]
 * @source derived: slope of the cubic Hermite
 * @verified STACK-02 table gives the temperature back
 */
export function tableSpecificHeat_J_kgK(table: EnthalpyTable, enthalpy_J_kg: number): number {
  const { cubic, intervals } = table;
  const position = (enthalpy_J_kg - table.lowest_J_kg) / table.spacing_J_kg;
  const at = position > 0 ? (position < intervals ? Math.trunc(position) : intervals - 1) : 0;
  const share = Math.max(0, Math.min(1, position - at));
  const j = 4 * at;
  const slope =
    (cubic[j + 1] as number) + share * (2 * (cubic[j + 2] as number) + 3 * share * (cubic[j + 3] as number));
  return table.spacing_J_kg / slope;
}

/**
 * Enthalpy at a temperature as the table has it.
 *
 * @param table - table of one layer
 * @param temperature_degC - temperature [degC]
 * @returns enthalpy above 20 degC [J/kg]
 * @source derived: inverse of the table by bisection and Newton steps
 * @verified STACK-02 table gives the temperature back
 */
export function tableEnthalpy_J_kg(table: EnthalpyTable, temperature_degC: number): number {
  let low = 0;
  let high = table.intervals;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((table.cubic[4 * middle] as number) <= temperature_degC) low = middle;
    else high = middle;
  }
  let enthalpy_J_kg = table.lowest_J_kg + low * table.spacing_J_kg;
  for (let i = 0; i < 20; i += 1) {
    const missing_K = temperature_degC - tableTemperature_degC(table, enthalpy_J_kg);
    if (Math.abs(missing_K) < 1e-12) break;
    enthalpy_J_kg += missing_K * tableSpecificHeat_J_kgK(table, enthalpy_J_kg);
  }
  return enthalpy_J_kg;
}
