import { kinds } from '../empty-plant.ts';
import type { Kind, Plant } from '../plant.ts';
import { beltChecks } from './belt-checks.ts';
import type { CheckCode } from './check-codes.ts';
import { dieChecks } from './die-checks.ts';
import { ledLines } from './led-lines.ts';
import { lineChecks } from './line-checks.ts';
import { pathChecks } from './path-checks.ts';
import type { Finding, PlantCheck } from './plant-check.ts';
import { pulleyChecks } from './pulley-checks.ts';
import { recipeChecks } from './recipe-checks.ts';
import { takeUpChecks } from './take-up-checks.ts';

/** A finding with the rule it breaks. */
export interface PlantProblem extends Finding {
  readonly code: CheckCode;
  readonly level: 'error' | 'care';
}

/** Every rule between fields of a plant. */
export const plantChecks: readonly PlantCheck[] = [
  ...beltChecks,
  ...dieChecks,
  ...recipeChecks,
  ...lineChecks,
  ...takeUpChecks,
  ...pulleyChecks,
  ...pathChecks,
];

/**
 * Holds the things of a plant against each other.
 *
 * @param plant - any plant whose things meet their schemas; references may dangle
 * @param complete - kinds that are known whole; default all
 * @returns every finding of every rule
 */
export function checkPlant(plant: Plant, complete: ReadonlySet<Kind> = new Set(kinds)): readonly PlantProblem[] {
  const led = ledLines(plant);
  return plantChecks
    .filter(({ reads }) => reads.every((kind) => complete.has(kind)))
    .flatMap(({ code, level, find }) => find(plant, led).map((finding) => ({ code, level, ...finding })));
}
