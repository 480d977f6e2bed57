import { byId, checkPlant, type Kind, type Plant, type PlantProblem } from '@loopwright/plant';
import type { PlainThing } from './entries.ts';

/** What a change would bring: findings about the thing, and new ones about others. */
export interface Findings {
  /** New contradictions: the change is not taken. */
  readonly errors: readonly PlantProblem[];
  /** What deserves a look, and contradictions that were there before. */
  readonly cares: readonly PlantProblem[];
}

/** The plant as it would be with this thing in it. */
export function plantWith(plant: Plant, kind: Kind, thing: PlainThing): Plant {
  const id = String(thing['id']);
  const others = Object.values(plant[kind]).filter((other) => other.id !== id);
  return { ...plant, [kind]: byId([...others, { ...thing, id }]) } as Plant;
}

const nameOf = ({ code, kind, id, field }: PlantProblem) => JSON.stringify([code, kind, id, field ?? '']);

/**
 * Holds a changed thing against the rest of the plant.
 *
 * @param plant - as it stands
 * @param known - findings of that plant
 * @param kind - of the changed thing
 * @param thing - as it would be
 */
export function findingsOf(plant: Plant, known: readonly PlantProblem[], kind: Kind, thing: PlainThing): Findings {
  const before = new Set(known.map(nameOf));
  const isNew = (problem: PlantProblem) => !before.has(nameOf(problem));
  const own = (problem: PlantProblem) => problem.kind === kind && problem.id === thing['id'];
  const found = checkPlant(plantWith(plant, kind, thing)).filter((problem) => own(problem) || isNew(problem));
  const stops = (problem: PlantProblem) => problem.level === 'error' && isNew(problem);
  return { errors: found.filter(stops), cares: found.filter((problem) => !stops(problem)) };
}
