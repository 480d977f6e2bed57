import { byId, checkPlant, emptyPlant, type Kind, type Plant, type PlantProblem } from '@loopwright/plant';
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
 * @param kind - of the changed thing
 * @param thing - as it would be
 */
export function findingsOf(plant: Plant, kind: Kind, thing: PlainThing): Findings {
  const near = neighbours(plant, kind, thing);
  const before = new Set(checkPlant(near).map(nameOf));
  const isNew = (problem: PlantProblem) => !before.has(nameOf(problem));
  const own = (problem: PlantProblem) => problem.kind === kind && problem.id === thing['id'];
  const found = checkPlant(plantWith(near, kind, thing)).filter((problem) => own(problem) || isNew(problem));
  const stops = (problem: PlantProblem) => problem.level === 'error' && isNew(problem);
  return { errors: found.filter(stops), cares: found.filter((problem) => !stops(problem)) };
}

/**
 * The part of a plant that a change of one thing can touch: a plant may have a thousand lines, and a path is computed
 * for each line that is held. Belts, tooling and recipes are few and always held whole.
 */
export function neighbours(plant: Plant, kind: Kind, thing: PlainThing): Plant {
  const { belts, dies, templates, presses, recipes } = plant;
  const stock: Plant = { ...emptyPlant(plant.id, plant.name), belts, dies, templates, presses, recipes };
  if (kind === 'dies' || kind === 'templates') return { ...stock, lines: plant.lines };
  const lineOf = { lines: thing['id'], positions: thing['line'], pulleys: thing['line'], surveys: thing['line'] };
  const line = Object.hasOwn(lineOf, kind) ? lineOf[kind as keyof typeof lineOf] : undefined;
  const held = Object.values(plant.lines).filter(({ id, belt }) =>
    kind === 'belts' ? belt === thing['id'] : id === line,
  );
  const ids = new Set(held.map(({ id }) => id));
  const ofThese = <T extends { readonly id: string; readonly line: string }>(things: Readonly<Record<string, T>>) =>
    byId(Object.values(things).filter((one) => ids.has(one.line)));
  return {
    ...stock,
    lines: byId(held),
    pulleys: ofThese(plant.pulleys),
    surveys: ofThese(plant.surveys),
    positions: kind === 'lines' || kind === 'positions' ? ofThese(plant.positions) : stock.positions,
  };
}
