import { enthalpy_J_kg, type HeatCurve, specificHeat_J_kgK } from './enthalpy.ts';

/** Beyond these temperatures the specific heat at the end goes on. */
const coldest_degC = -50;
const hottest_degC = 390;
const widest_K = 2.5;
/** Without a cap or a melting range the enthalpy is one parabola, which a cubic follows over far longer stretches. */
const widestSmooth_K = 22;
const nodesOverMelt = 24;
const mostIntervals = 8192;
/** Before the intervals stand: lowest enthalpy, one over the spacing, number of intervals. */
const HEAD = 3;

/**
 * Tabulates temperature at equal spacing of enthalpy for a specific heat that changes with temperature, cubic between
 * the nodes, straight beyond both ends. Four numbers an interval, the first and the last being the straight ends.
 *
 * @param curve - specific heat, slope, cap and melting range [units in their names]
 * @returns table from -50 to 390 degC, at most 2.5 K (22 K without cap and melting) and a 24th of the melting range between nodes
 * @validity monotone: specific heat above 0 over the whole table
 * @source derived: inverse of the enthalpy by safeguarded Newton steps, cubic Hermite between the nodes
 * @verified STACK-02 table gives the temperature back
 */
export function enthalpyTable(curve: HeatCurve): Float64Array {
  const known = tabulated.find((one) => sameCurve(one.curve, curve));
  if (known !== undefined) return known.table;
  const table = tabulate(curve);
  if (tabulated.length >= mostKept) tabulated.shift();
  tabulated.push({ curve: copyOf(curve), table });
  return table;
}

/** Tables made last: belts and platens are asked for again and again. */
const tabulated: { readonly curve: HeatCurve; readonly table: Float64Array }[] = [];
const mostKept = 32;

function copyOf({ specificHeat_J_kgK, specificHeatSlope_J_kgK2, specificHeatCap_J_kgK, melt }: HeatCurve): HeatCurve {
  return { specificHeat_J_kgK, specificHeatSlope_J_kgK2, specificHeatCap_J_kgK, melt: melt && { ...melt } };
}

/**
 * Whether two curves are the same, so that they may share a table.
 *
 * @param one - curve
 * @param other - curve
 * @returns true when all their numbers are the same
 * @source derived: plain comparison
 */
export function sameCurve(one: HeatCurve, other: HeatCurve): boolean {
  return (
    one.specificHeat_J_kgK === other.specificHeat_J_kgK &&
    one.specificHeatSlope_J_kgK2 === other.specificHeatSlope_J_kgK2 &&
    one.specificHeatCap_J_kgK === other.specificHeatCap_J_kgK &&
    one.melt?.heat_J_kg === other.melt?.heat_J_kg &&
    one.melt?.centre_degC === other.melt?.centre_degC &&
    one.melt?.width_K === other.melt?.width_K
  );
}

function tabulate(curve: HeatCurve): Float64Array {
  const smooth = curve.melt === undefined && curve.specificHeatCap_J_kgK === undefined;
  const plain_K = smooth ? widestSmooth_K : widest_K;
  const finest_K = Math.min(plain_K, (curve.melt?.width_K ?? Number.POSITIVE_INFINITY) / nodesOverMelt);
  const intervals = Math.min(mostIntervals, Math.ceil((hottest_degC - coldest_degC) / finest_K));
  const lowest_J_kg = enthalpy_J_kg(curve, coldest_degC);
  const spacing_J_kg = (enthalpy_J_kg(curve, hottest_degC) - lowest_J_kg) / intervals;
  const table = new Float64Array(HEAD + 4 * (intervals + 2));
  table.set([lowest_J_kg, 1 / spacing_J_kg, intervals]);
  let low = coldest_degC;
  let lowSlope = spacing_J_kg / specificHeat_J_kgK(curve, low);
  table.set([low - lowSlope, lowSlope], HEAD);
  for (let i = 1; i <= intervals; i += 1) {
    const high = temperatureAt(curve, lowest_J_kg + i * spacing_J_kg, low, hottest_degC + 1);
    const highSlope = spacing_J_kg / specificHeat_J_kgK(curve, high);
    const rise = high - low;
    const at = HEAD + 4 * i;
    table[at] = low;
    table[at + 1] = lowSlope;
    table[at + 2] = 3 * rise - 2 * lowSlope - highSlope;
    table[at + 3] = lowSlope + highSlope - 2 * rise;
    low = high;
    lowSlope = highSlope;
  }
  table.set([low, lowSlope], HEAD + 4 * (intervals + 1));
  return table;
}

