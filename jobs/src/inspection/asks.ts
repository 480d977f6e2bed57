import { defects } from './defects.ts';
import {
  type DefectAnswer,
  type DefectCode,
  defectAnswers,
  type FindingPlace,
  type InspectionMeasure,
} from './inspection-codes.ts';
import type { JudgedFinding } from './judge-finding.ts';

/** What somebody is asked about a finding, each with a few tiles or a stepper for an answer. */
export type InspectionAsk =
  /** The question that separates the causes: `inspection.question.<defect>`. */
  | { readonly code: 'cause'; readonly defect: DefectCode; readonly answers: readonly DefectAnswer[] }
  | { readonly code: 'measure'; readonly defect: DefectCode; readonly measure: InspectionMeasure }
  | { readonly code: 'place'; readonly defect: DefectCode; readonly places: readonly FindingPlace[] }
  /** Whether it opens, or a yarn lies bare, when the splice is bent by hand. */
  | { readonly code: 'opens'; readonly defect: DefectCode };

/** Defects that are told apart by bending. */
const bent: ReadonlySet<DefectCode> = new Set(['outline-one-face', 'outline-both-faces', 'weave-visible', 'cold-end']);

const places: Readonly<Partial<Record<DefectCode, readonly FindingPlace[]>>> = {
  voids: ['flank', 'off-flank', 'edge-or-tip'],
  contamination: ['flank', 'off-flank'],
};

/**
 * What is asked about a finding: first what decides the verdict, then what separates the causes.
 *
 * @param judged - finding with its limit
 */
export function asksOf({ finding, grade }: JudgedFinding): readonly InspectionAsk[] {
  const { defect, value, place, opens, answer } = finding;
  const { measure, answers } = defects[defect];
  const where = places[defect];
  const choices = defectAnswers.filter((each) => answers[each] !== undefined);
  return [
    ...(opens === undefined && bent.has(defect) ? [{ code: 'opens' as const, defect }] : []),
    ...(where !== undefined && place === undefined ? [{ code: 'place' as const, defect, places: where }] : []),
    ...(measure !== undefined && (value === undefined || grade === 'look-closer')
      ? [{ code: 'measure' as const, defect, measure }]
      : []),
    ...(answer === undefined && choices.length > 1 ? [{ code: 'cause' as const, defect, answers: choices }] : []),
  ];
}
