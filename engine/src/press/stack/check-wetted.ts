import { inRange } from '../../in-range.ts';
import { Refusal } from '../../refusal.ts';
import type { Layer } from './layer.ts';

/** As for any contact: better than any joint. */
const best_W_m2K = 1e6;

/**
 * Lets contacts through that pass more heat once the belt's face has melted.
 *
 * @param layers - checked layers from the top
 * @param dry_W_m2K - checked contacts, one per interface from the upper platen down [W/(m2*K)]
 * @param wetted_W_m2K - the same with the belt's face molten; null = does not switch [W/(m2*K)]
 * @returns nothing
 * @throws contact-count, wetted-not-at-belt, wetted-without-melting, not-finite, out-of-range
 * @source derived: plain comparison
 */
export function checkWetted(
  layers: readonly Layer[],
  dry_W_m2K: readonly (number | null)[],
  wetted_W_m2K: readonly (number | null)[],
): void {
  if (wetted_W_m2K.length !== dry_W_m2K.length) {
    throw new Refusal('contact-count', 'contactsWetted_W_m2K', {
      value: wetted_W_m2K.length,
      expected: dry_W_m2K.length,
    });
  }
  wetted_W_m2K.forEach((value, index) => {
    if (value === null) return;
    const path = `contactsWetted_W_m2K[${index}]`;
    const dry = dry_W_m2K[index] ?? null;
    const beside = [layers[index - 1], layers[index]].filter((layer) => layer?.belt === true);
    const [belt] = beside;
    if (belt === undefined || beside.length > 1 || dry === null) throw new Refusal('wetted-not-at-belt', path, {});
    if (belt.melt === undefined) throw new Refusal('wetted-without-melting', path, { name: belt.name });
    inRange(value, path, { min: dry, max: best_W_m2K, unit: 'W/(m2*K)' });
  });
}
