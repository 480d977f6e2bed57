import { lettering, type Point } from '../drawing/shapes.ts';
import type { Page, Shape } from '../page/page.ts';
import { textWidth } from '../type/text-width.ts';
import { wrapText } from '../type/wrap-text.ts';
import { codeModules, codePicture } from './code-picture.ts';
import { type Frame, rule, type SetPart } from './frame.ts';
import { leadingOf } from './piece.ts';
import { richLines } from './rich-lines.ts';
import { stateSign } from './signs.ts';
import { figureNote } from './text-pieces.ts';

/** A module that a phone near the paper still tells from the next: 0.4 mm, in points. */
const module = (0.4 * 72) / 25.4;
const quiet = 4;

/** Which position, what came out, how long it takes; at the right the code, where the page has one. */
export function firstHead(page: Page, frame: Frame, size: number): SetPart {
  const side = page.code === '' ? 0 : codeModules(page.code, 'M') * module;
  // The white edge of the code may stand in the white edge of the sheet.
  const edge = quiet * module;
  const width = frame.inner - (side === 0 ? 0 : side - edge);
  const words = headWords(page, { x: frame.left, y: frame.left }, { width, size });
  const corner = { x: frame.left + frame.inner - side + edge, y: frame.left - edge };
  const end = Math.max(words.end, side === 0 ? 0 : corner.y + side - edge) + 5;
  const code = side === 0 ? [] : [codePicture(page.code, corner, side)];
  return { shapes: [...words.shapes, ...code, rule(frame, end, 1.4)], end };
}

interface Column {
  readonly width: number;
  readonly size: number;
}

/** Largest type of a title. */
const titleShare = 2.2;

function headWords(page: Page, { x, y: top }: Point, { width, size }: Column): SetPart {
  const { figure, label } = page.time;
  const large = size * Math.min(titleShare, (titleShare * width) / textWidth(page.title, size * titleShare, true));
  const value = `${figure.value}\u00a0${figure.unit}`;
  const time = [{ text: `${label}:` }, { text: value, bold: true }, { text: figureNote(figure), soft: true }];
  let y = top + size * 1.9;
  const shapes: Shape[] = [lettering(page.title, { x, y }, { size: large, bold: true })];
  for (const line of wrapText(page.subtitle, { size, width })) {
    y += leadingOf(size) + 1.5;
    shapes.push(lettering(line, { x, y }, { size, ink: 'soft' }));
  }
  y += 3;
  for (const [i, line] of wrapText(page.state.word, { size, width: width - 12, bold: true }).entries()) {
    y += leadingOf(size);
    if (i === 0) shapes.push(...stateSign[page.state.shape]({ x: x + 4, y: y - size * 0.32 }, 3));
    shapes.push(lettering(line, { x: x + 12, y }, { size, bold: true }));
  }
  y += 2;
  for (const piece of richLines(time, width, size)) {
    shapes.push(...piece.draw({ x, y: y + leadingOf(size) - size }));
    y += leadingOf(size);
  }
  if (page.codeText !== undefined) {
    y += leadingOf(size) + 2;
    shapes.push(lettering(page.codeText, { x, y }, { size, bold: true }));
  }
  return { shapes, end: y };
}

const between = ' · ';

/** As many parts as one line holds, none of them cut; the first in any case. */
function asMuch([first = '', ...more]: readonly string[], width: number, size: number): string {
  let line = wrapText(first, { size, width, bold: true })[0] ?? first;
  for (const part of more) {
    const longer = line + between + part;
    if (textWidth(longer, size, true) > width) break;
    line = longer;
  }
  return line;
}

/** The head of every sheet but the first: as much of the title as one line holds, and the code to read. */
export function nextHead(page: Page, frame: Frame, size: number): SetPart {
  const y = frame.left + size;
  const code = page.codeText ?? '';
  const width = frame.inner - (code === '' ? 0 : textWidth(code, size, true) + 10);
  const title = asMuch([page.title, ...page.subtitle.split(between)], width, size);
  return {
    shapes: [
      lettering(title, { x: frame.left, y }, { size, bold: true }),
      ...(code === ''
        ? []
        : [lettering(code, { x: frame.left + frame.inner, y }, { size, bold: true, anchor: 'end' })]),
      rule(frame, y + 4, 1.4),
    ],
    end: y + 4,
  };
}
