import type { Plant } from '@loopwright/plant';
import type { PlantEvent } from '@loopwright/records';
import type { RunChange } from '@loopwright/records/run';
import { pressCycle } from '../press-cycle/press-cycle.ts';
import { afterRun } from './after-run.ts';
import { foldRun } from './apply-run-event.ts';
import type { RunState } from './run-state.ts';
import type { RunNow } from './run-view.ts';
import { predictRun } from './start-run.ts';

/**
 * All that one tap writes, in one append: what was said, a new prediction where outlet or air was read, and with the last
 * tap what the run changes in the plant. So a device that dies has all of it or nothing.
 *
 * @param state - of the run before the tap
 * @param changes - of the tap
 * @param now - both clocks
 * @param plant - as it stands
 */
export function tapWrites(
  state: RunState,
  changes: readonly RunChange[],
  now: RunNow,
  plant: Plant,
): readonly (RunChange | PlantEvent)[] {
  const said = [...changes, ...predictedAnew(state, changes)];
  const after = foldRun(
    said.map((change, at) => ({ ...now, ...change, id: `tap-${at}` })),
    state,
  );
  const ends = after?.end !== undefined && state.end === undefined;
  return ends ? [...said, ...afterRun(after, plant)] : said;
}

/** Outlet and air as somebody read them give another prediction. */
function predictedAnew(state: RunState, changes: readonly RunChange[]): readonly RunChange[] {
  const read = changes.flatMap(readings);
  const { line, belt, press, recipe, template, roll } = state.started.things;
  if (read.length === 0 || press === undefined || recipe === undefined || state.settled.heat) return [];
  const known = [...state.measures, ...read];
  const today = { volts_V: last(known, 'mains'), air_degC: last(known, 'air') };
  return [predictRun(state.id, pressCycle({ line, belt, press, recipe, template, roll: state.roll ?? roll, today }))];
}

interface Reading {
  readonly measure: string;
  readonly value: number;
}

function readings({ type, body }: RunChange): readonly Reading[] {
  if (type !== 'run.measured') return [];
  const { measure } = body.thing;
  return measure === 'mains' || measure === 'air' ? [body.thing] : [];
}

function last(read: readonly Reading[], measure: string): number | undefined {
  return read.findLast((each) => each.measure === measure)?.value;
}
