import { type BeltPath, beltPath } from '@loopwright/engine/loop';
import { Refusal } from '@loopwright/engine/refusal';
import { leadingPulleys, linePathInput, minCounterBend } from '../engine-input.ts';
import type { Plant } from '../plant.ts';
import type { Belt } from '../things/belt.ts';
import type { Pulley } from '../things/line.ts';
import { type LedLines, pulleysOf } from './led-lines.ts';
import type { Finding, PlantCheck } from './plant-check.ts';

const reads: PlantCheck['reads'] = ['lines', 'pulleys', 'surveys', 'belts'];

/** Whether a belt can run round the pulleys of each line, and is not bent tighter there than it bears. */
export const pathChecks: readonly PlantCheck[] = [
  { code: 'path-refused', level: 'error', reads, find: (plant, led) => ledPaths(plant, led).flatMap(refusedPath) },
  {
    code: 'pulley-under-limit',
    level: 'care',
    reads,
    find: (plant, led) => ledPaths(plant, led).flatMap((path) => tightPulleys(path, 'running')),
  },
  {
    code: 'counter-bend-under-limit',
    level: 'care',
    reads,
    find: (plant, led) => ledPaths(plant, led).flatMap((path) => tightPulleys(path, 'back')),
  },
];

interface LedPath {
  readonly line: string;
  readonly pulleys: readonly Pulley[];
  readonly belt: Belt;
  readonly path: BeltPath | Refusal;
}

/** The path of each line whose belt and pulleys are known. */
function ledPaths({ lines, belts }: Plant, led: LedLines): LedPath[] {
  return Object.values(lines).flatMap(({ id, belt: beltId }) => {
    const belt = belts[beltId];
    const pulleys = leadingPulleys(pulleysOf(led, id));
    return belt && pulleys.length > 0 ? [{ line: id, belt, pulleys, path: pathOrRefusal(pulleys, belt) }] : [];
  });
}

function pathOrRefusal(pulleys: readonly Pulley[], belt: Belt): BeltPath | Refusal {
  try {
    return beltPath(linePathInput(pulleys, belt));
  } catch (refusal) {
    if (refusal instanceof Refusal) return refusal;
    throw refusal;
  }
}

/** Named after the pulley the refusal's path points at; after the line when it points at none, or a survey made it. */
function refusedPath({ line, pulleys, path }: LedPath): Finding[] {
  // A belt that cannot be is a finding of its own.
  if (!(path instanceof Refusal) || path.path.startsWith('belt.')) return [];
  const index = /^pulleys\[(\d+)\]/.exec(path.path)?.[1];
  const pulley = index === undefined ? undefined : pulleys[Number(index)];
  const data = { ...path.data, reason: path.code, line };
  return [pulley ? { kind: 'pulleys', id: pulley.id, data } : { kind: 'lines', id: line, data }];
}

/** Which side touches follows from the turn: pulleys that turn as the loop does meet the running face. */
function tightPulleys({ line, belt, pulleys, path }: LedPath, face: 'running' | 'back'): Finding[] {
  if (path instanceof Refusal) return [];
  const running = path.turning > 0 ? 'left' : 'right';
  const min = face === 'running' ? belt.minPulley_m : minCounterBend(belt);
  return pulleys
    .filter(({ turn, diameter_m }) => (turn === running) === (face === 'running') && diameter_m < min)
    .map(({ id, diameter_m: value }) => {
      const data = { kind: 'length', value, min, other: belt.id, line };
      return { kind: 'pulleys', id, field: 'diameter_m', data };
    });
}
