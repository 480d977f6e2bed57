import type { Grade, InspectionMeasure, MeasureLimit } from './inspection-codes.ts';

/** What the limits depend on besides themselves. */
export interface InspectedBelt {
  readonly width_m?: number;
  readonly thickness_m?: number;
}

export type InspectionLimits = Readonly<Record<InspectionMeasure, MeasureLimit>>;

const limit = (accept: number, refuse: number, uncertainty: number): MeasureLimit => ({ accept, refuse, uncertainty });

/**
 * Defaults, each to be edited; the belt maker's data sheet wins. Reasons: `splice-effects.ts`; voids, specks and prints
 * are common practice, no source. Uncertainties are half a step of what is measured with.
 */
const defaults: InspectionLimits = {
  bow: limit(0.002, 0.003, 0.00025),
  'edge-step': limit(0.0005, 0.001, 0.00005),
  'thickness-step': limit(0.0001, 0.0002, 0.00002),
  outline: limit(0.1, 0.25, 0.025),
  void: limit(0.001, 0.002, 0.0002),
  colour: limit(3, 5, 0),
  'mesh-shift': limit(0.0003, 0.0003, 0.00005),
  'tip-gap': limit(0.0005, 0.0005, 0.00005),
  'sliver-length': limit(0.01, 0.01, 0.0005),
  speck: limit(0.0005, 0.0005, 0),
  'print-depth': limit(0.0001, 0.0002, 0.00002),
  // Until somebody says what the take-up holds, any length off is looked at closer.
  'length-off': limit(0, 1, 0.0005),
};

/** Share of the width that a lateral step may have, of the thickness that a step and a void may have. */
const ofBelt = { edgeStep: 0.02, thicknessStep: 0.1, void: 0.5 } as const;

/**
 * The limits for a belt: a narrow or thin one allows less.
 *
 * @param belt - width and thickness where they are known
 * @param own - limits that somebody set for this plant
 */
export function inspectionLimits(
  { width_m, thickness_m }: InspectedBelt = {},
  own: Partial<InspectionLimits> = {},
): InspectionLimits {
  const all = { ...defaults, ...own };
  return {
    ...all,
    'edge-step': capped(all['edge-step'], width_m, ofBelt.edgeStep),
    'thickness-step': capped(all['thickness-step'], thickness_m, ofBelt.thicknessStep),
    void: capped(all.void, thickness_m, ofBelt.void),
  };
}

function capped({ accept, refuse, uncertainty }: MeasureLimit, of_m: number | undefined, share: number): MeasureLimit {
  const most = of_m === undefined ? refuse : Math.min(refuse, of_m * share);
  return { accept: Math.min(accept, most), refuse: most, uncertainty };
}

/** Rounding of a tape must not turn a value on its limit into one beyond it. */
const rounding = 1e-9;

/**
 * A measured value against its limits: accepted below accept - U, refused above refuse + U, else somebody looks closer.
 *
 * @param value - measured
 * @param limit - of that measure
 * @param uncertainty - of the measurement; default: that of the limit
 */
export function gradeOf(value: number, limit: MeasureLimit, uncertainty = limit.uncertainty): Grade {
  if (value > (limit.refuse + uncertainty) * (1 + rounding)) return 'refuse';
  return value <= (limit.accept - uncertainty) * (1 + rounding) ? 'accept' : 'look-closer';
}
