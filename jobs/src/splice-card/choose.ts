import {
  type Belt,
  type Die,
  type Line,
  type Plant,
  type Press,
  pocketTakesThickness,
  pocketTakesWidth,
  type Recipe,
  type Roll,
  type Template,
} from '@loopwright/plant';

/** Rolls and lines are cut to a tenth of a millimetre at best. */
const sameWidth_m = 0.00005;

/** The template for that die whose pocket takes the belt. */
export function chooseTemplate(plant: Plant, die: Die | undefined, belt: Belt, width_m: number): Template | undefined {
  return Object.values(plant.templates).find(
    (template) =>
      template.die === die?.id &&
      pocketTakesWidth(template, width_m) &&
      pocketTakesThickness(template, belt.thickness_m),
  );
}

/** The press asked for, else the first whose check is in date, else the first. */
export function choosePress(plant: Plant, wanted: string | undefined, now: string): Press | undefined {
  if (wanted !== undefined) return plant.presses[wanted];
  const all = Object.values(plant.presses);
  return all.find((press) => checkOverdue(press, now) === false) ?? all[0];
}

/** Days since the press was checked, or undefined when nobody noted it. */
export function checkAge_days(press: Press, now: string): number | undefined {
  return press.checkedOn === undefined
    ? undefined
    : Math.floor((Date.parse(now) - Date.parse(press.checkedOn)) / 86_400_000);
}

/** Whether the check is overdue; undefined when nobody noted a check, or noted it for a day that is still to come. */
export function checkOverdue(press: Press, now: string): boolean | undefined {
  const age = checkAge_days(press, now);
  return age === undefined || isAhead(age) ? undefined : age > press.checkInterval_days;
}

/** Whether a check of that age lies ahead. East of Greenwich a day begins before it does in UTC. */
export function isAhead(checkAge_days: number): boolean {
  return checkAge_days < -1;
}

/** The latest recipe for this belt: made for this press if there is one, else one for any press. */
export function chooseRecipe(plant: Plant, belt: Belt, press: Press | undefined): Recipe | undefined {
  const latest = (recipes: Recipe[]): Recipe | undefined => recipes.sort((a, b) => b.revision - a.revision)[0];
  const forBelt = Object.values(plant.recipes).filter((recipe) => recipe.belt === belt.id);
  return (
    latest(forBelt.filter((recipe) => press !== undefined && recipe.press === press.id)) ??
    latest(forBelt.filter((recipe) => recipe.press === undefined))
  );
}

/** The roll to cut from: belt and width fit; long enough before short, sealed before open, then the shortest. */
export function chooseRoll(plant: Plant, belt: Belt, line: Line, needed_m: number | undefined): Roll | undefined {
  const long = (roll: Roll): number => (needed_m === undefined || roll.left_m >= needed_m ? 0 : 1);
  return Object.values(plant.rolls)
    .filter((roll) => roll.belt === belt.id && Math.abs(roll.width_m - line.width_m) <= sameWidth_m)
    .sort((a, b) => long(a) - long(b) || Number(b.sealed) - Number(a.sealed) || a.left_m - b.left_m)[0];
}
