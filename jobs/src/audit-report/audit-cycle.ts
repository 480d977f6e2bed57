import type { RecordedCycle, RunRecord } from '../press-run/run-record.ts';
import type { DisplayReading, LoggedCurve } from '../press-run/run-state.ts';

/** A moment of a cycle: when it was expected, and when somebody said it. */
export interface AuditMark {
  readonly mark: 'holdBegan' | 'coolingBegan' | 'cool' | 'opened';
  readonly expected?: { readonly value: number; readonly low: number; readonly high: number };
  readonly real?: { readonly value_s: number; readonly sure: 'steady' | 'wall' | 'doubtful' };
}

/** Both displays as somebody read them, beside what was computed for that moment. */
export interface AuditReading extends DisplayReading {
  readonly time_s?: number;
  readonly expectedTop_degC?: number;
  readonly expectedBottom_degC?: number;
}

/** One time in the press, the computed beside the real. */
export interface AuditCycle {
  readonly attempt: number;
  readonly marks: readonly AuditMark[];
  readonly readings: readonly AuditReading[];
  readonly openedEarly: boolean;
  /** What a logger kept in the press. */
  readonly logged?: LoggedCurve;
}

type Predicted = NonNullable<RunRecord['predicted']>['cycle'];
type Curve = Extract<Predicted, { status: 'ok' }>['curve'];

/** Which computed time each moment is held against; opening rests on the displays, not on a time. */
const expectedFor = { holdBegan: 'ready_s', coolingBegan: 'holdEnd_s', cool: 'open_s' } as const;
const marks = ['holdBegan', 'coolingBegan', 'cool', 'opened'] as const;

/** Every time in the press of a run. */
export function auditCycles({ cycles, predicted }: RunRecord): readonly AuditCycle[] {
  return cycles.map((cycle) => auditCycle(cycle, predicted?.cycle));
}

function auditCycle(
  { attempt, times, readings, moments, logged }: RecordedCycle,
  predicted: Predicted | undefined,
): AuditCycle {
  const known = predicted?.status === 'ok' ? predicted : undefined;
  return {
    attempt,
    openedEarly: moments.opened?.early === true,
    ...(logged && { logged }),
    marks: marks.map((mark) => {
      const expected = mark === 'opened' ? undefined : known?.[expectedFor[mark]];
      const real = times[mark];
      return { mark, ...(expected && { expected }), ...(real && { real }) };
    }),
    readings: readings.map((reading) => ({ ...reading, ...(known && expectedAt(known.curve, reading.time_s)) })),
  };
}

function expectedAt(
  curve: Curve,
  time_s: number | undefined,
): Pick<AuditReading, 'expectedTop_degC' | 'expectedBottom_degC'> {
  const [top, bottom] = [curve.top_degC, curve.bottom_degC].map((line) => valueAt(curve.times_s, line, time_s));
  return top === undefined || bottom === undefined ? {} : { expectedTop_degC: top, expectedBottom_degC: bottom };
}

/** Straight between two points of a line; undefined beyond its ends. */
function valueAt(times_s: readonly number[], line: readonly number[], time_s: number | undefined): number | undefined {
  if (time_s === undefined) return undefined;
  const after = times_s.findIndex((each) => each >= time_s);
  const [t0, t1] = [times_s[after - 1], times_s[after]];
  const [v0, v1] = [line[after - 1], line[after]];
  if (t1 === time_s) return v1;
  if (t0 === undefined || t1 === undefined || v0 === undefined || v1 === undefined) return undefined;
  return v0 + ((v1 - v0) * (time_s - t0)) / (t1 - t0);
}
