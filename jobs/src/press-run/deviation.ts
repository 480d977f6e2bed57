import type { RunEvent, RunMeasure } from '@loopwright/records/run';
import { measureRules } from './measure-rules.ts';
import { elapsedBetween } from './run-clock.ts';
import type { Deviation, RunState, Stamp } from './run-state.ts';

/** How long pressure stands before heat: a minute, less what a tap takes. Common practice, no source. */
export const pressureSteady_s = 60;
/** How long the splice lies flat after it was lifted out. Common practice, no source. */
export const flat_s = 600;
/** Opening temperature while no recipe says one. Common practice, no source. */
export const usualOpening_degC = 50;
/** A tap comes a little late or early. */
const tap_s = 5;
/** What a display says this much outside the predicted range is worth noting. */
const disagrees_s = 60;

/** Who said it and when, out of an event. */
export function stampOf({ id, by, device, at, boot, up_ms }: RunEvent): Stamp {
  return { event: id, by, device, at, boot, up_ms };
}

type Draft = Pick<Deviation, 'code' | 'level'> & Partial<Pick<Deviation, 'step' | 'reason' | 'data'>>;

/**
 * A deviation that an event raises.
 *
 * @param event - that raises it
 * @param draft - what departs from the card
 */
export function deviation(event: RunEvent, { step, reason, data = {}, code, level }: Draft): Deviation {
  const what = [event.id, code, data['measure'] ?? data['face']];
  const id = what.filter((part) => part !== undefined).join('.');
  return { id, code, level, said: stampOf(event), data, ...(step && { step }), ...(reason && { reason }) };
}

/** Heat that came before the pressure had stood for its minute; one tap for both says that it had. */
export function heatTooEarly(state: RunState, event: RunEvent): readonly Deviation[] {
  const { pressure } = state.moments;
  if (!pressure || pressure.event === event.id) return [];
  const { elapsed_s, sure } = elapsedBetween(pressure, event, state.entries);
  if (sure === 'doubtful' || elapsed_s >= pressureSteady_s - tap_s) return [];
  const data = { waited_s: Math.round(elapsed_s), wanted_s: pressureSteady_s };
  return [deviation(event, { code: 'heat-before-steady', level: 'minor', step: 'heat', data })];
}

/** A splice that did not lie flat for its ten minutes. */
export function flatTooShort(state: RunState, event: RunEvent): readonly Deviation[] {
  const { lifted } = state.moments;
  if (!lifted || lifted.event === event.id) return [];
  const { elapsed_s, sure } = elapsedBetween(lifted, event, state.entries);
  if (sure === 'doubtful' || elapsed_s >= flat_s - tap_s) return [];
  const data = { waited_s: Math.round(elapsed_s), wanted_s: flat_s };
  return [deviation(event, { code: 'flat-too-short', level: 'minor', step: 'flat', data })];
}

const predictedFor = { 'hold-began': 'ready_s', 'cooling-began': 'holdEnd_s', cool: 'open_s' } as const;
export type CycleMark = keyof typeof predictedFor;

/** What the press display says, where that is outside what was predicted. The display counts. */
export function displayDisagrees(state: RunState, event: RunEvent, says: CycleMark): readonly Deviation[] {
  const { heat } = state.moments;
  const cycle = state.predicted?.cycle;
  if (!heat || cycle?.status !== 'ok') return [];
  const { elapsed_s, sure } = elapsedBetween(heat, event, state.entries);
  const { value, low, high } = cycle[predictedFor[says]];
  if (sure === 'doubtful' || (elapsed_s > low - disagrees_s && elapsed_s < high + disagrees_s)) return [];
  const data = { says, display_s: Math.round(elapsed_s), predicted_s: Math.round(value) };
  return [deviation(event, { code: 'display-disagrees', level: 'minor', data })];
}

/** A measure further off what the card says than hands and tape explain. */
export function measureOff(
  state: RunState,
  event: RunEvent,
  { measure, value }: { readonly measure: RunMeasure; readonly value: number },
): readonly Deviation[] {
  const { expected: name, tolerance, kind } = measureRules[measure];
  if (tolerance === undefined) return [];
  const expected = name === undefined ? 0 : state.started.numbers.find((each) => each.name === name)?.value;
  if (expected === undefined || Math.abs(value - expected) <= tolerance * (1 + 1e-9)) return [];
  return [
    deviation(event, { code: 'measure-off', level: 'minor', data: { measure, value, expected, tolerance, kind } }),
  ];
}

/** How warm a display may read above the opening temperature without a word. */
const warm_K = 1;

/** Opening while a display was read too warm, or so long before the prediction that phone and display disagree. */
export function openedOtherwise(state: RunState, event: RunEvent): readonly Deviation[] {
  const reading = state.readings.findLast(({ mark, attempt }) => mark === 'opening' && attempt === state.attempt);
  const limit_degC = state.started.things.recipe?.open_degC ?? usualOpening_degC;
  const read_degC = reading && Math.max(reading.top_degC, reading.bottom_degC);
  if (read_degC !== undefined && read_degC > limit_degC + warm_K) {
    const data = { read_degC, limit_degC };
    return [deviation(event, { code: 'opened-warm', level: 'major', step: 'open', data })];
  }
  return state.moments.cool ? [] : displayDisagrees(state, event, 'cool').filter(({ data }) => isSooner(data));
}

/** Later than predicted nothing is wrong: the press was left to cool. */
function isSooner({ display_s, predicted_s }: Deviation['data']): boolean {
  return Number(display_s) < Number(predicted_s);
}
