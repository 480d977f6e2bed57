import { Refusal } from '../../refusal.ts';

/** What is touched. */
export type Surface = 'metal' | 'plastic' | 'stone';

/** Burn threshold of bare surfaces for one time of contact; the low end of what is known. */
export interface BurnThreshold {
  readonly contact_s: number;
  readonly metal_degC: number;
  readonly plastic_degC: number;
  readonly stone_degC: number;
}

/**
 * Burn thresholds after ISO 13732-1:2006, from memory: check them against your copy of the standard. They are
 * thresholds, no limits; where a range is known its low end stands here.
 */
export const burnThresholds: readonly BurnThreshold[] = [
  { contact_s: 1, metal_degC: 65, plastic_degC: 85, stone_degC: 80 },
  { contact_s: 10, metal_degC: 55, plastic_degC: 71, stone_degC: 66 },
  { contact_s: 60, metal_degC: 51, plastic_degC: 60, stone_degC: 56 },
  { contact_s: 600, metal_degC: 48, plastic_degC: 48, stone_degC: 48 },
  { contact_s: 28_800, metal_degC: 43, plastic_degC: 43, stone_degC: 43 },
];

/**
 * Burn threshold for a time of contact, the one of the next longer contact known.
 *
 * @param surface - what is touched
 * @param contact_s - how long [s], above 0, at most 8 h
 * @param thresholds - rows by rising time of contact [s], [degC]
 * @returns temperature below which no burn is expected [degC]
 * @throws out-of-range
 * @validity bare surfaces, healthy adult skin; from memory, check your copy of the standard
 * @source ISO 13732-1:2006 (from memory)
 * @verified TOUCH-02 metal for 10 s
 */
export function burnThreshold_degC(
  surface: Surface,
  contact_s: number,
  thresholds: readonly BurnThreshold[] = burnThresholds,
): number {
  const longest = thresholds.at(-1)?.contact_s ?? 0;
  const row = contact_s > 0 ? thresholds.find((one) => one.contact_s >= contact_s) : undefined;
  if (!row) throw new Refusal('out-of-range', 'contact_s', { value: contact_s, min: 0, max: longest, unit: 's' });
  return { metal: row.metal_degC, plastic: row.plastic_degC, stone: row.stone_degC }[surface];
}
