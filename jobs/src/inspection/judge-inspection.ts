import type { RunFace, RunVerdict } from '@loopwright/records/run';
import type { CurveWarning, WatchCode } from '../curve-watch/watch-codes.ts';
import { asksOf, type InspectionAsk } from './asks.ts';
import { defects } from './defects.ts';
import { foundBy } from './found-by.ts';
import type {
  DefectCause,
  DefectCode,
  Finding,
  InspectionMeasure,
  InspectionReading,
  NextCode,
  NowCode,
} from './inspection-codes.ts';
import { type InspectedBelt, type InspectionLimits, inspectionLimits } from './inspection-limits.ts';
import { type BecauseCode, type JudgedFinding, judgeFinding } from './judge-finding.ts';
import { causesOf, nextTimeOf } from './rank-causes.ts';
import { edgeStressShare, kinkEffect, tipGap_m } from './splice-effects.ts';

/** What the effects of a defect are computed with, as far as it is known. */
export interface InspectedSplice extends InspectedBelt {
  readonly elongation?: number;
  readonly fingerLength_m?: number;
  readonly pitch_m?: number;
  /** Travel that the take-up has left, in belt [m]. */
  readonly takeUpSpare_m?: number;
}

/** What was looked at and measured. */
export interface InspectionAsked {
  readonly findings: readonly Finding[];
  readonly readings?: readonly InspectionReading[];
  /** How often this fused splice has been in the press, from 1. */
  readonly attempt?: number;
  /** True once the belt has run: then it is never pressed again. */
  readonly hasRun?: boolean;
  /** False on another day than that of the first pressing. */
  readonly sameDay?: boolean;
  readonly splice?: InspectedSplice;
  readonly limits?: Partial<InspectionLimits>;
  readonly curveWarnings?: readonly CurveWarning[];
}

/** One reason of the verdict. Words: `inspection.because.<code>`, with the name of the defect and its numbers. */
export interface Because {
  readonly code: BecauseCode;
  readonly defect?: DefectCode;
  readonly face?: RunFace;
  readonly measure?: InspectionMeasure;
  readonly watch?: WatchCode;
  /** SI; `outline` as a share, `colour` as CIEDE2000. */
  readonly data: Readonly<Record<string, number>>;
}

/** What is proposed; a person decides. */
export interface Inspection {
  readonly verdict: RunVerdict;
  /** `fine`: nothing against it; `look-closer`: the answers to `ask` may change the verdict; `refused`: decided. */
  readonly level: 'fine' | 'look-closer' | 'refused';
  /** True where running on asks for a second, named person: a major defect near its limit. */
  readonly secondPerson: boolean;
  readonly because: readonly Because[];
  readonly doNow: readonly NowCode[];
  readonly nextTime: readonly NextCode[];
  readonly ask: readonly InspectionAsk[];
  /** Each finding with its causes, the likeliest first. */
  readonly found: readonly (JudgedFinding & { readonly causes: readonly DefectCause[] })[];
}

/**
 * Run, press again, or cut out: the strictest that any finding leads to. Nothing seen and good measures run; what is
 * critical never runs; pressing again is allowed once, on the same day, for a belt that never ran, for listed defects
 * only. A look proves no strength.
 *
 * @param asked - findings, measures, and what the curve showed
 * @returns verdict, reasons, what to do now and next time, and what to ask
 * @source catalogue and limits: common practice, no source, except what `splice-effects.ts` derives
 */
export function judgeInspection(asked: InspectionAsked): Inspection {
  const { splice = {}, curveWarnings = [] } = asked;
  const limits = withTakeUp(inspectionLimits(splice, asked.limits), splice);
  const { findings, within } = foundBy(asked.findings, asked.readings ?? [], limits);
  const found = findings.map((finding) => ({
    ...judgeFinding(finding, limits),
    causes: causesOf(finding, curveWarnings),
  }));
  const wanted = strictest(found.map(({ act }) => act));
  const barred = wanted === 'press-again' ? whyNotAgain(asked, found) : [];
  const verdict = barred.length > 0 ? 'cut-out' : wanted;
  const shown = curveWarnings.filter(({ code }) => weighty.has(code));
  const unsettled = found.filter(({ grade }) => grade === 'look-closer');
  return {
    verdict,
    level: levelOf(verdict, { unsettled: unsettled.length > 0, found, shown: shown.length > 0 }),
    secondPerson: verdict === 'run' && unsettled.length > 0,
    because: [
      ...found.map((each) => becauseOf(each, splice)),
      ...barred,
      ...within.map((each): Because => ({ code: 'within-limit', measure: each.measure, data: { ...each.data } })),
      ...shown.map(({ code, data }): Because => ({ code: 'curve-shows', watch: code, data })),
      ...(found.length + shown.length === 0 ? [{ code: 'nothing-seen' as const, data: {} }] : []),
    ],
    doNow: doNowOf(verdict, found, shown.length > 0),
    nextTime: [...new Set(found.flatMap(({ finding }) => nextTimeOf(finding, curveWarnings)))],
    ask: found.flatMap(asksOf),
    found,
  };
}

