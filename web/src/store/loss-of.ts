import { readWitness } from './kept-witness.ts';
import type { StoreState } from './plant-store.ts';
import type { StoreCore } from './store-core.ts';

/** What was kept here and was gone at the start, and how much of it came back from the second copy. */
export function lossOf({ folded, parts }: StoreCore, backAgain: number): StoreState['lost'] {
  if (backAgain > 0) return { name: folded.plant.name, size: backAgain, backAgain: true };
  const kept = folded.size === 0 ? readWitness(parts.db.name) : undefined;
  return kept && { ...kept, backAgain: false };
}
