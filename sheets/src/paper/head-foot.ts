import { lettering, type Point } from '../drawing/shapes.ts';
import type { Page, Shape } from '../page/page.ts';
import { textWidth } from '../type/text-width.ts';
import { wrapText } from '../type/wrap-text.ts';
import { codePicture } from './code-picture.ts';
import { type Frame, rule, type SetPart } from './frame.ts';
import { margin } from './paper-size.ts';
import { drawRuns } from './rich-lines.ts';
import { stateSign } from './signs.ts';
import { figureNote } from './text-pieces.ts';

const codeSide = 56;
const footerSize = 6.8;
const titleSize = 20;

const firstLine = (text: string, size: number, width: number, bold = false): string =>
  wrapText(text, { size, width, bold })[0] ?? '';

/** Which position, what state it is in, how long it takes; the code that says which card this is. */
export function frontHead(page: Page, frame: Frame): SetPart {
  const { left, inner } = frame;
  const room = inner - codeSide - 4;
  const { figure, label } = page.time;
  const size = 8.2;
  const value = `${figure.value}\u00a0${figure.unit}`;
  const time = [{ text: `${label}:` }, { text: value, bold: true }, { text: figureNote(figure), soft: true }];
  const large = Math.min(titleSize, (titleSize * room) / textWidth(page.title, titleSize, true));
  const at = (y: number, x = 0): Point => ({ x: left + x, y: margin + y });
  return {
    end: margin + 52,
    shapes: [
      lettering(page.title, at(15), { size: large, bold: true }),
      lettering(firstLine(page.subtitle, 7.6, room), at(25.5), { size: 7.6, ink: 'soft' }),
      ...stateSign[page.state.shape](at(34.2, 4), 3),
      lettering(firstLine(page.state.word, size, room - 12, true), at(37, 12), { size, bold: true }),
      ...drawRuns(time, at(47.5), size),
      codePicture(page.code, { x: left + inner - codeSide, y: margin - 5 }, codeSide),
      rule(frame, margin + 52, 1.4),
    ],
  };
}

export function backHead(page: Page, frame: Frame): SetPart {
  const y = margin + 9;
  const title = textWidth(`${page.title}  `, 10, true);
  return {
    end: y + 5,
    shapes: [
      lettering(page.title, { x: frame.left, y }, { size: 10, bold: true }),
      lettering(
        firstLine(page.subtitle, 7.5, frame.inner - title),
        { x: frame.left + title, y },
        { size: 7.5, ink: 'soft' },
      ),
      rule(frame, y + 5, 1.4),
    ],
  };
}

/** What binds the whole sheet: to be checked, whose word comes first, which version this is, which side. */
export function foot(
  page: Page,
  side: 1 | 2,
  frame: Frame,
): { readonly shapes: readonly Shape[]; readonly top: number } {
  const [check = '', rules = '', version = ''] = page.footer;
  const set = [
    ...wrapText(`${check} ${rules}`, { size: footerSize, width: frame.inner }),
    ...wrapText(`${version} · ${page.code}`, { size: footerSize, width: frame.inner - 24 }),
  ];
  const leading = footerSize * 1.18;
  const top = frame.bottom - set.length * leading - 3;
  const baseline = (i: number): number => top + 3 + footerSize + i * leading;
  const end = { x: frame.left + frame.inner, y: baseline(set.length - 1) };
  return {
    top: top - 2,
    shapes: [
      rule(frame, top, 0.8),
      ...set.map((line, i) => lettering(line, { x: frame.left, y: baseline(i) }, { size: footerSize })),
      lettering(`${side} / 2`, end, { size: footerSize, anchor: 'end' }),
    ],
  };
}