const order: readonly RunVerdict[] = ['run', 'press-again', 'cut-out'];

function strictest(acts: readonly RunVerdict[]): RunVerdict {
  return order[Math.max(0, ...acts.map((act) => order.indexOf(act)))] ?? 'cut-out';
}

/** What the curve shows that a good look does not outweigh. */
const weighty: ReadonlySet<WatchCode> = new Set([
  'set-not-reached',
  'plateau-low',
  'above-cap',
  'hold-short',
  'side-slow',
  'opened-hot',
]);

function levelOf(
  verdict: RunVerdict,
  {
    unsettled,
    found,
    shown,
  }: { readonly unsettled: boolean; readonly found: readonly JudgedFinding[]; readonly shown: boolean },
): Inspection['level'] {
  const decided = found.some(({ grade, act }) => grade !== 'look-closer' && act === verdict);
  if (verdict !== 'run') return decided || !unsettled ? 'refused' : 'look-closer';
  return unsettled || shown ? 'look-closer' : 'fine';
}

/** Melting moves no yarns: step, kink and skew stay, voids and dirt too. The table says for which it helps. */
function whyNotAgain(
  { attempt = 1, hasRun, sameDay }: InspectionAsked,
  found: readonly JudgedFinding[],
): readonly Because[] {
  const because = (code: BecauseCode, data: Because['data'] = {}): Because => ({ code, data });
  const hindered = found.filter(({ finding, act, grade }) => act === 'run' && grade !== 'accept' && isLasting(finding));
  return [
    ...(attempt > 1 ? [because('pressed-already', { attempt })] : []),
    ...(hasRun ? [because('has-run')] : []),
    ...(sameDay === false ? [because('other-day')] : []),
    ...hindered.map(({ finding }): Because => ({ code: 'not-by-pressing', defect: finding.defect, data: {} })),
  ];
}

function isLasting({ defect }: Finding): boolean {
  return defects[defect].over === 'cut-out' && defects[defect].within === 'run';
}

function becauseOf({ finding, because, limit }: JudgedFinding, splice: InspectedSplice): Because {
  const { defect, face, value } = finding;
  const { measure } = defects[defect];
  return {
    code: because,
    defect,
    ...(face && { face }),
    ...(measure && { measure }),
    data: {
      ...(value !== undefined && { value }),
      ...(limit && { accept: limit.accept, refuse: limit.refuse }),
      ...(value === undefined ? {} : effectOf(defect, value, splice)),
    },
  };
}

/** What the defect does, as far as the belt is known. */
function effectOf(defect: DefectCode, value: number, splice: InspectedSplice): Because['data'] {
  const { width_m, elongation, fingerLength_m, pitch_m } = splice;
  if (defect === 'kink' && width_m !== undefined && elongation !== undefined && elongation > 0) {
    const { edgeStrainShare, wander_m } = kinkEffect({ bow_m: value, width_m, elongation });
    return { edge_share: edgeStrainShare, wander_m };
  }
  if (defect === 'edge-step' && width_m !== undefined && width_m > 0) {
    return { edge_share: edgeStressShare(value, width_m) };
  }
  if (defect === 'skewed-mesh' && fingerLength_m !== undefined && pitch_m !== undefined && pitch_m > 0) {
    return { tipGap_m: tipGap_m(value, { length_m: fingerLength_m, pitch_m }) };
  }
  return {};
}

function withTakeUp(limits: InspectionLimits, { takeUpSpare_m }: InspectedSplice): InspectionLimits {
  if (takeUpSpare_m === undefined) return limits;
  const { uncertainty } = limits['length-off'];
  return { ...limits, 'length-off': { accept: takeUpSpare_m, refuse: takeUpSpare_m, uncertainty } };
}

function doNowOf(verdict: RunVerdict, found: readonly JudgedFinding[], shown: boolean): readonly NowCode[] {
  const mends = found.flatMap(({ finding }) => defects[finding.defect].mend ?? []);
  const unmeasured = found.some(({ because }) => because === 'not-measured');
  const unsettled = shown || found.some(({ grade }) => grade === 'look-closer');
  const closer: readonly NowCode[] = [
    ...(unmeasured ? (['measure'] as const) : []),
    ...(unsettled ? (['look-closer'] as const) : []),
  ];
  const photo: readonly NowCode[] = found.length > 0 ? ['photo-kept'] : [];
  if (verdict === 'cut-out') return [...closer, 'cut-out', ...photo];
  if (verdict === 'press-again')
    return [...closer, ...new Set(mends), 'change-cause', 'press-dried', 'press-again', ...photo];
  const second: readonly NowCode[] = found.some(({ grade }) => grade === 'look-closer') ? ['second-person'] : [];
  return [...closer, ...new Set(mends), ...second, 'run-on', ...photo];
}
