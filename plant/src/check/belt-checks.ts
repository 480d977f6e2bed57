import type { Belt } from '../things/belt.ts';
import { each, type Fault, type PlantCheck } from './plant-check.ts';

/** What a belt's own numbers must agree on. */
export const beltChecks: readonly PlantCheck[] = [
  {
    code: 'neutral-line-outside-belt',
    level: 'error',
    reads: ['belts'],
    find: each('belts', ({ neutralLine_m, thickness_m }) =>
      neutralLine_m !== undefined && neutralLine_m > thickness_m
        ? { field: 'neutralLine_m', data: { kind: 'length', value: neutralLine_m, min: 0, max: thickness_m } }
        : undefined,
    ),
  },
  { code: 'covers-over-thickness', level: 'error', reads: ['belts'], find: each('belts', coversTooThick) },
  {
    code: 'elongation-window-empty',
    level: 'error',
    reads: ['belts'],
    find: each('belts', ({ minElongation, maxElongation }) =>
      minElongation >= maxElongation
        ? { field: 'minElongation', data: { kind: 'percent', value: minElongation, max: maxElongation } }
        : undefined,
    ),
  },
];

/** A cover that nobody has measured is taken as a third of the belt. */
function coversTooThick({ pulleyCover_m, rollerCover_m, thickness_m: max }: Belt): Fault {
  if (pulleyCover_m === undefined && rollerCover_m === undefined) return undefined;
  const value = (pulleyCover_m ?? max / 3) + (rollerCover_m ?? max / 3);
  const field = pulleyCover_m === undefined ? 'rollerCover_m' : 'pulleyCover_m';
  return value < max ? undefined : { field, data: { kind: 'length', value, max } };
}
