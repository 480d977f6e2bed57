import type { Drawing, Shape } from '../page/page.ts';
import { wrapText } from '../type/wrap-text.ts';
import { lettering, type Point, polygon, polyline, rectangle, ring } from './shapes.ts';

/** Words of the press stack, bottom first, as the hands lay it. */
export interface StackWords {
  readonly alt: string;
  readonly bottomPlate: string;
  /** Template with pocket and mat. */
  readonly template: string;
  readonly belt: string;
  readonly strips: string;
  readonly cloth: string;
  readonly pressPlate: string;
  readonly sensorLead: string;
}

const width = 190;
const size = 7.5;
const leading = 9;
const labelX = 84;
const gap = 2.5;
const picture = { left: 2, right: 74 } as const;

interface Layer {
  readonly text: string;
  readonly draw: (y: number) => readonly Shape[];
}

const span = picture.right - picture.left;

const slab =
  (thickness: number, fill: 'paper' | 'soft' | 'ink') =>
  (y: number): Shape[] => [rectangle({ x: picture.left, y: y - thickness / 2 }, { w: span, h: thickness }, fill)];

/** The mat with its pocket: a flat U that the belt lies in. */
function template(y: number): Shape[] {
  const [a, b, c, d] = [picture.left + 13, picture.left + 27, picture.right - 27, picture.right - 13];
  const outline: Point[] = [
    { x: a, y: y - 4 },
    { x: b, y: y - 4 },
    { x: b, y },
    { x: c, y },
    { x: c, y: y - 4 },
    { x: d, y: y - 4 },
    { x: d, y: y + 4 },
    { x: a, y: y + 4 },
  ];
  return [polygon(outline, 'paper', { width: 0.8 })];
}

/** The belt over the pocket, and the seam of its fingers. */
function belt(y: number): Shape[] {
  const left = picture.left + 28;
  const wide = span - 56;
  const teeth = [0, 1, 2, 3, 4, 5, 6].map((i) => ({ x: left + (wide * i) / 6, y: y + (i % 2 === 0 ? 1.6 : -1.6) }));
  return [rectangle({ x: left, y: y - 2.4 }, { w: wide, h: 4.8 }, 'paper'), polyline(teeth, { width: 0.5 })];
}

/** Strips on both sides, as high as the belt. */
function strips(y: number): Shape[] {
  const strip = (x: number): Shape => rectangle({ x, y: y - 2.4 }, { w: 11, h: 4.8 }, 'soft');
  return [strip(picture.left + 1), strip(picture.right - 12)];
}

const cloth = (y: number): Shape[] => [
  polyline(
    [
      { x: picture.left, y },
      { x: picture.right, y },
    ],
    { width: 1.4, dash: [3, 2] },
  ),
];

const sensorLead = (y: number): Shape[] => [
  polyline(
    [
      { x: picture.right, y },
      { x: picture.left + 38, y },
    ],
    { width: 0.9 },
  ),
  ring({ x: picture.left + 36, y }, 2, { width: 0.9 }),
];

const layersOf = (words: StackWords): Layer[] => [
  { text: words.bottomPlate, draw: slab(6, 'paper') },
  { text: words.template, draw: template },
  { text: words.strips, draw: strips },
  { text: words.belt, draw: belt },
  { text: words.cloth, draw: cloth },
  { text: words.pressPlate, draw: slab(5, 'paper') },
  { text: words.sensorLead, draw: sensorLead },
];

/** The press stack pulled apart, the first thing laid at the bottom. Numbers give the order of the hands. */
export function stackDrawing(words: StackWords): Drawing {
  const layers = layersOf(words).map((layer, i) => ({
    ...layer,
    lines: wrapText(`${i + 1}  ${layer.text}`, { size, width: width - labelX - 1 }),
  }));
  const shapes: Shape[] = [];
  let y = 2;
  for (const { lines, draw } of layers.toReversed()) {
    const height = Math.max(lines.length * leading, 11);
    const middle = y + height / 2;
    shapes.push(
      ...draw(middle),
      polyline(
        [
          { x: picture.right + 2, y: middle },
          { x: labelX - 3, y: middle },
        ],
        { width: 0.4 },
      ),
    );
    lines.forEach((line, i) => {
      shapes.push(
        lettering(line, { x: labelX, y: middle - ((lines.length - 1) * leading) / 2 + i * leading + 2.7 }, { size }),
      );
    });
    y += height + gap;
  }
  return { id: 'stack', alt: words.alt, width, height: y, shapes };
}
