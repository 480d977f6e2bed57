import type { PathInput } from '@loopwright/engine/loop';
import type { Belt } from './things/belt.ts';
import type { Pulley } from './things/line.ts';

/** The part of a belt that its path depends on. */
export type BeltThickness = Pick<Belt, 'thickness_m' | 'neutralLine_m'>;

/**
 * What the path computation wants, from pulleys and belt as the plant describes them. Where the belt's sheet does
 * not say where the neutral line lies, it is taken to be the middle.
 *
 * @param pulleys - of one line, in travel order
 * @param belt - the belt that runs there
 */
export function pathInput(pulleys: readonly Pulley[], belt: BeltThickness): PathInput {
  return {
    pulleys: pulleys.map(({ id, x_m, y_m, diameter_m, turn, face }) => ({
      id,
      x_m,
      y_m,
      surfaceRadius_m: diameter_m / 2,
      turn,
      face,
    })),
    belt: {
      thickness_m: belt.thickness_m,
      neutralLineFromRunningFace_m: belt.neutralLine_m ?? belt.thickness_m / 2,
    },
  };
}
