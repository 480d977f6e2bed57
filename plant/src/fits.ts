import type { Plant } from './plant.ts';
import type { Belt } from './things/belt.ts';
import type { Die, Template } from './things/tooling.ts';

/** Dies and data sheets are made to a tenth of a millimetre; half of that is rounding. Common practice, no source. */
const sameLength_m = 0.00005;
/** How much wider than the belt a pocket may be and still guide it. Common practice, no source. */
const pocketPlay_m = 0.001;
/** A pocket this far from the belt's thickness still fits, for belts vary too. Common practice, no source. */
const pocketDepthPlay_m = 0.0003;

/**
 * Whether a die cuts the fingers a belt's data sheet asks for, whatever the width.
 *
 * @param die - with pitch and finger length
 * @param belt - with pitch and finger length
 */
export function dieFitsBelt(die: Die, belt: Belt): boolean {
  return (
    Math.abs(die.pitch_m - belt.fingerPitch_m) <= sameLength_m &&
    Math.abs(die.fingerLength_m - belt.fingerLength_m) <= sameLength_m
  );
}

/**
 * The dies that can punch a belt of a width, in the plant's order.
 *
 * @param plant - with its dies
 * @param belt - to be punched
 * @param width_m - of the belt [m]
 */
export function diesFor(plant: Plant, belt: Belt, width_m: number): readonly Die[] {
  return Object.values(plant.dies).filter((die) => dieFitsBelt(die, belt) && die.maxWidth_m >= width_m);
}

/**
 * Whether a template's pocket takes a belt of a width, with the play a pocket may have.
 *
 * @param template - with its pocket
 * @param width_m - of the belt [m]
 */
export function pocketTakesWidth(template: Template, width_m: number): boolean {
  const play_m = template.pocketWidth_m - width_m;
  return play_m >= -sameLength_m && play_m <= pocketPlay_m;
}

/**
 * Whether a template's pocket is about as deep as a belt is thick.
 *
 * @param template - with its pocket
 * @param thickness_m - of the belt [m]
 */
export function pocketTakesThickness(template: Template, thickness_m: number): boolean {
  return Math.abs(template.pocketDepth_m - thickness_m) <= pocketDepthPlay_m + 1e-9;
}
