import { type Check, checkAgainst } from '../../../tools/validation/check.ts';

/** Enters a number of the page on heat that a separate program computed from the closed form. */
export function check(
  id: string,
  inputs: string,
  unit: string,
  published: number,
  ours: number,
  tolerance: number,
  more: Partial<Check> = {},
): void {
  checkAgainst({
    topic: 'heat',
    id,
    source: 'closed form evaluated with 25 digits by a separate program',
    evidence: 'independent',
    inputs,
    unit,
    published,
    ours,
    tolerance,
    why: 'half the last digit',
    ...more,
  });
}
