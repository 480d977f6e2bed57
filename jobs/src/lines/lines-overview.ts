import type { Belt, Line, Plant, Position } from '@loopwright/plant';
import { type LineParts, lineLengths, partsOfLines } from './line-lengths.ts';
import { type PositionState, positionState, positionStates, revolutionsOf } from './position-state.ts';

export type StateCounts = Readonly<Record<PositionState, number>>;

export interface PositionSummary {
  readonly position: Position;
  readonly state: PositionState;
  /** Revolutions of the belt, when its length and age are known. */
  readonly revolutions?: number;
  /** Endless length of its belt [m], when anything says it. */
  readonly endless_m?: number;
}

export interface LineSummary {
  readonly line: Line;
  readonly belt?: Belt;
  /** Path length at the set take-up [m], when the line's pulleys are known. */
  readonly path_m?: number;
  readonly positions: readonly PositionSummary[];
  readonly counts: StateCounts;
}

export interface LinesOverview {
  readonly lines: readonly LineSummary[];
  readonly counts: StateCounts;
}

/**
 * Every line with its positions and what state each is in.
 *
 * @param plant - the plant's state
 * @param now - the moment of asking, ISO text in UTC
 * @returns lines in the order of their ids, positions in the order of their numbers
 */
export function linesOverview(plant: Plant, now: string): LinesOverview {
  const lines = partsOfLines(plant).map((parts) => lineSummary(parts, now));
  return { lines, counts: total(lines.map(({ counts }) => counts)) };
}

function lineSummary(parts: LineParts, now: string): LineSummary {
  const { line, belt } = parts;
  const { path_m, endless_m } = lineLengths(parts);
  const positions = parts.positions.map((position, i) => positionSummary(position, line, endless_m[i], now));
  return { line, ...(belt && { belt }), ...(path_m !== undefined && { path_m }), positions, counts: count(positions) };
}

function positionSummary(position: Position, line: Line, endless_m: number | undefined, now: string): PositionSummary {
  const revolutions = endless_m === undefined ? undefined : revolutionsOf(position, line, endless_m, now);
  return {
    position,
    state: positionState(position, revolutions, now),
    ...(revolutions !== undefined && { revolutions }),
    ...(endless_m !== undefined && { endless_m }),
  };
}

function count(positions: readonly PositionSummary[]): StateCounts {
  const counts = noCounts();
  for (const { state } of positions) counts[state] += 1;
  return counts;
}

function total(all: readonly StateCounts[]): StateCounts {
  const counts = noCounts();
  for (const each of all) for (const state of positionStates) counts[state] += each[state];
  return counts;
}

function noCounts(): Record<PositionState, number> {
  return Object.fromEntries(positionStates.map((state) => [state, 0])) as Record<PositionState, number>;
}
