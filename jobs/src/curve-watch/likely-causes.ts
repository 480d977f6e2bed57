import type { Feature, Features } from './curve-features.ts';
import { type CurveWarning, type WatchCause, type WatchCode, type WatchSide, watchSides } from './watch-codes.ts';

/** What a cause does to a cycle: speed of ramp and cooling as shares, the plateau by so many kelvin. 1 and 0: nothing. */
interface Signature {
  readonly ramp: number;
  readonly cooling: number;
  readonly plateau_K: number;
  /** True where one platen alone shows it. */
  readonly oneSide?: true;
}

const nothing: Signature = { ramp: 1, cooling: 1, plateau_K: 0 };
/** Usual values that the signatures are shares of: slope 60-150 degC [K/s] and cooling time [s]. */
const usual = { slope_K_s: 0.415, cooling_s: 576 } as const;

/**
 * Signatures of causes, from simulated cycles at 175 degC and 150 s: slopes and cooling times as computed for each.
 * Those that leave slope, cooling and plateau alone are told from what somebody said.
 */
const signatures: Readonly<Partial<Record<WatchCause, Signature>>> = {
  'mains-low': { ...nothing, ramp: 0.8 },
  'long-lead': { ...nothing, ramp: 0.84 },
  'half-heater': { ...nothing, ramp: 0.6, oneSide: true },
  'fan-blocked': { ...nothing, cooling: usual.cooling_s / 1333 },
  'fan-half': { ...nothing, cooling: usual.cooling_s / 848 },
  'sensor-loose': { ...nothing, plateau_K: 0.6, oneSide: true },
  'plate-forgotten': {
    ramp: 1 + (20 * 0.0042) / usual.slope_K_s,
    cooling: 1 + (9 * 0.0049) / 0.231,
    plateau_K: 0,
  },
  'template-thick': { ...nothing, ramp: 1 - (4.3 * 0.0042) / usual.slope_K_s },
  'sensor-low': { ...nothing, cooling: 1 + (5.3 * 0.0049) / 0.231, oneSide: true },
  'air-warm': { ...nothing, cooling: 0.83 },
};

/** What may lie behind each warning, before anything else is known in this order. */
const candidates: Readonly<Record<WatchCode, readonly WatchCause[]>> = {
  'slow-ramp': ['mains-low', 'long-lead', 'template-thick', 'half-heater'],
  'fast-ramp': ['plate-forgotten', 'sensor-loose'],
  'side-slow': ['half-heater', 'sensor-loose', 'sensor-low'],
  'set-not-reached': ['half-heater', 'mains-low', 'long-lead', 'heat-not-on'],
  'plateau-low': ['set-entered', 'mains-low', 'sensor-loose'],
  overshoot: ['set-entered', 'sensor-loose'],
  'above-cap': ['set-entered', 'sensor-loose'],
  'plateau-unsteady': ['sensor-loose'],
  'hold-short': ['dwell-entered', 'hand-slow'],
  'hold-long': ['dwell-entered', 'hand-slow'],
  'cooling-slow': ['fan-half', 'fan-blocked', 'air-warm'],
  'opened-hot': ['fan-blocked', 'hand-slow'],
  'reading-jumps': ['sensor-loose'],
  'reading-impossible': ['sensor-loose'],
  gap: [],
};

/** Ruled out by what was measured before. */
const ruledOut: Readonly<Record<'mains' | 'air', readonly WatchCause[]>> = { mains: ['mains-low'], air: ['air-warm'] };

/**
 * The likeliest two causes of a warning: half the sum of ((feature - signature)/sd)^2, the least first; in the order of
 * the table where the features do not tell.
 *
 * @param warning - that the curve gave
 * @param features - of the cycle
 * @param known - what was measured before it
 */
export function likelyCauses(
  { code, side }: Pick<CurveWarning, 'code' | 'side'>,
  features: Features | undefined,
  known: { readonly mains?: boolean; readonly air?: boolean } = {},
): readonly WatchCause[] {
  const out = (['mains', 'air'] as const).flatMap((what) => (known[what] ? ruledOut[what] : []));
  const left = candidates[code].filter((cause) => !out.includes(cause));
  const ranked =
    features === undefined ? left : left.toSorted((a, b) => misfit(a, features, side) - misfit(b, features, side));
  return ranked.slice(0, 2);
}

/** Without a signature a cause can be ranked by nothing; it keeps its place behind those that fit within a sigma. */
const unknown = 0.5;

function misfit(cause: WatchCause, features: Features, side: WatchSide | undefined): number {
  const signature = signatures[cause];
  if (signature === undefined) return unknown;
  const of = (each: WatchSide): Signature =>
    signature.oneSide && side !== undefined && each !== side ? nothing : signature;
  return watchSides.reduce(
    (sum, each) =>
      sum +
      squared(features.ramp[each], of(each).ramp) +
      squared(features.cooling[each], of(each).cooling) +
      squared(features.plateau[each], of(each).plateau_K),
    0,
  );
}

function squared(feature: Feature | undefined, expected: number): number {
  return feature === undefined ? 0 : 0.5 * ((feature.value - expected) / feature.sd) ** 2;
}
