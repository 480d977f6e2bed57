import type { Drawing, Shape } from '../page/page.ts';
import { textWidth } from '../type/text-width.ts';
import { lettering, type Point, polyline, textSize } from './shapes.ts';

/** Times and temperatures of a press cycle, and their words in the reader's language and units. */
export interface RecipeCurve {
  readonly alt: string;
  readonly ready_s: number;
  readonly dwell_s: number;
  readonly open_s: number;
  readonly top_degC: number;
  readonly open_degC: number;
  /** As computed; without it the shape is a sketch. */
  readonly computed?: readonly { readonly t_s: number; readonly degC: number }[];
  readonly heat: string;
  readonly hold: string;
  readonly cool: string;
  /** At the dotted line: `open at 50 °C or less`. */
  readonly openAt: string;
}

const width = 190;
const axis = { left: 4, right: 186, top: 13, bottom: 48 } as const;
const start_degC = 20;

/** Heating bends towards the set point; cooling falls by a constant share in equal times. A sketch of shape. */
function points(curve: RecipeCurve): Point[] {
  const placed = ({ t_s, degC }: { readonly t_s: number; readonly degC: number }): Point => ({
    x: xAt(curve, t_s),
    y: yAt(curve, degC),
  });
  if (curve.computed) return curve.computed.map(placed);
  const end = curve.ready_s + curve.dwell_s;
  const heating = Array.from({ length: 13 }, (_, i) => i / 12).map((t) => {
    const rise = (1 - Math.exp(-1.6 * t)) / (1 - Math.exp(-1.6));
    return { t_s: t * curve.ready_s, degC: start_degC + (curve.top_degC - start_degC) * rise };
  });
  const share = (curve.open_degC - start_degC) / (curve.top_degC - start_degC);
  const cooling = Array.from({ length: 13 }, (_, i) => i / 12).map((t) => ({
    t_s: end + t * (curve.open_s - end),
    degC: start_degC + (curve.top_degC - start_degC) * share ** t,
  }));
  return [...heating, ...cooling].map(placed);
}

const xAt = (curve: RecipeCurve, t_s: number): number => axis.left + ((axis.right - axis.left) * t_s) / curve.open_s;
const yAt = (curve: RecipeCurve, degC: number): number =>
  axis.bottom - ((axis.bottom - axis.top) * (degC - start_degC)) / (curve.top_degC - start_degC);

/** Text centred at x but kept inside the drawing. */
function centred(text: string, x: number, y: number, bold = false): Shape {
  const half = textWidth(text, textSize, bold) / 2;
  return lettering(text, { x: Math.min(Math.max(x, half + 1), width - 1 - half), y }, { anchor: 'middle', bold });
}

interface Word {
  readonly text: string;
  readonly anchor: 'start' | 'end';
  readonly row: number;
}

/** Under the axis: heating on the left, cooling and opening on the right, a row lower where they would meet. */
function wordsBelow({ heat, cool, openAt }: RecipeCurve): Word[] {
  const beside = textWidth(heat, textSize) + textWidth(cool, textSize) + textSize <= axis.right - axis.left;
  const first = beside ? 0 : 1;
  return [
    { text: heat, anchor: 'start', row: 0 },
    { text: cool, anchor: 'end', row: first },
    { text: openAt, anchor: 'end', row: first + 1 },
  ];
}

/** Heat, hold and cool over time, with the line at which the press may be opened. */
export function recipeCurve(curve: RecipeCurve): Drawing {
  const [readyX, holdX] = [xAt(curve, curve.ready_s), xAt(curve, curve.ready_s + curve.dwell_s)];
  const openY = yAt(curve, curve.open_degC);
  const words = wordsBelow(curve);
  const upright = (x: number): Shape =>
    polyline(
      [
        { x, y: axis.top },
        { x, y: axis.bottom },
      ],
      { width: 0.5 },
    );
  return {
    id: 'recipe-curve',
    alt: curve.alt,
    width,
    height: axis.bottom + 12 + 9.5 * Math.max(...words.map(({ row }) => row)),
    shapes: [
      polyline([
        { x: axis.left, y: axis.bottom },
        { x: axis.right, y: axis.bottom },
      ]),
      polyline(
        [
          { x: axis.left, y: openY },
          { x: axis.right, y: openY },
        ],
        { width: 0.7, dash: [1.5, 2] },
      ),
      polyline(points(curve), { width: 1.8, ink: 'accent' }),
      upright(readyX),
      upright(holdX),
      centred(curve.hold, (readyX + holdX) / 2, axis.top - 5, true),
      ...words.map(({ text, anchor, row }) =>
        lettering(text, { x: anchor === 'end' ? axis.right : axis.left, y: axis.bottom + 9 + row * 9.5 }, { anchor }),
      ),
    ],
  };
}
