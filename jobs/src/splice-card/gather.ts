import type { Belt, Die, Line, Press, Roll, Template } from '@loopwright/plant';
import { computed, given, type Quantity } from '../quantity.ts';
import type { GatherItem } from './card.ts';

export interface Ready {
  readonly belt: Belt;
  readonly line: Line;
  readonly roll: Roll | undefined;
  readonly die: Die | undefined;
  readonly template: Template | undefined;
  readonly press: Press | undefined;
  /** Square length to take off the roll [m], when known. */
  readonly square_m: number | undefined;
}

/** What must lie ready before the knife comes out, in the order of fetching, with where it lies. */
export function gather(ready: Ready): readonly GatherItem[] {
  const { belt, roll, die, template, press, line, square_m } = ready;
  const antistatic = belt.antistatic || line.antistaticArea;
  return [
    {
      code: 'belt-roll',
      thing: roll?.id ?? belt.id,
      ...placeOf(roll),
      ...(square_m !== undefined && { needed: computed('length', square_m) }),
      ...(roll && { left: given('length', roll.left_m, roll, 'left_m') }),
    },
    { code: 'die', ...thingOf(die), ...placeOf(die) },
    { code: 'template', ...thingOf(template), ...placeOf(template) },
    { code: 'press', ...thingOf(press), ...placeOf(press) },
    { code: 'lead' },
    { code: 'release-cloth' },
    { code: 'edge-strips', needed: stripHeight(belt) },
    { code: 'dummy-pieces' },
    { code: 'gloves-glasses' },
    { code: 'lock-and-tag' },
    { code: 'knife-square-tape' },
    { code: 'chalk' },
    ...(antistatic ? [{ code: 'resistance-meter' } as const] : []),
  ];
}

/** Edge strips stand as high as the belt is thick. */
export function stripHeight(belt: Belt): Quantity {
  return given('shortLength', belt.thickness_m, belt, 'thickness_m');
}

function thingOf(thing: { readonly id: string } | undefined): { thing?: string } {
  return thing ? { thing: thing.id } : {};
}

function placeOf(thing: { readonly place?: string | undefined } | undefined): { place?: string } {
  return thing?.place ? { place: thing.place } : {};
}
