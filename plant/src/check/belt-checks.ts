import { each, type PlantCheck } from './plant-check.ts';

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
