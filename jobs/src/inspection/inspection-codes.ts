import type { RunFace } from '@loopwright/records/run';
import type { WatchCode } from '../curve-watch/watch-codes.ts';

/** The catalogue of what a fused finger splice can show, in its order. */
export const defectCodes = [
  'outline-one-face',
  'outline-both-faces',
  'open-tip',
  'voids',
  'scorch',
  'gloss-change',
  'edge-sliver',
  'edge-step',
  'kink',
  'length-error',
  'thickness-step',
  'flash',
  'cloth-wrinkle',
  'template-print',
  'weave-visible',
  'contamination',
  'delamination',
  'cold-end',
  'skewed-mesh',
  'over-fused',
] as const;
export type DefectCode = (typeof defectCodes)[number];

/** Critical: it never runs. Major: repaired, or a named person accepts it. Minor: it runs. */
export type Severity = 'critical' | 'major' | 'minor';

/** Where a finding sits; some limits depend on it. */
export const findingPlaces = ['flank', 'off-flank', 'edge-or-tip', 'edge', 'whole-width'] as const;
export type FindingPlace = (typeof findingPlaces)[number];

/** What lies behind a defect. */
export const defectCauses = [
  'platen-colder',
  'stack-uneven',
  'plate-forgotten',
  'core-cold',
  'dwell-short',
  'mains-sag',
  'not-pushed-home',
  'tip-cut-short',
  'mesh-slid',
  'belt-moist',
  'air-trapped',
  'decomposed',
  'too-hot',
  'sensor-loose',
  'held-too-long',
  'cloth-side',
  'face-hotter',
  'residue',
  'phase-thin-finger',
  'edge-bar-low',
  'ends-offset',
  'template-worn',
  'width-differs',
  'ends-not-in-line',
  'opened-hot',
  'cooled-unevenly',
  'finger-forgotten',
  'belt-shrank',
  'counted-root-to-root',
  'strips-wrong',
  'over-pressed',
  'sheet-doubled',
  'side-bars-missing',
  'cloth-creased',
  'grit',
  'cover-thin',
  'dirty-hands',
  'swarf',
  'below-melt',
  'edge-cool',
  'off-centre',
  'draught',
  'mesh-misaligned',
] as const;
export type DefectCause = (typeof defectCauses)[number];

/** What a separating question can be answered with. */
export const defectAnswers = [
  'yes',
  'no',
  'same-gap',
  'alternating',
  'whole-zone',
  'flanks-only',
  'with-brown',
  'thin-with-flash',
  'thick',
] as const;
export type DefectAnswer = (typeof defectAnswers)[number];

/** What is done with the splice now. */
export const nowCodes = [
  'run-on',
  'look-closer',
  'measure',
  'trim-flush',
  'trim-sliver',
  'sand-step',
  'wipe-off',
  'press-again',
  'press-centred',
  'press-dried',
  'change-cause',
  'cut-out',
  'take-up-holds',
  'second-person',
  'photo-kept',
] as const;
export type NowCode = (typeof nowCodes)[number];

/** What is done otherwise next time. */
export const nextCodes = [
  'side-hotter',
  'check-stack',
  'one-change-more-heat',
  'hold-longer',
  'check-supply',
  'push-home',
  'clamp-middle-first',
  'check-die',
  'dry-belt',
  'pressure-before-heat',
  'lower-set',
  'check-sensor',
  'shorten-hold',
  'same-cloth-side',
  'clean-template',
  'other-phase',
  'raise-edge-bar',
  'straight-edge',
  'replace-template',
  'measure-widths',
  'align-half-metre',
  'open-cold',
  'cool-evenly',
  'add-finger',
  'check-shrink',
  'count-tip-to-tip',
  'strips-belt-high',
  'less-pressure',
  'one-sheet',
  'set-side-bars',
  'pull-cloth-flat',
  'turn-template',
  'clean-gloves',
  'fresh-knife',
  'correct-platen',
  'centre-splice',
  'keep-draught-off',
  'same-curve-pins',
] as const;
export type NextCode = (typeof nextCodes)[number];

/** Numbers that decide. All but `outline` [share of the length] and `colour` [CIEDE2000] are lengths [m]. */
export const inspectionMeasures = [
  'bow',
  'edge-step',
  'thickness-step',
  'outline',
  'void',
  'colour',
  'mesh-shift',
  'tip-gap',
  'sliver-length',
  'speck',
  'print-depth',
  'length-off',
] as const;
export type InspectionMeasure = (typeof inspectionMeasures)[number];

/** Accept up to `accept`, refuse above `refuse`, look closer between; `uncertainty` widens what is looked at closer. */
export interface MeasureLimit {
  readonly accept: number;
  readonly refuse: number;
  /** Of a measurement by hand, where nobody says another. */
  readonly uncertainty: number;
}

/** What somebody saw. `value` is the defect's own number, SI. */
export interface Finding {
  readonly defect: DefectCode;
  readonly face?: RunFace;
  readonly value?: number;
  readonly uncertainty?: number;
  readonly place?: FindingPlace;
  /** How many of them. */
  readonly count?: number;
  /** To the question that separates the causes. */
  readonly answer?: DefectAnswer;
  /** A flank opens, or a yarn lies bare on the running side: seen on bending. */
  readonly opens?: boolean;
}

/** A number that was measured, whether or not something was seen. */
export interface InspectionReading {
  readonly measure: InspectionMeasure;
  readonly value: number;
  readonly uncertainty?: number;
}

export type Grade = 'accept' | 'look-closer' | 'refuse';

/** A cause with the sign that the press curve shows of it. */
export interface CauseRow {
  readonly cause: DefectCause;
  readonly next: readonly NextCode[];
  readonly curve?: readonly WatchCode[];
}
