import type { CurveLine, CycleCurve } from '@loopwright/jobs';

/** Columns in SI, as the fields of a plant's tables are named; decimals that say no more than the computation knows. */
const columns: readonly (readonly [heading: string, of: (curve: CycleCurve) => CurveLine, decimals: number])[] = [
  ['time_s', ({ times_s }) => times_s, 1],
  ['topPlaten_degC', ({ topPlaten }) => topPlaten, 2],
  ['bottomPlaten_degC', ({ bottomPlaten }) => bottomPlaten, 2],
  ['topSensor_degC', ({ topSensor }) => topSensor, 2],
  ['bottomSensor_degC', ({ bottomSensor }) => bottomSensor, 2],
  ['beltTop_degC', ({ beltTop }) => beltTop, 2],
  ['beltMiddle_degC', ({ beltMiddle }) => beltMiddle, 2],
  ['beltBottom_degC', ({ beltBottom }) => beltBottom, 2],
  ['bond_ratio', ({ bond }) => bond, 4],
  ['fill_m', ({ fill_m }) => fill_m, 6],
  ['damage_ratio', ({ damage }) => damage, 5],
];

/**
 * A cycle's curve as CSV for a spreadsheet or a script: SI, decimal points, one row a time.
 *
 * @param curve - the cycle over time
 */
export function curveCsv(curve: CycleCurve): string {
  const lines = columns.map(([, of, decimals]) => of(curve).map((value) => value.toFixed(decimals)));
  const rows = curve.times_s.map((_, i) => lines.map((line) => line[i] ?? '').join(','));
  return `${[columns.map(([heading]) => heading).join(','), ...rows].join('\n')}\n`;
}
