import {
  type BeltPath,
  beltPath,
  lengthPerDisplacement,
  type PathInput,
  pathUncertainty,
} from '@loopwright/engine/loop';
import { Refusal } from '@loopwright/engine/refusal';
import {
  type Belt,
  type Line,
  type LinePulleys,
  leadingPulleys,
  linePathInput,
  linePulleys,
  type Plant,
  type Pulley,
  surveyUncertainty,
} from '@loopwright/plant';
import { carryingSpan } from './spans.ts';

/** The loop of a line as the engine solved it, with the pulleys that a person knows. */
export interface Loop {
  readonly pulleys: readonly Pulley[];
  readonly path: BeltPath;
  readonly input: PathInput;
  /** Standard uncertainty of the path length [m]. */
  readonly uncertainty_m: number;
  readonly fromSurvey: boolean;
  /** Indices into `pulleys`; -1 when the line has none. */
  readonly drive: number;
  readonly takeUp: number;
  readonly carryingSpan: number;
  /** Wrap that gives the take-up its length per travel, 2 sin(w/2), in its own direction [rad]; 0 without take-up. */
  readonly takeUpWrap_rad: number;
}

/** Why a line has no loop to compute with. */
export interface NoLoop {
  readonly code: string;
  readonly path: string;
  readonly data: Refusal['data'];
}

/**
 * Solves the loop of a line from its pulley table or its survey.
 *
 * @returns the loop; `undefined` when nobody entered pulleys; the refusal when the numbers make no loop
 */
export function loopOf(plant: Pick<Plant, 'pulleys' | 'surveys'>, line: Line, belt: Belt): Loop | NoLoop | undefined {
  try {
    const led = linePulleys(plant, line.id);
    const pulleys = leadingPulleys(led.pulleys);
    return pulleys.length === 0 ? undefined : solved(line, belt, led, pulleys);
  } catch (error) {
    if (error instanceof Refusal) return { code: error.code, path: error.path, data: error.data };
    throw error;
  }
}

function solved(line: Line, belt: Belt, led: LinePulleys, pulleys: readonly Pulley[]): Loop {
  const input = linePathInput(pulleys, belt);
  const path = beltPath(input);
  const takeUp = line.takeUpKind === 'none' ? -1 : pulleys.findIndex(({ role }) => role === 'take-up');
  return {
    pulleys,
    path,
    input,
    uncertainty_m: uncertainty_m(led, belt, pulleys, path),
    fromSurvey: led.survey !== undefined,
    drive: pulleys.findIndex(({ role }) => role === 'drive'),
    takeUp,
    carryingSpan: carryingSpan(path),
    takeUpWrap_rad: takeUp < 0 ? 0 : effectiveWrap(path, takeUp, line),
  };
}

/** Tape readings that several coordinates share err together; coordinates entered freely err each by itself. */
function uncertainty_m(led: LinePulleys, belt: Belt, pulleys: readonly Pulley[], path: BeltPath): number {
  if (led.survey) return surveyUncertainty(led.survey, belt).uncertainty_m;
  return pathUncertainty(
    path,
    pulleys.map(({ uncertainty_m: position_m }) => ({ position_m })),
  ).standardUncertainty_m;
}

/** The wrap w with 2 sin(w/2) equal to the length the loop gains per travel in the take-up's own direction. */
function effectiveWrap(path: BeltPath, takeUp: number, { takeUpX, takeUpY }: Line): number {
  const size = Math.hypot(takeUpX, takeUpY);
  const gain = lengthPerDisplacement(path, takeUp, [takeUpX / size, takeUpY / size]);
  return gain <= 0 ? 0 : 2 * Math.asin(Math.min(1, gain / 2));
}

export function isLoop(loop: Loop | NoLoop | undefined): loop is Loop {
  return loop !== undefined && 'pulleys' in loop;
}
