import { pressCycleReport } from '@loopwright/jobs';
import type { Belt, Line, Plant, Press, Recipe } from '@loopwright/plant';
import type { RecipesView } from './recipes-address.ts';

/** What a cycle is looked at with: the things themselves, and where the press is plugged in. */
export interface Things {
  readonly belt: Belt;
  readonly press: Press;
  readonly recipe: Recipe;
  readonly line: Line | undefined;
}

/** Why there is nothing to look at. */
export interface Missing {
  readonly missing: 'recipe' | 'press' | 'unknown';
  readonly id: string;
}

interface Reader {
  /** Press chosen among the settings; empty for none. */
  readonly press: string;
  readonly now: string;
}

/** The things that an address asks for, those that fit in the place of those it leaves open. */
export function startOf(plant: Plant, asked: RecipesView, reader: Reader): Things | Missing {
  if (asked.view === 'list') return { missing: 'unknown', id: '' };
  if (!has(plant, asked)) return { missing: 'unknown', id: asked.id };
  if (Object.keys(plant.presses).length === 0) return { missing: 'press', id: asked.id };
  if (Object.keys(plant.recipes).length === 0) return { missing: 'recipe', id: asked.id };
  const wished = wishOf(plant, asked, reader);
  const press = wished.press ?? plant.presses[reader.press] ?? Object.values(plant.presses)[0];
  const recipe = wished.recipe ?? bestRecipe(plant, wished.belt, press);
  const belt = wished.belt ?? (recipe && plant.belts[recipe.belt]);
  if (belt === undefined || press === undefined || recipe === undefined) return { missing: 'recipe', id: asked.id };
  return { belt, press, recipe, line: wished.line ?? lineOf(plant, belt) };
}

const kinds = { recipe: 'recipes', belt: 'belts', press: 'presses', position: 'positions' } as const;

function has(plant: Plant, { view, id }: Exclude<RecipesView, { view: 'list' }>): boolean {
  return Object.hasOwn(plant[kinds[view]], id);
}

function wishOf(plant: Plant, asked: Exclude<RecipesView, { view: 'list' }>, reader: Reader): Partial<Things> {
  const { view, id } = asked;
  if (view === 'belt') return withoutGaps({ belt: plant.belts[id] });
  if (view === 'press') return withoutGaps({ press: plant.presses[id] });
  if (view === 'recipe') {
    const recipe = plant.recipes[id];
    const press = recipe?.press === undefined ? undefined : plant.presses[recipe.press];
    return withoutGaps({ recipe, press, belt: recipe && plant.belts[recipe.belt] });
  }
  const chosen = Object.hasOwn(plant.presses, reader.press) ? { press: reader.press } : {};
  const { belt, press, recipe, line } = pressCycleReport(plant, id, { now: reader.now, ...chosen });
  return withoutGaps({ belt, press, recipe, line });
}

type Gaps = { readonly [K in keyof Things]?: Things[K] | undefined };

function withoutGaps(things: Gaps): Partial<Things> {
  return Object.fromEntries(Object.entries(things).filter(([, thing]) => thing !== undefined));
}

/** How near a recipe is to a belt on a press: made for both, for the belt, for the press, for neither. */
function nearness(recipe: Recipe, belt: Belt | undefined, press: Press | undefined): number {
  const ofBelt = recipe.belt === belt?.id ? 2 : 0;
  return ofBelt + (recipe.press === undefined || recipe.press === press?.id ? 1 : 0);
}

/** The nearest recipe there is, the latest of them: to begin with, not to press with unless it is made for both. */
export function bestRecipe(plant: Plant, belt: Belt | undefined, press: Press | undefined): Recipe | undefined {
  return Object.values(plant.recipes).sort(
    (a, b) => nearness(b, belt, press) - nearness(a, belt, press) || b.revision - a.revision,
  )[0];
}

/** The first line on which the belt runs. */
export function lineOf(plant: Plant, belt: Belt): Line | undefined {
  return Object.values(plant.lines).find((line) => line.belt === belt.id) ?? Object.values(plant.lines)[0];
}
