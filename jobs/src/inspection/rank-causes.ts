import type { CurveWarning } from '../curve-watch/watch-codes.ts';
import { defects } from './defects.ts';
import type { CauseRow, DefectCause, Finding, NextCode } from './inspection-codes.ts';

/**
 * The causes of a finding, the likeliest first: what the answer to the separating question points at, then what the press
 * curve shows, then the order of the catalogue.
 *
 * @param finding - as seen
 * @param curve - warnings of the cycle
 */
export function causesOf(finding: Finding, curve: readonly CurveWarning[] = []): readonly DefectCause[] {
  const { causes, answers } = defects[finding.defect];
  const pointed = finding.answer === undefined ? undefined : answers[finding.answer];
  const weight = (row: CauseRow): number =>
    (pointed === undefined || pointed.includes(row.cause) ? 0 : 2) + (isShown(row, curve) ? 0 : 1);
  return causes.toSorted((a, b) => weight(a) - weight(b)).map(({ cause }) => cause);
}

/** The upper platen lies on the roller side or the pulley side by how the belt was laid: a side alone proves no face. */
function isShown({ curve: signs = [] }: CauseRow, curve: readonly CurveWarning[]): boolean {
  return curve.some(({ code }) => signs.includes(code));
}

/**
 * What is done otherwise next time, by the likeliest cause; by all that the answer leaves where it leaves several.
 *
 * @param finding - as seen
 * @param curve - warnings of the cycle
 */
export function nextTimeOf(finding: Finding, curve: readonly CurveWarning[] = []): readonly NextCode[] {
  const { causes, answers } = defects[finding.defect];
  const [first] = causesOf(finding, curve);
  const pointed = finding.answer === undefined ? undefined : answers[finding.answer];
  const meant = pointed === undefined || pointed.length === 0 ? [first] : pointed;
  return [...new Set(causes.filter(({ cause }) => meant.includes(cause)).flatMap(({ next }) => next))];
}
