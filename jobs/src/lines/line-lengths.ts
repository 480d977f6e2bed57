import { type Belt, byLine, type Line, type Plant, type Position, type Pulley } from '@loopwright/plant';
import { endlessLengthsOf } from '../loop/endless-length.ts';
import { isLoop, loopOf } from '../loop/loop.ts';

type Survey = Plant['surveys'][string];

/** Everything of a plant that the lengths of one line are computed from. */
export interface LineParts {
  readonly line: Line;
  readonly belt: Belt | undefined;
  readonly pulleys: readonly Pulley[];
  readonly surveys: readonly Survey[];
  /** In the order of their numbers. */
  readonly positions: readonly Position[];
}

export interface LineLengths {
  /** Path length at the set take-up [m], when the line's pulleys are known. */
  readonly path_m?: number;
  /** Endless length of each position [m], in the order of the positions; undefined where nothing says it. */
  readonly endless_m: readonly (number | undefined)[];
}

const cut = new WeakMap<Plant, readonly LineParts[]>();

/** The lines of a plant with what belongs to each, in the order of their ids. One pass over the plant. */
export function partsOfLines(plant: Plant): readonly LineParts[] {
  const before = cut.get(plant);
  if (before !== undefined) return before;
  const parts = cutUp(plant);
  cut.set(plant, parts);
  return parts;
}

function cutUp(plant: Plant): readonly LineParts[] {
  const pulleys = byLine(Object.values(plant.pulleys));
  const surveys = byLine(Object.values(plant.surveys));
  const positions = byLine(Object.values(plant.positions));
  return Object.values(plant.lines)
    .sort((a, b) => (a.id < b.id ? -1 : 1))
    .map((line) => ({
      line,
      belt: plant.belts[line.belt],
      pulleys: pulleys.get(line.id) ?? [],
      surveys: surveys.get(line.id) ?? [],
      positions: (positions.get(line.id) ?? []).toSorted((a, b) => a.number - b.number),
    }));
}

const solved = new WeakMap<Line, { readonly parts: LineParts; readonly lengths: LineLengths }>();

/**
 * The lengths of a line: one loop solved, whatever the number of positions. Things of a plant never change in place, so
 * a line whose parts are the same as at the last asking answers what it answered then.
 */
export function lineLengths(parts: LineParts): LineLengths {
  const before = solved.get(parts.line);
  if (before !== undefined && sameParts(before.parts, parts)) return before.lengths;
  const lengths = solve(parts);
  solved.set(parts.line, { parts, lengths });
  return lengths;
}

/** Takes the lengths of a line as solved, where they can be: as many as it has positions. */
export function takeLengths(parts: LineParts, lengths: LineLengths | undefined): void {
  if (lengths?.endless_m.length === parts.positions.length) solved.set(parts.line, { parts, lengths });
}

function solve({ line, belt, pulleys, surveys, positions }: LineParts): LineLengths {
  const led = { pulleys: byId(pulleys), surveys: byId(surveys) };
  const answer = belt && loopOf(led, line, belt);
  const loop = isLoop(answer) ? answer : undefined;
  return { ...(loop && { path_m: loop.path.length_m }), endless_m: positions.map(endlessLengthsOf(line, loop)) };
}

function byId<T extends { readonly id: string }>(things: readonly T[]): Readonly<Record<string, T>> {
  return Object.fromEntries(things.map((thing) => [thing.id, thing]));
}

function sameParts(a: LineParts, b: LineParts): boolean {
  return (
    a.belt === b.belt && same(a.pulleys, b.pulleys) && same(a.surveys, b.surveys) && same(a.positions, b.positions)
  );
}

function same(a: readonly unknown[], b: readonly unknown[]): boolean {
  return a.length === b.length && a.every((thing, i) => thing === b[i]);
}
