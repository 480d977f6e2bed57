import type { PositionLabel } from '@loopwright/jobs';
import type { Voice } from '@loopwright/words';
import { plantMark, positionCode } from '../code/position-code.ts';
import { lettering, type Point, polyline } from '../drawing/shapes.ts';
import type { Shape } from '../page/page.ts';
import { codePicture } from '../paper/code-picture.ts';
import { capHeight, descent, textWidth } from '../type/text-width.ts';
import { wrapText } from '../type/wrap-text.ts';
import { mm, label as size } from './label-paper.ts';

/**
 * Side of the code with its quiet zone. The 33 modules of an id of eight signs are then 1.45 mm wide, the 37 of 25 signs
 * 1.3 mm. A phone's main camera sees about 1.37 m across per metre of distance (a lens like 26 mm on film: 36/26), 1,920
 * dots of video: at arm's length, 0.6 m, a module of 1.3 mm is 3 dots wide, and two are enough for a reader.
 */
const codeSide = 48 * mm;
const largest = 32;
const smallest = 20;
const textSize = 10.5;
const headSize = 7;

/** The label of one position with its corner at a point: code on the left, words on the right. */
export function labelShapes(label: PositionLabel, corner: Point, speech: Voice): readonly Shape[] {
  const code = positionCode({ position: label.position, plant: plantMark(label.plant.id) });
  const left = corner.x + codeSide + 0.5 * mm;
  const width = corner.x + size.width - 3 * mm - left;
  const end = corner.y + size.height - 4 * mm;
  const square = { x: corner.x, y: corner.y + (size.height - codeSide) / 2 };
  return [
    codePicture(code, square, codeSide, 'Q'),
    ...words(label, speech, { left, width, top: corner.y + 5 * mm, bottom: end - headSize }),
    lettering(
      cut(label.plant.name, { size: headSize, width, lines: 1 })[0] ?? '',
      { x: left, y: end },
      {
        size: headSize,
        ink: 'soft',
      },
    ),
  ];
}

interface Column {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  /** Down to where the words may reach. */
  readonly bottom: number;
}

/** A line of words; `opens` says that a new fact begins with it, where room to spare goes. */
interface Line {
  readonly text: string;
  readonly size: number;
  readonly soft?: boolean;
  readonly opens?: boolean;
}

const mostBetween = 9;

/** Id, line, place and belt below each other; what room is left stands between them. */
function words(label: PositionLabel, speech: Voice, { left, top, width, bottom }: Column): Shape[] {
  const lines = linesOf(label, speech, width);
  const high = (line: Line): number => line.size * (capHeight + descent) + (line.soft ? 1.2 : 0);
  const spare = bottom - top - lines.reduce((sum, line) => sum + high(line), 0);
  const between = Math.min(mostBetween, spare / lines.filter(({ opens }) => opens).length);
  let y = top;
  return lines.map((line) => {
    if (line.opens) y += between;
    const baseline = { x: left, y: y + line.size * capHeight };
    y += high(line);
    return lettering(line.text, baseline, {
      size: line.size,
      bold: line.soft !== true,
      ink: line.soft === true ? 'soft' : 'ink',
    });
  });
}

function linesOf(
  { position, line, lineName, place, belt, width_m }: PositionLabel,
  speech: Voice,
  width: number,
): Line[] {
  const id = idLines(position, width);
  const facts = [
    { head: speech.say('labels.line'), text: `${line} ${lineName}`, lines: 1 },
    { head: speech.say('labels.place'), text: place ?? '', lines: id.lines.length === 1 ? 2 : 1 },
    { head: speech.say('labels.belt'), text: `${belt} · ${speech.write(width_m, 'length')}`, lines: 1 },
  ].filter(({ text }) => text !== '');
  const set = facts.flatMap(({ head, text, lines }): Line[] => [
    { text: head, size: headSize, soft: true, opens: true },
    ...cut(text, { size: textSize, width, lines, bold: true }).map((part) => ({ text: part, size: textSize })),
  ]);
  return [...id.lines.map((text) => ({ text, size: id.size })), ...set];
}

/** The id as large as the room allows: on one line, else broken at a hyphen, else wherever it must. */
function idLines(id: string, width: number): { readonly lines: readonly string[]; readonly size: number } {
  const fitting = (lines: readonly string[]): number =>
    Math.min(largest, ...lines.map((line) => (0.999 * width * largest) / textWidth(line, largest, true)));
  if (fitting([id]) >= smallest) return { lines: [id], size: fitting([id]) };
  const [best = [id]] = twoParts(id).toSorted((a, b) => fitting(b) - fitting(a));
  return { lines: best, size: Math.min(fitting(best), 0.8 * smallest) };
}

/** Every way to break an id behind a hyphen, a dot or a low line; behind any sign where it has none. */
function twoParts(id: string): string[][] {
  const signs = Array.from(id);
  const ends = signs.flatMap((sign, i) => (/[-._]/.test(sign) && i < signs.length - 1 ? [i + 1] : []));
  const places = ends.length > 0 ? ends : [Math.ceil(signs.length / 2)];
  return places.map((at) => [signs.slice(0, at).join(''), signs.slice(at).join('')]);
}

interface Room {
  readonly size: number;
  readonly width: number;
  readonly lines: number;
  readonly bold?: boolean;
}

/** A text in so many lines; what does not fit is left out, and dots say so. */
function cut(text: string, { size: height, width, lines, bold = false }: Room): string[] {
  const all = wrapText(text, { size: height, width, bold });
  if (all.length <= lines) return all;
  const kept = all.slice(0, lines);
  const last = Array.from(kept[lines - 1] ?? '');
  while (last.length > 0 && textWidth(`${last.join('')}…`, height, bold) > width) last.pop();
  return [...kept.slice(0, -1), `${last.join('').trimEnd()}…`];
}

const away = 0.5 * mm;
const markLength = 2 * mm;

/** Marks to cut along, outside the label: two at each of its corners. */
export function cutMarks({ x, y }: Point): readonly Shape[] {
  const { width, height } = size;
  return [
    { x, y, dx: -1, dy: -1 },
    { x: x + width, y, dx: 1, dy: -1 },
    { x, y: y + height, dx: -1, dy: 1 },
    { x: x + width, y: y + height, dx: 1, dy: 1 },
  ].flatMap(({ x: cx, y: cy, dx, dy }) => [
    polyline(
      [
        { x: cx + dx * away, y: cy },
        { x: cx + dx * (away + markLength), y: cy },
      ],
      { width: 0.3 },
    ),
    polyline(
      [
        { x: cx, y: cy + dy * away },
        { x: cx, y: cy + dy * (away + markLength) },
      ],
      { width: 0.3 },
    ),
  ]);
}
