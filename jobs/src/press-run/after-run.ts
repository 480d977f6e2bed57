import type { Plant, Position, Roll } from '@loopwright/plant';
import { definitions, type PlantEvent } from '@loopwright/records';
import type { RunMeasure } from '@loopwright/records/run';
import type { RunState } from './run-state.ts';

/**
 * What a finished run changes in the plant: the position runs again with a new belt of known length, the roll is shorter.
 * Ordinary definitions, to be appended after the last tap; nothing for a run that has not come so far.
 *
 * @param state - of the run
 * @param plant - as it stands now
 */
export function afterRun(state: RunState, plant: Plant): readonly PlantEvent[] {
  const { position: at, roll: taken } = state.started.things;
  const position = plant.positions[at.id] ?? at;
  const roll = plant.rolls[(state.roll ?? taken)?.id ?? ''];
  const { unlock } = state.settled;
  if (state.end?.how !== 'finished' || unlock === undefined) return [];
  const changed = fitted(state, position, unlock.at, roll?.lot);
  const shorter = roll && rest(state, roll);
  return definitions([
    { kind: 'positions', thing: changed },
    ...(shorter ? [{ kind: 'rolls', thing: shorter } as const] : []),
  ]);
}

function read({ measures }: RunState, measure: RunMeasure): number | undefined {
  return measures.findLast((each) => each.measure === measure)?.value;
}

function expected({ started }: RunState, name: string): number | undefined {
  return started.numbers.find((each) => each.name === name)?.value;
}

/** What was said of the old belt is no longer true; what was read of the new one is measured, the rest computed. */
function fitted(state: RunState, position: Position, at: string, lot: string | undefined): Position {
  const { id, line, number, name, note, expectedRevolutions, source, sources = {} } = position;
  const day = at.slice(0, 10);
  const retensionAfter_days = expected(state, 'retension-after') ?? position.retensionAfter_days;
  const takeUp_m = read(state, 'take-up-after') ?? expected(state, 'take-up-set');
  const length = newLength(state);
  const lengthSource = length.recordedLength_m === undefined ? {} : { recordedLength_m: length.source };
  return {
    id,
    line,
    number,
    source,
    status: 'running',
    since: at,
    fittedOn: day,
    lastTensionedOn: day,
    sources: {
      ...sources,
      takeUp_m: read(state, 'take-up-after') === undefined ? 'computed' : 'measured',
      ...lengthSource,
    },
    ...(name !== undefined && { name }),
    ...(note !== undefined && { note }),
    ...(expectedRevolutions !== undefined && { expectedRevolutions }),
    ...(retensionAfter_days !== undefined && { retensionAfter_days: Math.round(retensionAfter_days) }),
    ...(takeUp_m !== undefined && { takeUp_m }),
    ...(length.recordedLength_m !== undefined && { recordedLength_m: length.recordedLength_m }),
    ...(lot !== undefined && { lot }),
  };
}

interface NewLength {
  readonly recordedLength_m?: number;
  readonly source: 'measured' | 'computed';
}

/** Tip to tip less one finger is the endless length. */
function newLength(state: RunState): NewLength {
  const tipToTip = read(state, 'tip-to-tip');
  if (tipToTip !== undefined)
    return { recordedLength_m: tipToTip - state.started.things.belt.fingerLength_m, source: 'measured' };
  const endless = expected(state, 'endless-length');
  return { source: 'computed', ...(endless !== undefined && { recordedLength_m: endless }) };
}

/** An opened roll is no longer sealed, however well somebody wrapped it. */
function rest(state: RunState, roll: Roll): Roll {
  const square_m = read(state, 'square-length') ?? expected(state, 'square-length') ?? 0;
  const left_m = read(state, 'roll-left') ?? Math.max(0, roll.left_m - square_m);
  return { ...roll, left_m, sealed: false };
}
