import type { Layer, MeltRange } from './layer.ts';

/** A contact at the belt that passes more heat the more of the belt's face has melted and wets what it lies on. */
export interface ContactSwitch {
  /** The unknown above the contact. */
  readonly upper: number;
  /** True where the belt lies below the contact. */
  readonly beltBelow: boolean;
  readonly dry_W_m2K: number;
  readonly wetted_W_m2K: number;
  readonly melt: MeltRange;
}

/**
 * Contacts of a checked stack that switch; one that is the same dry and wetted is none.
 *
 * @param layers - layers from the top
 * @param dry_W_m2K - one per interface from the upper platen down, null = perfect [W/(m2*K)]
 * @param wetted_W_m2K - the same with the belt's face molten; null = does not switch [W/(m2*K)]
 * @param above - unknown above each interface [1]
 * @returns contacts that switch
 * @source derived: plain look-up
 */
export function contactSwitches(
  layers: readonly Layer[],
  dry_W_m2K: readonly (number | null)[],
  wetted_W_m2K: readonly (number | null)[],
  above: readonly number[],
): ContactSwitch[] {
  return wetted_W_m2K.flatMap((wetted, index): ContactSwitch[] => {
    const dry = dry_W_m2K[index];
    const beltBelow = layers[index]?.belt === true;
    const { melt } = layers[beltBelow ? index : index - 1] ?? {};
    if (wetted === null || dry === null || dry === undefined || wetted === dry || melt === undefined) return [];
    return [{ upper: above[index] as number, beltBelow, dry_W_m2K: dry, wetted_W_m2K: wetted, melt }];
  });
}