/** Newton steps on h(T) = target, kept inside a shrinking bracket. */
function temperatureAt(curve: HeatCurve, target_J_kg: number, coldest: number, hottest: number): number {
  let low = coldest;
  let high = hottest;
  let guess = low;
  for (let i = 0; i < 80; i += 1) {
    const missing = target_J_kg - enthalpy_J_kg(curve, guess);
    if (Math.abs(missing) <= 1e-11 * (Math.abs(target_J_kg) + 1000)) break;
    if (missing > 0) low = guess;
    else high = guess;
    const next = guess + missing / specificHeat_J_kgK(curve, guess);
    guess = next > low && next < high ? next : 0.5 * (low + high);
  }
  return guess;
}

/**
 * Temperature at an enthalpy.
 *
 * @param tables - tables, one after the other [J/kg, degC]
 * @param table - where this one begins [1]
 * @param enthalpy_J_kg - enthalpy above 20 degC [J/kg]
 * @returns temperature [degC]
 * @source derived: cubic Hermite
 * @verified STACK-02 table gives the temperature back
 */
export function tableTemperature_degC(tables: Float64Array, table: number, enthalpy_J_kg: number): number {
  const start = table | 0;
  const position = (enthalpy_J_kg - (tables[start] as number)) * (tables[start + 1] as number);
  return tableAt(tables, start, (tables[start + 2] as number) + 1, position);
}

/**
 * Temperature at a position of a table, for loops that have read the table's head once: lowest enthalpy, one over the
 * spacing and number of intervals stand at its beginning.
 *
 * @param tables - tables, one after the other [degC]
 * @param start - where this one begins [1]
 * @param most - its intervals and one more [1]
 * @param position - enthalpy above the lowest, over the spacing [1]
 * @returns temperature [degC]
 * @source derived: cubic Hermite
 */
export function tableAt(tables: Float64Array, start: number, most: number, position: number): number {
  const interval = Math.max(0, Math.min(position + 1, most)) | 0;
  const share = position - interval + 1;
  const at = start + HEAD + 4 * interval;
  const bend = (tables[at + 2] as number) + share * (tables[at + 3] as number);
  return (tables[at] as number) + share * ((tables[at + 1] as number) + share * bend);
}

/** Interval of a position: 0 below the table, one more than there are above it. */
function intervalOf(tables: Float64Array, start: number, position: number): number {
  const most = (tables[start + 2] as number) + 1;
  return Math.max(0, Math.min(position + 1, most)) | 0;
}

/**
 * Specific heat at an enthalpy: the slope of the table, turned over.
 *
 * @param tables - tables, one after the other [J/kg, degC]
 * @param table - where this one begins [1]
 * @param enthalpy_J_kg - enthalpy above 20 degC [J/kg]
 * @returns specific heat [J/(kg*K)]
 * @source derived: slope of the cubic Hermite
 * @verified STACK-02 table gives the temperature back
 */
export function tableHeat_J_kgK(tables: Float64Array, table: number, enthalpy_J_kg: number): number {
  const start = table | 0;
  const perSpacing = tables[start + 1] as number;
  const position = (enthalpy_J_kg - (tables[start] as number)) * perSpacing;
  const interval = intervalOf(tables, start, position);
  const share = position - interval + 1;
  const at = start + HEAD + 4 * interval;
  const bend = 2 * (tables[at + 2] as number) + 3 * share * (tables[at + 3] as number);
  return 1 / (perSpacing * ((tables[at + 1] as number) + share * bend));
}

/**
 * Enthalpy at a temperature as the table has it.
 *
 * @param tables - tables, one after the other [J/kg, degC]
 * @param table - where this one begins [1]
 * @param curve - what was tabulated
 * @param temperature_degC - temperature [degC]
 * @returns enthalpy above 20 degC [J/kg]
 * @source derived: Newton steps on the table from the exact enthalpy
 * @verified STACK-02 table gives the temperature back
 */
export function tableEnthalpy_J_kg(
  tables: Float64Array,
  table: number,
  curve: HeatCurve,
  temperature_degC: number,
): number {
  let enthalpy = enthalpy_J_kg(curve, temperature_degC);
  for (let i = 0; i < 20; i += 1) {
    const missing_K = temperature_degC - tableTemperature_degC(tables, table, enthalpy);
    if (Math.abs(missing_K) < 1e-12) break;
    enthalpy += missing_K * tableHeat_J_kgK(tables, table, enthalpy);
  }
  return enthalpy;
}
