import type { RunMeasure, RunStep } from '@loopwright/records/run';
import { type CyclePosition, runCurve } from './cycle-position.ts';
import { measureRules } from './measure-rules.ts';
import { possibleReading, setPoints } from './reading-check.ts';
import type { RunState } from './run-state.ts';
import type { MeasureAsked, ReadingAsked } from './run-view.ts';
import { stepRules } from './steps.ts';

/**
 * What is to be read at a step, each with its stepper around what the card expects.
 *
 * @param state - of the run
 * @param step - of the run
 */
export function measuresAsked(state: RunState, step: RunStep): readonly MeasureAsked[] {
  return stepRules[step].measures?.map((measure) => measureAsked(state, measure)) ?? nothing;
}

const nothing: readonly MeasureAsked[] = [];

function measureAsked({ started, measures }: RunState, measure: RunMeasure): MeasureAsked {
  const rule = measureRules[measure];
  const expected = started.numbers.find(({ name }) => name === rule.expected);
  const read = measures.findLast((each) => each.measure === measure)?.value;
  const { kind, step, least, most } = rule;
  const start = toStep(read ?? expected?.value ?? rule.start, step);
  return {
    measure,
    kind,
    step,
    least,
    most,
    start: Math.min(Math.max(start, least), most),
    ...(expected && { expected }),
    ...(read !== undefined && { read }),
  };
}

function toStep(value: number, step: number): number {
  return Number((Math.round(value / step) * step).toPrecision(12));
}

/**
 * Both displays, to be read around what they should show now.
 *
 * @param state - of the run
 * @param position - of the cycle
 */
export function readingAsked(state: RunState, position: CyclePosition): ReadingAsked {
  const mark = markOf(position);
  const set = setPoints(state);
  const curve = runCurve(state, position);
  const [top, bottom] = [possibleReading(state, mark, set.top_degC), possibleReading(state, mark, set.bottom_degC)];
  const last = state.readings.findLast((each) => each.mark === mark && each.attempt === state.attempt);
  return {
    mark,
    top_degC: Math.round(curve?.expectedTop_degC ?? top.least_degC),
    bottom_degC: Math.round(curve?.expectedBottom_degC ?? bottom.least_degC),
    least_degC: Math.min(top.least_degC, bottom.least_degC),
    most_degC: Math.max(top.most_degC, bottom.most_degC),
    step_K: 1,
    ...(last && { readAt: last.at }),
  };
}

function markOf({ phase, mayBeCool }: CyclePosition): ReadingAsked['mark'] {
  if (phase === 'heating') return 'heating';
  if (phase === 'holding') return 'hold';
  return mayBeCool ? 'opening' : 'cooling';
}
