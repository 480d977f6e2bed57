import type { RunVerdict } from '@loopwright/records/run';
import type {
  CauseRow,
  DefectAnswer,
  DefectCause,
  DefectCode,
  InspectionMeasure,
  NowCode,
  Severity,
} from './inspection-codes.ts';

/** What may be done about a defect. */
export interface DefectRow {
  readonly number: number;
  readonly severity: Severity;
  /** In the order of likelihood. */
  readonly causes: readonly CauseRow[];
  /** Answers of the one question that separates them (`inspection.question.<defect>`), and what each points at. */
  readonly answers: Readonly<Partial<Record<DefectAnswer, readonly DefectCause[]>>>;
  /** Its own number, where one decides. */
  readonly measure?: InspectionMeasure;
  /** What it leads to within its limit, or at all where it has none; and beyond it. */
  readonly within: RunVerdict;
  readonly over: RunVerdict;
  /** What is done about it by hand, as long as it is not cut out. */
  readonly mend?: NowCode;
}

/** The catalogue: common practice, no source, except what the measures rest on. One row a defect. */
export const defects: Readonly<Record<DefectCode, DefectRow>> = {
  'outline-one-face': {
    number: 1,
    severity: 'major',
    causes: [
      { cause: 'platen-colder', next: ['side-hotter'], curve: ['side-slow', 'plateau-low'] },
      { cause: 'stack-uneven', next: ['check-stack'] },
      { cause: 'plate-forgotten', next: ['check-stack'], curve: ['fast-ramp'] },
    ],
    answers: { yes: ['platen-colder'], no: ['stack-uneven', 'plate-forgotten'] },
    measure: 'outline',
    within: 'run',
    over: 'press-again',
  },
  'outline-both-faces': {
    number: 2,
    severity: 'critical',
    causes: [
      { cause: 'core-cold', next: ['one-change-more-heat'] },
      { cause: 'dwell-short', next: ['hold-longer'], curve: ['hold-short'] },
      { cause: 'mains-sag', next: ['check-supply'], curve: ['plateau-low', 'slow-ramp', 'set-not-reached'] },
    ],
    answers: { yes: ['core-cold'], no: ['dwell-short', 'mains-sag'] },
    within: 'press-again',
    over: 'press-again',
  },
  'open-tip': {
    number: 3,
    severity: 'critical',
    causes: [
      { cause: 'not-pushed-home', next: ['push-home'] },
      { cause: 'tip-cut-short', next: ['check-die'] },
      { cause: 'mesh-slid', next: ['clamp-middle-first'] },
    ],
    answers: { 'same-gap': ['not-pushed-home', 'tip-cut-short'], alternating: ['mesh-slid'] },
    measure: 'tip-gap',
    within: 'press-again',
    over: 'cut-out',
  },
  voids: {
    number: 4,
    severity: 'major',
    causes: [
      { cause: 'belt-moist', next: ['dry-belt'] },
      { cause: 'air-trapped', next: ['pressure-before-heat'] },
      { cause: 'decomposed', next: ['lower-set'], curve: ['overshoot', 'above-cap', 'hold-long'] },
    ],
    answers: { 'whole-zone': ['belt-moist'], 'flanks-only': ['air-trapped'], 'with-brown': ['decomposed'] },
    measure: 'void',
    within: 'run',
    over: 'cut-out',
  },
  scorch: {
    number: 5,
    severity: 'critical',
    causes: [
      { cause: 'too-hot', next: ['lower-set'], curve: ['overshoot', 'above-cap'] },
      { cause: 'sensor-loose', next: ['check-sensor'], curve: ['reading-jumps', 'plateau-unsteady'] },
      { cause: 'held-too-long', next: ['shorten-hold'], curve: ['hold-long'] },
    ],
    answers: { yes: ['too-hot', 'held-too-long'], no: ['sensor-loose'] },
    within: 'cut-out',
    over: 'cut-out',
  },
  'gloss-change': {
    number: 6,
    severity: 'minor',
    causes: [
      { cause: 'cloth-side', next: ['same-cloth-side'] },
      { cause: 'face-hotter', next: ['side-hotter'] },
      { cause: 'residue', next: ['clean-template'] },
    ],
    answers: { yes: ['residue'], no: ['cloth-side', 'face-hotter'] },
    measure: 'colour',
    within: 'run',
    over: 'run',
    mend: 'wipe-off',
  },
  'edge-sliver': {
    number: 7,
    severity: 'major',
    causes: [
      { cause: 'phase-thin-finger', next: ['other-phase'] },
      { cause: 'edge-bar-low', next: ['raise-edge-bar'] },
    ],
    answers: { yes: ['phase-thin-finger'], no: ['edge-bar-low'] },
    measure: 'sliver-length',
    within: 'press-again',
    over: 'cut-out',
    mend: 'trim-sliver',
  },
  'edge-step': {
    number: 8,
    severity: 'major',
    causes: [
      { cause: 'ends-offset', next: ['straight-edge'] },
      { cause: 'template-worn', next: ['replace-template'] },
      { cause: 'width-differs', next: ['measure-widths'] },
    ],
    answers: { yes: ['ends-offset', 'template-worn'], no: ['width-differs'] },
    measure: 'edge-step',
    within: 'run',
    over: 'cut-out',
  },
  kink: {
    number: 9,
    severity: 'major',
    causes: [
      { cause: 'ends-not-in-line', next: ['align-half-metre'] },
      { cause: 'opened-hot', next: ['open-cold'], curve: ['opened-hot'] },
      { cause: 'cooled-unevenly', next: ['cool-evenly'], curve: ['cooling-slow'] },
    ],
    answers: { yes: ['opened-hot'], no: ['ends-not-in-line', 'cooled-unevenly'] },
    measure: 'bow',
    within: 'run',
    over: 'cut-out',
  },
  'length-error': {
    number: 10,
    severity: 'major',
    causes: [
      { cause: 'finger-forgotten', next: ['add-finger'] },
      { cause: 'belt-shrank', next: ['check-shrink'] },
      { cause: 'counted-root-to-root', next: ['count-tip-to-tip'] },
    ],
    answers: { yes: ['finger-forgotten', 'counted-root-to-root'], no: ['belt-shrank'] },
    measure: 'length-off',
    within: 'run',
    over: 'cut-out',
    mend: 'take-up-holds',
  },
  'thickness-step': {
    number: 11,
    severity: 'major',
    causes: [
      { cause: 'strips-wrong', next: ['strips-belt-high'] },
      { cause: 'over-pressed', next: ['less-pressure'] },
      { cause: 'sheet-doubled', next: ['one-sheet'] },
    ],
    answers: { 'thin-with-flash': ['over-pressed'], thick: ['strips-wrong', 'sheet-doubled'] },
    measure: 'thickness-step',
    within: 'run',
    over: 'cut-out',
    mend: 'sand-step',
  },
  flash: {
    number: 12,
    severity: 'minor',
    causes: [
      { cause: 'too-hot', next: ['lower-set'], curve: ['overshoot', 'above-cap'] },
      { cause: 'held-too-long', next: ['shorten-hold'], curve: ['hold-long'] },
      { cause: 'over-pressed', next: ['less-pressure'] },
      { cause: 'side-bars-missing', next: ['set-side-bars'] },
    ],
    answers: { yes: ['too-hot', 'held-too-long', 'over-pressed'], no: ['side-bars-missing'] },
    within: 'run',
    over: 'run',
    mend: 'trim-flush',
  },
  'cloth-wrinkle': {
    number: 13,
    severity: 'minor',
    causes: [{ cause: 'cloth-creased', next: ['pull-cloth-flat'] }],
    // A line that follows the zig-zag is no wrinkle: it is an outline, and judged as one.
    answers: { yes: [], no: ['cloth-creased'] },
    measure: 'print-depth',
    within: 'run',
    over: 'cut-out',
  },
  'template-print': {
    number: 14,
    severity: 'minor',
    causes: [
      { cause: 'template-worn', next: ['turn-template', 'replace-template'] },
      { cause: 'grit', next: ['clean-template'] },
      { cause: 'too-hot', next: ['lower-set'], curve: ['overshoot', 'above-cap'] },
    ],
    answers: { yes: ['template-worn', 'grit'], no: ['too-hot'] },
    measure: 'print-depth',
    within: 'run',
    over: 'cut-out',
  },
  'weave-visible': {
    number: 15,
    severity: 'major',
    causes: [
      { cause: 'over-pressed', next: ['less-pressure'] },
      { cause: 'too-hot', next: ['lower-set'], curve: ['overshoot', 'above-cap', 'hold-long'] },
      { cause: 'cover-thin', next: ['less-pressure'] },
    ],
    answers: { yes: ['over-pressed', 'too-hot'], no: ['cover-thin'] },
    within: 'run',
    over: 'cut-out',
  },
  contamination: {
    number: 16,
    severity: 'major',
    causes: [
      { cause: 'dirty-hands', next: ['clean-gloves'] },
      { cause: 'residue', next: ['clean-template'] },
      { cause: 'swarf', next: ['fresh-knife'] },
    ],
    answers: { yes: ['swarf', 'dirty-hands'], no: ['residue'] },
    measure: 'speck',
    within: 'run',
    over: 'cut-out',
  },
  delamination: {
    number: 17,
    severity: 'critical',
    causes: [
      { cause: 'below-melt', next: ['side-hotter'], curve: ['plateau-low', 'side-slow'] },
      { cause: 'belt-moist', next: ['dry-belt'] },
      { cause: 'opened-hot', next: ['open-cold'], curve: ['opened-hot'] },
    ],
    answers: { yes: ['below-melt'], no: ['belt-moist', 'opened-hot'] },
    within: 'cut-out',
    over: 'cut-out',
  },
  'cold-end': {
    number: 18,
    severity: 'critical',
    causes: [
      { cause: 'edge-cool', next: ['correct-platen'] },
      { cause: 'off-centre', next: ['centre-splice'] },
      { cause: 'draught', next: ['keep-draught-off'] },
    ],
    answers: { yes: ['edge-cool', 'draught'], no: ['off-centre'] },
    within: 'press-again',
    over: 'press-again',
    mend: 'press-centred',
  },
  'skewed-mesh': {
    number: 19,
    severity: 'critical',
    causes: [{ cause: 'mesh-misaligned', next: ['same-curve-pins'] }],
    answers: { yes: ['mesh-misaligned'], no: ['mesh-misaligned'] },
    measure: 'mesh-shift',
    within: 'run',
    over: 'cut-out',
  },
  'over-fused': {
    number: 20,
    severity: 'critical',
    causes: [
      { cause: 'held-too-long', next: ['shorten-hold'], curve: ['hold-long'] },
      { cause: 'too-hot', next: ['lower-set'], curve: ['overshoot', 'above-cap'] },
    ],
    answers: { yes: ['too-hot'], no: ['held-too-long'] },
    within: 'cut-out',
    over: 'cut-out',
  },
};
