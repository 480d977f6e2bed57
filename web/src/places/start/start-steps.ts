import type { Line, Plant } from '@loopwright/plant';
import { isMeasured, knownGeometry } from '../stores/line/geometry.ts';

/** The steps from nothing to a first card. */
export const startSteps = ['name', 'belts', 'lines', 'measure', 'positions'] as const;

/** Where somebody stands on the way: the first thing that the plant lacks, or the position whose card is ready. */
export type StartState =
  | { readonly step: 'name' | 'belts' | 'lines' }
  | { readonly step: 'measure' | 'positions'; readonly line: Line }
  | { readonly step: 'ready'; readonly position: string };

/**
 * Reads off the plant what comes next, so that the way can be left and taken up again anywhere, at any time.
 *
 * @param plant - as it stands
 * @param isOwn - false for the demo plant and where there is none yet
 */
export function startState(plant: Plant, isOwn: boolean): StartState {
  if (!isOwn) return { step: 'name' };
  if (Object.keys(plant.belts).length === 0) return { step: 'belts' };
  const lines = Object.values(plant.lines);
  const [first] = lines;
  if (first === undefined) return { step: 'lines' };
  const ready = firstReady(plant);
  if (ready !== undefined) return { step: 'ready', position: ready };
  const measured = lines.find((line) => isMeasured(knownGeometry(plant, line)));
  return measured === undefined ? { step: 'measure', line: first } : { step: 'positions', line: measured };
}

/** The first position on a line of which somebody has said how its belt runs. */
function firstReady(plant: Plant): string | undefined {
  const positions = Object.values(plant.positions).sort((a, b) => a.number - b.number);
  return positions.find(({ line }) => {
    const known = plant.lines[line];
    return known !== undefined && isMeasured(knownGeometry(plant, known));
  })?.id;
}
