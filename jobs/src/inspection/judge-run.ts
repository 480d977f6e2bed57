import type { RunMeasure } from '@loopwright/records/run';
import type { CurveWarning } from '../curve-watch/watch-codes.ts';
import type { RunState } from '../press-run/run-state.ts';
import type { Finding, InspectionMeasure, InspectionReading } from './inspection-codes.ts';
import type { InspectionLimits } from './inspection-limits.ts';
import { type InspectedSplice, type Inspection, judgeInspection } from './judge-inspection.ts';

const measured: Readonly<Partial<Record<RunMeasure, InspectionMeasure>>> = {
  bow: 'bow',
  'edge-step': 'edge-step',
  'thickness-step': 'thickness-step',
};

/**
 * The splice of a run as looked at: with what was measured in it, its belt, and how often it was pressed.
 *
 * @param state - of the run
 * @param findings - by eye
 * @param more - warnings of the curve, limits of the plant, and what only a person knows
 */
export function judgeRun(
  state: RunState,
  findings: readonly Finding[],
  more: {
    readonly curveWarnings?: readonly CurveWarning[];
    readonly limits?: Partial<InspectionLimits>;
    readonly sameDay?: boolean;
  } = {},
): Inspection {
  return judgeInspection({
    ...more,
    findings,
    readings: readingsOf(state),
    attempt: state.pressedAgain ? 2 : 1,
    splice: spliceOf(state),
  });
}

/** The last of each measure that was read since the splice was lifted out. */
function readingsOf({ measures, moments: { lifted }, entries }: RunState): readonly InspectionReading[] {
  const from = entries.findIndex(({ id }) => id === lifted?.event);
  const since = new Set(entries.slice(Math.max(from, 0)).map(({ id }) => id));
  return measures.flatMap(({ event, measure, value }) => {
    const as = measured[measure];
    return as !== undefined && since.has(event) ? [{ measure: as, value }] : [];
  });
}

function spliceOf({ started }: RunState): InspectedSplice {
  const { belt } = started.things;
  const number = (name: string): number | undefined => started.numbers.find((each) => each.name === name)?.value;
  const elongation = number('elongation');
  const width_m = number('width');
  return {
    thickness_m: belt.thickness_m,
    ...(width_m !== undefined && { width_m }),
    ...(elongation !== undefined && { elongation }),
    fingerLength_m: belt.fingerLength_m,
    pitch_m: belt.fingerPitch_m,
  };
}
