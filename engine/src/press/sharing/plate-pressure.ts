import { plateTravelRow, squeezePressureRow } from './sharing-formulas.ts';

/** What a stiff plate presses on, both edge strips taken together. */
export interface Squeezed {
  readonly width_m: number;
  readonly height_m: number;
  readonly modulus_MPa: number;
}

export interface PlatePressures {
  readonly travel_m: number;
  readonly belt_Pa: number;
  readonly strips_Pa: number;
}

/**
 * Pressures under a stiff plate that lies on belt and edge strips of different height and stiffness.
 * sum of b*E*max(0, d - g)/h = p*w_bag; g = how much lower one is than the higher.
 *
 * @param force_N_m - gauge pressure times bag width, per length of the plate [N/m], >= 0
 * @param belt - width, height [m], modulus [MPa]
 * @param strips - both together: width, height [m], modulus [MPa]; width 0 for none
 * @returns travel of the plate [m], pressure on belt and strips [Pa]
 * @validity plate does not bend; modulus taken linear, so a softened belt wants its own
 * @source derived: balance of forces
 * @verified SHARE-01 belt and strips of equal height
 */
export function platePressures(force_N_m: number, belt: Squeezed, strips: Squeezed): PlatePressures {
  const higher = strips.width_m > 0 ? Math.max(belt.height_m, strips.height_m) : belt.height_m;
  const [g, gs] = [higher - belt.height_m, Math.max(0, higher - strips.height_m)];
  const alone = {
    p: force_N_m,
    wb: 1,
    E: belt.modulus_MPa,
    g,
    h: belt.height_m,
    Es: strips.modulus_MPa,
    gs,
    hs: strips.height_m,
  };
  const withBoth = plateTravelRow.compute({ ...alone, b: belt.width_m, ws: strips.width_m });
  // Whichever is lower only carries once the plate has come down to it.
  const onBelt = plateTravelRow.compute({ ...alone, b: belt.width_m, ws: 0 });
  const onStrips = plateTravelRow.compute({ ...alone, b: 0, ws: strips.width_m });
  const travel_m = withBoth < g ? onStrips : withBoth < gs ? onBelt : withBoth;
  const at = (one: Squeezed, gap_m: number) =>
    squeezePressureRow.compute({ E: one.modulus_MPa, d: travel_m, g: gap_m, h: one.height_m });
  return { travel_m, belt_Pa: at(belt, g), strips_Pa: strips.width_m > 0 ? at(strips, gs) : 0 };
}
