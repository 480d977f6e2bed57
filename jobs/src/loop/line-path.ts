import type { Belt, Line, Plant } from '@loopwright/plant';
import type { CardPath } from '../splice-card/card.ts';
import { cardPath } from '../splice-card/path.ts';
import { isLoop, loopOf, type NoLoop } from './loop.ts';

/**
 * How the belt of a line runs, for drawing it before there is a card.
 *
 * @param plant - with the pulleys or the survey of the line
 * @param line - with its take-up
 * @param belt - that runs there
 * @returns the path; the refusal when the numbers make no loop; `undefined` when nobody entered pulleys
 */
export function linePath(plant: Plant, line: Line, belt: Belt): CardPath | NoLoop | undefined {
  const loop = loopOf(plant, line, belt);
  return isLoop(loop) ? cardPath(line, loop, undefined) : loop;
}
