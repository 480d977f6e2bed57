import type { Line, Position } from '@loopwright/plant';

/** What a person sees of a position first: shape, word, colour, in this order. */
export const positionStates = ['running', 'retension-due', 'past-life', 'torn', 'empty'] as const;
export type PositionState = (typeof positionStates)[number];

const dayInMs = 86_400_000;

/**
 * Revolutions that a belt has made: as counted, else from the days since it was fitted.
 *
 * @param length_m - endless length of the loop [m], > 0
 * @param now - the moment of asking, ISO text in UTC
 * @returns revolutions, or undefined when neither a count nor a day of fitting is known
 */
export function revolutionsOf(position: Position, line: Line, length_m: number, now: string): number | undefined {
  if (position.revolutions !== undefined) return position.revolutions;
  if (position.fittedOn === undefined || position.status === 'empty') return undefined;
  const end = position.status === 'torn' && position.since ? position.since : now;
  const days = Math.max(0, (Date.parse(end) - Date.parse(position.fittedOn)) / dayInMs);
  return (line.speed_m_s * 3600 * line.hoursPerDay * days) / length_m;
}

/** True when the first re-tension visit after fitting has fallen due and nobody has noted it. */
function retensionDue(position: Position, now: string): boolean {
  const { fittedOn, lastTensionedOn, retensionAfter_days } = position;
  if (fittedOn === undefined || retensionAfter_days === undefined) return false;
  const retensioned = lastTensionedOn !== undefined && lastTensionedOn > fittedOn;
  return !retensioned && Date.parse(now) >= Date.parse(fittedOn) + retensionAfter_days * dayInMs;
}

/** The state of a position: what somebody said of it, else past its life, else due for re-tension, else running. */
export function positionState(position: Position, revolutions: number | undefined, now: string): PositionState {
  if (position.status !== 'running') return position.status;
  const { expectedRevolutions } = position;
  if (expectedRevolutions !== undefined && revolutions !== undefined && revolutions >= expectedRevolutions) {
    return 'past-life';
  }
  return retensionDue(position, now) ? 'retension-due' : 'running';
}
