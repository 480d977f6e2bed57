import type { Belt, Line, Plant, Position } from '@loopwright/plant';
import { endlessLength } from '../loop/endless-length.ts';
import { isLoop, type Loop, loopOf } from '../loop/loop.ts';
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
  const byLine = groupByLine(Object.values(plant.positions));
  const lines = Object.values(plant.lines)
    .sort((a, b) => (a.id < b.id ? -1 : 1))
    .map((line) => lineSummary(plant, line, byLine.get(line.id) ?? [], now));
  return { lines, counts: count(lines.flatMap(({ positions }) => positions)) };
}

function groupByLine(positions: readonly Position[]): ReadonlyMap<string, readonly Position[]> {
  const groups = new Map<string, Position[]>();
  for (const position of positions) {
    const group = groups.get(position.line);
    if (group) group.push(position);
    else groups.set(position.line, [position]);
  }
  return groups;
}

function lineSummary(plant: Plant, line: Line, positions: readonly Position[], now: string): LineSummary {
  const belt = plant.belts[line.belt];
  const solved = belt && loopOf(plant, line, belt);
  const loop = isLoop(solved) ? solved : undefined;
  const list = [...positions]
    .sort((a, b) => a.number - b.number)
    .map((position) => positionSummary(position, line, loop, now));
  return {
    line,
    ...(belt && { belt }),
    ...(loop && { path_m: loop.path.length_m }),
    positions: list,
    counts: count(list),
  };
}

function positionSummary(position: Position, line: Line, loop: Loop | undefined, now: string): PositionSummary {
  const endless_m = endlessLength(position, line, loop)?.endless.value;
  const revolutions = endless_m === undefined ? undefined : revolutionsOf(position, line, endless_m, now);
  return {
    position,
    state: positionState(position, revolutions, now),
    ...(revolutions !== undefined && { revolutions }),
    ...(endless_m !== undefined && { endless_m }),
  };
}

function count(positions: readonly PositionSummary[]): StateCounts {
  const counts = Object.fromEntries(positionStates.map((state) => [state, 0])) as Record<PositionState, number>;
  for (const { state } of positions) counts[state] += 1;
  return counts;
}
