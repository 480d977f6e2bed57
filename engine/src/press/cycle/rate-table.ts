import type { FusionParameters } from '../../fusion/parameters.ts';
import { fluidity_1_Pa_s, healingRate_1_s, scissionRate_1_s } from '../../fusion/rates.ts';

/** Rates of healing, flow and scission over temperature: exponentials cost more than a step of the stack. */
export interface RateTable {
  readonly lowest_degC: number;
  readonly perKelvin: number;
  readonly intervals: number;
  /** Four coefficients of each of the three rates, an interval after the other. */
  readonly cubic: Float64Array;
}

export const rateCount = 3;
const hottest_degC = 360;
const coldest_degC = -50;
/** Below it even scission, which no melt gate holds back, adds less than a hundred-thousandth of what a press adds. */
const inert_degC = 100;
const rates = [healingRate_1_s, fluidity_1_Pa_s, scissionRate_1_s] as const;
/** Melt widths below the melting peak at which gate and Arrhenius factor together leave less than a millionth. */
const shutWidths = 9;
const widest_K = 2;
/** Tables made last, by what they tabulate: a search over recipes asks for one and the same thousands of times. */
const tabulated: { readonly parameters: FusionParameters; readonly table: RateTable }[] = [];
const mostKept = 8;
const rateFields = [
  'meltCentre_degC',
  'meltWidth_K',
  'weldingTime_s',
  'weldingEnergy_J_mol',
  'viscosityAt190_Pa_s',
  'flowEnergy_J_mol',
  'fluidity',
  'scissionAt210_1_s',
  'scissionEnergy_J_mol',
  'moisture_share',
] as const satisfies readonly (keyof FusionParameters)[];

/**
 * Tabulates the three rates of fusion, cubic between nodes; below the table they are 0.
 *
 * @param parameters - fusion of the belt's cover [units in their names]
 * @returns table up to 360 degC
 * @source cubic Hermite with slopes by central differences
 * @verified CYCLE-06 tabulated rates
 */
export function rateTable(parameters: FusionParameters): RateTable {
  const known = tabulated.find((one) => rateFields.every((name) => one.parameters[name] === parameters[name]));
  if (known !== undefined) return known.table;
  const table = tabulate(parameters);
  if (tabulated.length >= mostKept) tabulated.shift();
  tabulated.push({ parameters, table });
  return table;
}

function tabulate(parameters: FusionParameters): RateTable {
  const { meltCentre_degC, meltWidth_K } = parameters;
  const lowest_degC = Math.max(coldest_degC, Math.min(inert_degC, meltCentre_degC - shutWidths * meltWidth_K));
  const intervals = Math.ceil((hottest_degC - lowest_degC) / Math.min(widest_K, meltWidth_K / 3.5));
  const spacing_K = (hottest_degC - lowest_degC) / intervals;
  const cubic = new Float64Array(4 * rateCount * intervals);
  rates.forEach((rate, which) => {
    let before = rate(lowest_degC - spacing_K, parameters);
    let low = rate(lowest_degC, parameters);
    let high = rate(lowest_degC + spacing_K, parameters);
    for (let i = 0; i < intervals; i += 1) {
      const after = rate(lowest_degC + (i + 2) * spacing_K, parameters);
      const lowSlope = 0.5 * (high - before);
      const highSlope = 0.5 * (after - low);
      const j = 4 * (rateCount * i + which);
      cubic[j] = low;
      cubic[j + 1] = lowSlope;
      cubic[j + 2] = 3 * (high - low) - 2 * lowSlope - highSlope;
      cubic[j + 3] = lowSlope + highSlope - 2 * (high - low);
      before = low;
      low = high;
      high = after;
    }
  });
  return { lowest_degC, perKelvin: 1 / spacing_K, intervals, cubic };
}

/**
 * Adds the three rates at a temperature, weighted, to their sums.
 *
 * @param table - rates over temperature
 * @param temperature_degC - temperature [degC]
 * @param weight_s - weight of the rates, a time [s]
 * @param into - sums: healing [1], flow [1/Pa], scission [1]
 * @param at - index of the healing sum [1]
 * @returns nothing
 * @source derived: cubic Hermite
 * @verified CYCLE-06 tabulated rates
 */
export function addRates(
  table: RateTable,
  temperature_degC: number,
  weight_s: number,
  into: Float64Array,
  at: number,
): void {
  const position = (temperature_degC - table.lowest_degC) * table.perKelvin;
  if (!(position > 0)) return;
  const interval = position < table.intervals ? position | 0 : table.intervals - 1;
  const s = Math.min(position - interval, 1);
  const { cubic: f } = table;
  const i = 4 * rateCount * interval;
  into[at] = (into[at] as number) + weight_s * cubicAt(f, i, s);
  into[at + 1] = (into[at + 1] as number) + weight_s * cubicAt(f, i + 4, s);
  into[at + 2] = (into[at + 2] as number) + weight_s * cubicAt(f, i + 8, s);
}

function cubicAt(f: Float64Array, i: number, s: number): number {
  return (f[i] as number) + s * ((f[i + 1] as number) + s * ((f[i + 2] as number) + s * (f[i + 3] as number)));
}

/**
 * One of the rates at a temperature.
 *
 * @param table - rates over temperature
 * @param temperature_degC - temperature [degC]
 * @param which - 0 healing, 1 flow, 2 scission [1]
 * @returns rate [1/s, for flow 1/(Pa*s)]
 * @source derived: cubic Hermite
 * @verified CYCLE-06 tabulated rates
 */
export function rateAt(table: RateTable, temperature_degC: number, which: number): number {
  const position = (temperature_degC - table.lowest_degC) * table.perKelvin;
  if (!(position > 0)) return 0;
  const interval = position < table.intervals ? Math.trunc(position) : table.intervals - 1;
  const share = Math.min(position - interval, 1);
  const { cubic } = table;
  const j = 4 * (rateCount * interval + which);
  return (
    (cubic[j] as number) +
    share * ((cubic[j + 1] as number) + share * ((cubic[j + 2] as number) + share * (cubic[j + 3] as number)))
  );
}
