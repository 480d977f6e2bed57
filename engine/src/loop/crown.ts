import { inRange } from '../in-range.ts';

/** Crown of flat pulleys: up to this diameter, this height. */
export interface CrownRow {
  readonly upTo_m: number;
  readonly height_m: number;
}

/** ISO 22:1991 (from memory); agrees with Budynas & Nisbett, Shigley, Table 17-5, to 0.05 mm. */
export const crownTable: readonly CrownRow[] = [
  { upTo_m: 0.112, height_m: 0.0003 },
  { upTo_m: 0.14, height_m: 0.0004 },
  { upTo_m: 0.18, height_m: 0.0005 },
  { upTo_m: 0.224, height_m: 0.0006 },
  { upTo_m: 0.28, height_m: 0.0008 },
  { upTo_m: 0.355, height_m: 0.001 },
];

/**
 * Height of the crown of an end or drive pulley. Never on snubs or pressure rollers.
 *
 * @param diameter_m - pulley diameter [m], 0.04 to 0.355
 * @returns height in the middle over the edges [m]
 * @throws not-finite, out-of-range
 * @validity end and drive pulleys; stiff aramid belts not above 0.3 mm (from memory)
 * @source ISO 22:1991 (from memory)
 * @verified T3 crown by diameter, 40 mm
 */
export function crownHeight_m(diameter_m: number): number {
  inRange(diameter_m, 'diameter_m', { min: 0.04, max: 0.355, unit: 'm' });
  return crownTable.find((row) => diameter_m <= row.upTo_m)?.height_m ?? 0;
}
