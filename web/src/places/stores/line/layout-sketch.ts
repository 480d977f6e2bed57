import { beltPath, pathPolyline } from '@loopwright/engine/loop';
import { type Measurement, type Pulley, pathInput, type SurveyLayout, surveyPulleys } from '@loopwright/plant';
import type { Drawing, Ink, Shape } from '@loopwright/sheets';
import { hasTakeUp, type LineEnd, takeUpEnd } from './layout-facts.ts';
import { dimensionOf } from './sketch-dimension.ts';
import { arrowTo, circle, line, type Spot } from './sketch-shapes.ts';

/** What a sketch shows besides the layout itself. */
export interface SketchWish {
  readonly layout: SurveyLayout;
  readonly driveEnd: LineEnd;
  readonly takeUpEnd: LineEnd | undefined;
  /** The measurement to point at. */
  readonly focus?: Measurement;
  readonly alt: string;
}

const width = 260;
const infeedX = 30;
const bedY = 44;

/** Sizes of the sketch in its own units: chosen to be read, not to be true. */
const sketched = {
  infeedDiameter_m: 26,
  dischargeDiameter_m: 26,
  endDistance_m: 200,
  driveDiameter_m: 24,
  driveDrop_m: 38,
  driveSnubBefore_m: 19,
  driveSnubAfter_m: 19,
  driveSnubDrop_m: 20,
  driveSnubDiameter_m: 11,
  takeUpDiameter_m: 20,
  takeUpDrop_m: 42,
  takeUpSnubBefore_m: 17,
  takeUpSnubAfter_m: 17,
  takeUpSnubDrop_m: 20,
  takeUpSnubDiameter_m: 11,
} as const;

/** Where things under the bed stand: alone in the middle, else side by side. */
function places(layout: SurveyLayout) {
  const both = layout === 'bed-drive-bed-take-up';
  return { driveDistance_m: both ? 62 : 100, takeUpDistance_m: both ? 140 : 100 };
}

/** The pulleys of the sketch, as a survey of that layout finds them; y up. */
function sketchPulleys({ layout, driveEnd, takeUpEnd: said }: SketchWish): readonly Pulley[] {
  const sizes: Partial<Record<Measurement, number>> = { ...sketched, ...places(layout) };
  const used = Object.entries(sizes).filter(
    ([field]) =>
      (layout.startsWith('bed-drive') || !field.startsWith('drive')) &&
      (layout.endsWith('bed-take-up') || !field.startsWith('takeUp')),
  );
  return surveyPulleys({
    id: 'sketch',
    source: 'example',
    line: 'sketch',
    layout,
    driveEnd,
    ...(takeUpEnd(layout, driveEnd, said) === undefined ? {} : { takeUpEnd: takeUpEnd(layout, driveEnd, said) }),
    tapeError_m: 0,
    tapeShare: 0,
    diameterError_m: 0,
    infeedDiameter_m: sketched.infeedDiameter_m,
    dischargeDiameter_m: sketched.dischargeDiameter_m,
    endDistance_m: sketched.endDistance_m,
    ...Object.fromEntries(used),
  });
}

const spot = ({ x_m, y_m }: Pulley): Spot => ({ x: infeedX + x_m, y: bedY - y_m });

function belt(pulleys: readonly Pulley[]): Shape {
  const input = pathInput(pulleys, { thickness_m: 2 });
  const points = pathPolyline(beltPath(input), input.pulleys, 0.05);
  const d = points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${(infeedX + x).toFixed(1)} ${(bedY - y).toFixed(1)}`);
  return { shape: 'path', d: `${d.join(' ')} Z`, fill: 'none', ink: 'ink', width: 1.8 };
}

function rollers(): readonly Shape[] {
  const reach = sketched.endDistance_m - 28;
  const y = bedY - sketched.infeedDiameter_m / 2 - 6.4;
  return Array.from({ length: 12 }, (_, i) => circle({ x: infeedX + 14 + (i * reach) / 11, y }, 4, 'soft', 'paper'));
}

function goods(): readonly Shape[] {
  const y = bedY - sketched.infeedDiameter_m / 2 - 18;
  return arrowTo({ x: infeedX + 70, y }, { x: infeedX + 130, y }, 'soft');
}

/** The drive is filled, other pulleys are rings: told apart without colour. */
function pulleyShape(pulley: Pulley, ink: Ink): Shape {
  return circle(spot(pulley), pulley.diameter_m / 2, ink, pulley.role === 'drive' ? ink : 'paper');
}

/** An arrow beside the take-up: the way in which it tightens. */
function takeUpArrow(wish: SketchWish, pulleys: readonly Pulley[]): readonly Shape[] {
  const pulley = pulleys.find(({ role }) => role === 'take-up');
  if (pulley === undefined || !hasTakeUp(wish.layout)) return [];
  const end = takeUpEnd(wish.layout, wish.driveEnd, wish.takeUpEnd);
  const { x, y } = spot(pulley);
  const r = pulley.diameter_m / 2 + 4;
  if (end === undefined) return arrowTo({ x, y: y + r }, { x, y: y + r + 13 }, 'ink');
  const sign = end === 'infeed' ? -1 : 1;
  return arrowTo({ x: x + sign * r, y }, { x: x + sign * (r + 13), y }, 'ink');
}

/**
 * A sketch of a layout, not to scale: pulleys, belt, rollers, the way of the goods; the drive filled, the take-up with
 * an arrow; and the one measurement to take now.
 *
 * @param wish - layout, ends, and what to point at
 */
export function layoutSketch(wish: SketchWish): Drawing {
  const pulleys = sketchPulleys(wish);
  const marked = wish.focus === undefined ? undefined : dimensionOf(wish.focus, pulleys, spot);
  const isMarked = (pulley: Pulley) => marked?.pulleys.includes(pulley.id) === true;
  const centres = pulleys.filter((_, i) => i === 0 || i === pulleys.length - 1).map(spot);
  return {
    id: `sketch-${wish.layout}`,
    alt: wish.alt,
    width,
    height: wish.focus === undefined && !wish.layout.includes('bed') ? 64 : 124,
    shapes: [
      ...rollers(),
      ...goods(),
      belt(pulleys),
      ...pulleys.map((pulley) => pulleyShape(pulley, isMarked(pulley) ? 'accent' : 'ink')),
      ...(wish.focus === undefined ? takeUpArrow(wish, pulleys) : []),
      ...(marked?.fromCentreLine === true ? [line(centres, 'soft', [4, 3])] : []),
      ...(marked?.shapes ?? []),
    ],
  };
}
