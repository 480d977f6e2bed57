import { Refusal } from '@loopwright/engine/refusal';
import {
  type Belt,
  type Die,
  diesFor,
  type Line,
  type Plant,
  type Position,
  type Press,
  type Recipe,
  type Roll,
  type Template,
} from '@loopwright/plant';
import { endlessLength } from '../loop/endless-length.ts';
import { isLoop, type Loop, loopOf, type NoLoop } from '../loop/loop.ts';
import type { CardLengths } from './card.ts';
import { choosePress, chooseRecipe, chooseRoll, chooseTemplate } from './choose.ts';
import { cardLengths } from './lengths.ts';

export interface CardOptions {
  /** The moment of asking, ISO text in UTC. */
  readonly now: string;
  /** Id of the press to use; without it one whose check is in date. */
  readonly press?: string;
  /** Hands on the job. Default 1. */
  readonly people?: 1 | 2;
}

/** What the plant knows about a position, and which of its things the job will use. */
export interface Ground {
  readonly now: string;
  readonly people: 1 | 2;
  readonly position: Position;
  readonly line: Line;
  readonly belt: Belt;
  readonly loop: Loop | undefined;
  readonly noPath: NoLoop | undefined;
  readonly lengths: CardLengths | undefined;
  readonly die: Die | undefined;
  readonly template: Template | undefined;
  readonly press: Press | undefined;
  readonly recipe: Recipe | undefined;
  readonly roll: Roll | undefined;
}

/**
 * Finds position, line and belt, solves the loop and chooses die, template, press, recipe and roll.
 *
 * @throws unknown-position, unknown-press, dangling-line, dangling-belt
 */
export function groundOf(plant: Plant, positionId: string, options: CardOptions): Ground {
  const position = found(plant.positions, positionId, 'position', 'unknown-position');
  const line = found(plant.lines, position.line, 'position.line', 'dangling-line');
  const belt = found(plant.belts, line.belt, 'line.belt', 'dangling-belt');
  if (options.press !== undefined) found(plant.presses, options.press, 'press', 'unknown-press');
  const solved = loopOf(plant, line, belt);
  const loop = isLoop(solved) ? solved : undefined;
  const die = diesFor(plant, belt, line.width_m)[0];
  const length = endlessLength(position, line, loop);
  const lengths = length && cardLengths(length, belt, die);
  const press = choosePress(plant, options.press, options.now);
  return {
    now: options.now,
    people: options.people ?? 1,
    position,
    line,
    belt,
    loop,
    noPath: isLoop(solved) ? undefined : solved,
    lengths,
    die,
    template: chooseTemplate(plant, die, belt, line.width_m),
    press,
    recipe: chooseRecipe(plant, belt, press),
    roll: chooseRoll(plant, belt, line, lengths?.square.value),
  };
}

function found<T>(things: Readonly<Record<string, T>>, id: string, path: string, code: string): T {
  const thing = Object.hasOwn(things, id) ? things[id] : undefined;
  if (thing === undefined) {
    throw new Refusal(code, path, { value: id, allowed: Object.keys(things).slice(0, 100).join(', ') });
  }
  return thing;
}
