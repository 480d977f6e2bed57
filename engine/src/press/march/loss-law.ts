/**
 * A loss over the plate's temperature as a row of cubics, one interval after the other: convection and radiation cost more
 * than a step of the stack.
 */
export interface LossLaw {
  readonly lowest_degC: number;
  readonly perKelvin: number;
  readonly intervals: number;
  /** Four coefficients an interval. */
  readonly cubic: Float64Array;
}

/**
 * Tabulates a loss over temperature, cubic between nodes; outside the table it goes on in a straight line.
 *
 * @param loss - loss per area [W/m2] at a temperature [degC]
 * @param range - lowest and highest temperature of the table [degC], and how far nodes lie apart [K]
 * @returns table
 * @source cubic Hermite with slopes by central differences
 * @verified LOSS-12 tabulated loss
 */
export function lossLaw(
  loss: (temperature_degC: number) => number,
  range: { readonly lowest_degC: number; readonly highest_degC: number; readonly apart_K: number },
): LossLaw {
  const { lowest_degC, highest_degC } = range;
  const intervals = Math.ceil((highest_degC - lowest_degC) / range.apart_K);
  const spacing_K = (highest_degC - lowest_degC) / intervals;
  const at = (i: number): number => loss(lowest_degC + i * spacing_K);
  const cubic = new Float64Array(4 * intervals);
  let [before, low, high] = [at(-1), at(0), at(1)];
  for (let i = 0; i < intervals; i += 1) {
    const after = at(i + 2);
    const lowSlope = 0.5 * (high - before);
    const highSlope = 0.5 * (after - low);
    cubic[4 * i] = low;
    cubic[4 * i + 1] = lowSlope;
    cubic[4 * i + 2] = 3 * (high - low) - 2 * lowSlope - highSlope;
    cubic[4 * i + 3] = lowSlope + highSlope - 2 * (high - low);
    before = low;
    low = high;
    high = after;
  }
  return { lowest_degC, perKelvin: 1 / spacing_K, intervals, cubic };
}

/**
 * Loss at a temperature.
 *
 * @param law - loss over temperature
 * @param temperature_degC - temperature of the plate [degC]
 * @returns loss per area [W/m2]
 * @source derived: cubic Hermite
 * @verified LOSS-12 tabulated loss
 */
export function lawLoss_W_m2({ lowest_degC, perKelvin, intervals, cubic }: LossLaw, temperature_degC: number): number {
  const position = (temperature_degC - lowest_degC) * perKelvin;
  const interval = Math.max(0, Math.min(intervals - 1, Math.floor(position)));
  const share = Math.max(0, Math.min(1, position - interval));
  const j = 4 * interval;
  const [c1, c2, c3] = [cubic[j + 1] as number, cubic[j + 2] as number, cubic[j + 3] as number];
  const inside = (cubic[j] as number) + share * (c1 + share * (c2 + share * c3));
  return inside + (position - interval - share) * (c1 + share * (2 * c2 + 3 * share * c3));
}

/**
 * Slope of a loss by temperature.
 *
 * @param law - loss over temperature
 * @param temperature_degC - temperature of the plate [degC]
 * @returns slope of the loss per area [W/(m2*K)]
 * @source derived: slope of the cubic Hermite
 * @verified LOSS-12 tabulated loss
 */
export function lawSlope_W_m2K(
  { lowest_degC, perKelvin, intervals, cubic }: LossLaw,
  temperature_degC: number,
): number {
  const position = (temperature_degC - lowest_degC) * perKelvin;
  const interval = Math.max(0, Math.min(intervals - 1, Math.floor(position)));
  const share = Math.max(0, Math.min(1, position - interval));
  const j = 4 * interval;
  const bend = 2 * (cubic[j + 2] as number) + 3 * share * (cubic[j + 3] as number);
  return perKelvin * ((cubic[j + 1] as number) + share * bend);
}
