import type { Drawing, Shape } from '../page/page.ts';
import { textWidth } from '../type/text-width.ts';
import { boxesOverlap, textBox } from './boxes.ts';
import { lettering, type Point, polyline, ring, type Stroke } from './shapes.ts';

/** One axis: what it spans, and where a number stands at it. */
export interface PlotAxis {
  readonly min: number;
  readonly max: number;
  readonly ticks: readonly { readonly at: number; readonly text: string }[];
  /** Unit, at the end of the axis. */
  readonly unit: string;
}

/** A line of a plot; lines differ by pattern and width, never by colour alone. */
export interface PlotLine {
  readonly label: string;
  readonly points: readonly Point[];
  readonly stroke: Stroke;
  /** Drawn at each of its points: somebody read a value there. */
  readonly mark?: 'cross' | 'ring';
}

export interface Plot {
  readonly id: string;
  readonly alt: string;
  readonly width: number;
  /** Of the field in which the lines run. */
  readonly fieldHeight: number;
  readonly x: PlotAxis;
  readonly y: PlotAxis;
  readonly lines: readonly PlotLine[];
  /** Moments, as lines from top to bottom. */
  readonly uprights: readonly { readonly at: number; readonly label: string }[];
  /** A value that counts, as a line across. */
  readonly level?: number;
}

const size = 7.5;
const leading = 9.5;
const left = 26;
const right = 8;
const sample = 18;

interface Field {
  readonly top: number;
  readonly bottom: number;
  readonly left: number;
  readonly right: number;
}

type Place = (point: Point) => Point;

/** Lines over a common axis with their legend below, numbers at both axes, moments named above. */
export function plot(drawn: Plot): Drawing {
  const names = namesAbove(drawn);
  const top = names.rows * leading + 5;
  const field: Field = { top, bottom: top + drawn.fieldHeight, left, right: drawn.width - right };
  const place: Place = ({ x, y }) => ({
    x: field.left + ((field.right - field.left) * (x - drawn.x.min)) / (drawn.x.max - drawn.x.min),
    y: field.bottom - (drawn.fieldHeight * (y - drawn.y.min)) / (drawn.y.max - drawn.y.min),
  });
  const legend = legendShapes(drawn, field.bottom + 2 * leading + 4);
  return {
    id: drawn.id,
    alt: drawn.alt,
    width: drawn.width,
    height: legend.bottom,
    shapes: [
      ...frame(field),
      ...axes(drawn, field, place),
      ...moments(drawn, field, place),
      ...drawn.lines.flatMap((line) => lineShapes(line, place)),
      ...names.shapes,
      ...legend.shapes,
    ],
  };
}

function lineShapes({ points, stroke, mark }: PlotLine, place: Place): Shape[] {
  const placed = points.map(place);
  return [
    ...(placed.length > 1 || mark === undefined ? [polyline(placed, stroke)] : []),
    ...(mark === undefined ? [] : placed.flatMap((point) => markShapes(mark, point))),
  ];
}

const markSize = 3;

function markShapes(mark: 'cross' | 'ring', { x, y }: Point): Shape[] {
  if (mark === 'ring') return [ring({ x, y }, markSize, { width: 1.2, ink: 'accent' })];
  return [-1, 1].map((side) =>
    polyline(
      [
        { x: x - markSize, y: y - side * markSize },
        { x: x + markSize, y: y + side * markSize },
      ],
      { width: 1.2, ink: 'accent' },
    ),
  );
}

function frame(field: Field): Shape[] {
  const corner = { x: field.left, y: field.bottom };
  return [polyline([{ x: field.left, y: field.top }, corner, { x: field.right, y: field.bottom }], { width: 0.7 })];
}

function axes({ x, y, level }: Plot, field: Field, place: Place): Shape[] {
  const mark = (from: Point, to: Point): Shape => polyline([from, to], { width: 0.4 });
  const below = x.ticks.flatMap(({ at, text }) => {
    const point = { ...place({ x: at, y: y.min }) };
    return [
      mark(point, { x: point.x, y: point.y + 2.5 }),
      lettering(text, { x: point.x, y: point.y + leading + 1 }, { size, anchor: 'middle' }),
    ];
  });
  const beside = y.ticks.flatMap(({ at, text }) => {
    const point = place({ x: x.min, y: at });
    return [
      mark({ x: point.x - 2.5, y: point.y }, point),
      lettering(text, { x: point.x - 4, y: point.y + 2.6 }, { size, anchor: 'end' }),
    ];
  });
  const units = [
    lettering(y.unit, { x: 0, y: field.top - 3 }, { size, ink: 'soft' }),
    lettering(x.unit, { x: field.right, y: field.bottom + 2 * leading }, { size, anchor: 'end', ink: 'soft' }),
  ];
  const across = level === undefined ? [] : [place({ x: x.min, y: level }), place({ x: x.max, y: level })];
  return [
    ...below,
    ...beside,
    ...units,
    ...(across.length > 0 ? [polyline(across, { width: 0.5, dash: [1, 2] })] : []),
  ];
}

function moments({ uprights, y }: Plot, field: Field, place: Place): Shape[] {
  return uprights.map(({ at }) => {
    const { x } = place({ x: at, y: y.min });
    return polyline(
      [
        { x, y: field.top },
        { x, y: field.bottom },
      ],
      { width: 0.5, dash: [3, 1.5] },
    );
  });
}

/** Names of the moments, each in the first row in which it touches no other. */
function namesAbove({ uprights, width, x }: Plot): { readonly shapes: readonly Shape[]; readonly rows: number } {
  const span = width - right - left;
  const placed: { row: number; shape: Shape & { shape: 'text' } }[] = [];
  for (const { at, label } of uprights) {
    const half = textWidth(label, size, true) / 2;
    const middle = left + (span * (at - x.min)) / (x.max - x.min);
    const centre = Math.min(Math.max(middle, left + half), width - half - 1);
    const inRow = (row: number) =>
      lettering(label, { x: centre, y: row }, { size, anchor: 'middle', bold: true }) as Shape & { shape: 'text' };
    let row = 0;
    while (placed.some((other) => other.row === row && near(other.shape, inRow(0)))) row += 1;
    placed.push({ row, shape: inRow(0) });
  }
  const rows = Math.max(1, ...placed.map(({ row }) => row + 1));
  return { rows, shapes: placed.map(({ row, shape }) => ({ ...shape, y: (rows - row) * leading })) };
}

/** Two names in one row that stand closer than a space. */
function near(one: Shape & { shape: 'text' }, other: Shape & { shape: 'text' }): boolean {
  const box = textBox({ ...other, y: 0 });
  return boxesOverlap(textBox({ ...one, y: 0 }), { ...box, x1: box.x1 - 4, x2: box.x2 + 4 });
}

/** What each pattern means, as many in a row as have room. */
function legendShapes(
  { lines, width }: Plot,
  top: number,
): { readonly shapes: readonly Shape[]; readonly bottom: number } {
  const shapes: Shape[] = [];
  let [x, y] = [left, top + size];
  for (const { label, stroke, mark } of lines) {
    const wide = sample + 4 + textWidth(label, size);
    if (x > left && x + wide > width - right) [x, y] = [left, y + leading];
    const middle = y - 2.6;
    shapes.push(
      polyline(
        [
          { x, y: middle },
          { x: x + sample, y: middle },
        ],
        stroke,
      ),
      ...(mark === undefined ? [] : markShapes(mark, { x: x + sample / 2, y: middle })),
      lettering(label, { x: x + sample + 4, y }, { size }),
    );
    x += wide + 12;
  }
  return { shapes, bottom: y + 4 };
}
