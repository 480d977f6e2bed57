/** Where a stepper stands, and how somebody has pressed it. */
export interface Stepped {
  readonly value: number;
  /** Presses in a row in one direction; negative downwards. */
  readonly streak: number;
}

/** After so many presses the same way the step grows, so that nobody presses forty times. */
const growsAfter = 5;
const growth = 10;

/**
 * One press of a stepper: by its step, and by ten of them after five presses the same way; turning back makes it small.
 *
 * @param from - where it stands
 * @param direction - up or down
 * @param limits - its step and its ends, in one unit
 */
export function stepped(
  { value, streak }: Stepped,
  direction: 1 | -1,
  { step, least, most }: { readonly step: number; readonly least: number; readonly most: number },
): Stepped {
  const row = Math.sign(streak) === direction ? streak + direction : direction;
  const by = Math.abs(row) > growsAfter ? growth * step : step;
  const next = Number((Math.round((value + direction * by) / step) * step).toPrecision(12));
  return { value: Math.min(Math.max(next, least), most), streak: row };
}
