import type { RunVerdict } from '@loopwright/records/run';
import { type DefectRow, defects } from './defects.ts';
import type { Finding, Grade, MeasureLimit } from './inspection-codes.ts';
import { gradeOf, type InspectionLimits } from './inspection-limits.ts';

/** Why a finding leads where it does. Words: `inspection.because.<code>`. */
export const becauseCodes = [
  'nothing-seen',
  'within-limit',
  'near-limit',
  'over-limit',
  'not-measured',
  'by-look',
  'opens',
  'not-bent',
  'place-unknown',
  'on-flank',
  'at-edge-or-tip',
  'too-many',
  'whole-width',
  'both-faces',
  'pressed-already',
  'has-run',
  'other-day',
  'not-by-pressing',
  'curve-shows',
] as const;
export type BecauseCode = (typeof becauseCodes)[number];

/** A finding as judged: how it stands to its limit, what that leads to, and why. */
export interface JudgedFinding {
  readonly finding: Finding;
  readonly grade: Grade;
  readonly act: RunVerdict;
  readonly because: BecauseCode;
  /** Its limit, where one decided. */
  readonly limit?: MeasureLimit;
}

/**
 * One finding by the catalogue and the limits. What nobody measured counts as beyond its limit until somebody does,
 * unless it is minor.
 *
 * @param finding - as seen
 * @param limits - for this belt
 */
export function judgeFinding(finding: Finding, limits: InspectionLimits): JudgedFinding {
  const row = defects[finding.defect];
  const seen = bySight(finding, row);
  if (seen !== undefined) return { finding, ...seen };
  if (row.measure === undefined) return { finding, grade: gradeOfAct(row.within), act: row.within, because: 'by-look' };
  const limit = limits[row.measure];
  if (finding.value === undefined) return { finding, limit, ...unmeasured(row) };
  const grade = gradeOf(finding.value, limit, finding.uncertainty);
  const { act, because } = measured(grade, row);
  return { finding, grade, act, because, limit };
}

type Judgement = Pick<JudgedFinding, 'grade' | 'act' | 'because'>;

function measured(grade: Grade, row: DefectRow): Pick<Judgement, 'act' | 'because'> {
  if (grade === 'refuse') return { act: row.over, because: 'over-limit' };
  if (grade === 'accept') return { act: row.within, because: 'within-limit' };
  return { act: row.severity === 'critical' ? row.over : row.within, because: 'near-limit' };
}

function unmeasured(row: DefectRow): Judgement {
  if (row.severity === 'minor') return { grade: 'accept', act: row.within, because: 'by-look' };
  return { grade: 'look-closer', act: row.over, because: 'not-measured' };
}

function gradeOfAct(act: RunVerdict): Grade {
  return act === 'run' ? 'accept' : 'refuse';
}

const cut = (because: BecauseCode, grade: Grade = 'refuse'): Judgement => ({ grade, act: 'cut-out', because });

/** More voids than this, of whatever size, are refused. */
const mostVoids = 3;
/** Less than this on a flank is no void [m]. */
const voidOnFlank_m = 0.001;

/** What decides before any number: that it opens, where it sits, how many there are. */
function bySight(finding: Finding, row: DefectRow): Judgement | undefined {
  const { defect, opens, place, count = 1, value } = finding;
  if (opens === true) return cut('opens');
  switch (defect) {
    case 'weave-visible':
      return opens === false
        ? { grade: 'look-closer', act: 'run', because: 'by-look' }
        : cut('not-bent', 'look-closer');
    case 'voids':
      if (place === 'edge-or-tip' || place === 'edge') return cut('at-edge-or-tip');
      if (count > mostVoids) return cut('too-many');
      if (place === 'flank' && (value ?? voidOnFlank_m) >= voidOnFlank_m) return cut('on-flank');
      return place === undefined && value !== undefined && value >= voidOnFlank_m
        ? cut('place-unknown', 'look-closer')
        : undefined;
    case 'contamination':
      if (place === 'flank') return cut('on-flank');
      return place === undefined ? cut('place-unknown', 'look-closer') : undefined;
    case 'template-print':
      return place === 'whole-width' && value === undefined
        ? { grade: 'look-closer', act: row.within, because: 'whole-width' }
        : undefined;
    default:
      return undefined;
  }
}
