import { inRange } from '../in-range.ts';

/** One row of a tolerance table: up to this length, a fixed deviation or a share of the length. */
export interface ToleranceRow {
  readonly upTo_m: number;
  readonly plusMinus_m?: number;
  readonly share?: number;
}

export interface ToleranceTable {
  readonly id: 'smooth-cut-belt' | 'flat-power-belt';
  readonly length: readonly ToleranceRow[];
  readonly width: readonly ToleranceRow[];
  /** Further share of the length that moist or dry air may add, for polyamide. */
  readonly humidityShare?: number;
  readonly source: string;
}

const mm = (upTo: number, plusMinus: number): ToleranceRow => ({ upTo_m: upTo / 1000, plusMinus_m: plusMinus / 1000 });

/** Published trade tables; the belt maker's own tolerance always comes first. */
export const toleranceTables: readonly ToleranceTable[] = [
  {
    id: 'smooth-cut-belt',
    length: [mm(1000, 5), mm(3000, 10), mm(7000, 20), { upTo_m: Number.MAX_VALUE, share: 0.003 }],
    width: [mm(200, 1), mm(600, 2), mm(1000, 4)],
    source: 'published trade table for smooth cut belts (from memory; ISO 15147:2012 itself not at hand)',
  },
  {
    id: 'flat-power-belt',
    length: [
      mm(300, 1.6),
      mm(1222, 3.2),
      mm(2540, 5),
      mm(6100, 8),
      mm(15_250, 13),
      mm(30_500, 19),
      mm(61_000, 38),
      { upTo_m: Number.MAX_VALUE, share: 0.0007 },
    ],
    width: [mm(50, 0.4), mm(300, 0.8)],
    humidityShare: 0.005,
    source: 'published trade table for flat power transmission belts (from memory)',
  },
];

/**
 * Tolerance of a cut length after a published trade table, as a share of the length.
 *
 * @param id - which table
 * @param length_m - nominal length [m], > 0
 * @returns half-width of the tolerance over the length [1]
 * @throws not-finite, out-of-range
 * @validity a default until the belt maker's own figure is entered
 * @source published trade tables (from memory)
 * @verified T3 length tolerance, smooth, 7000 mm, T3 length tolerance, power, 300 mm
 */
export function lengthToleranceShare(id: ToleranceTable['id'], length_m: number): number {
  inRange(length_m, 'length_m', { min: 0, max: 20_000, unit: 'm', above: true });
  const row = tableRow(id, 'length', length_m);
  return row?.share ?? (row?.plusMinus_m ?? 0) / length_m;
}

/**
 * Tolerance of a cut width after a published trade table.
 *
 * @param id - which table
 * @param width_m - nominal width [m], > 0, up to the table's last row
 * @returns half-width of the tolerance [m]
 * @throws not-finite, out-of-range
 * @validity a default until the belt maker's own figure is entered
 * @source published trade tables (from memory)
 * @verified T3 width tolerance, smooth-cut-belt, 200 mm
 */
export function widthTolerance_m(id: ToleranceTable['id'], width_m: number): number {
  const widest = toleranceTables.find((table) => table.id === id)?.width.at(-1)?.upTo_m ?? 0;
  inRange(width_m, 'width_m', { min: 0, max: widest, unit: 'm', above: true });
  return tableRow(id, 'width', width_m)?.plusMinus_m ?? 0;
}

function tableRow(id: ToleranceTable['id'], kind: 'length' | 'width', value_m: number): ToleranceRow | undefined {
  return toleranceTables.find((table) => table.id === id)?.[kind].find((row) => value_m <= row.upTo_m);
}
