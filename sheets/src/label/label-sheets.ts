import type { PositionLabel } from '@loopwright/jobs';
import type { Voice } from '@loopwright/words';
import { lettering } from '../drawing/shapes.ts';
import type { Drawing, Shape } from '../page/page.ts';
import { textWidth } from '../type/text-width.ts';
import { type LabelPaper, labelCorners, labelPaperSizes, labelsOnSheet, mm, label as size } from './label-paper.ts';
import { cutMarks, labelShapes } from './label-shapes.ts';

const footSize = 7;

/**
 * One sheet of labels, one unit a point.
 * @param labels - all of them, in the order in which they are to be printed
 * @param sheet - which of their sheets, from 1
 * @param paper - the paper
 * @param speech - the reader's language and units
 */
export function labelSheet(labels: readonly PositionLabel[], sheet: number, paper: LabelPaper, speech: Voice): Drawing {
  const sheets = Math.ceil(labels.length / labelsOnSheet);
  const here = labels.slice((sheet - 1) * labelsOnSheet, sheet * labelsOnSheet);
  const corners = labelCorners(paper);
  const shapes = here.flatMap((label, at) => {
    const corner = corners[at] ?? { x: 0, y: 0 };
    return [...labelShapes(label, corner, speech), ...cutMarks(corner)];
  });
  return {
    id: `labels-${sheet}`,
    alt: here.map(({ position }) => position).join(', '),
    ...labelPaperSizes[paper],
    shapes: [...shapes, footLine(speech.say('labels.sheet', { sheet, sheets }), paper)],
  };
}

/** Below the last row, between its marks: how to print and cut, which sheet this is. */
function footLine(text: string, paper: LabelPaper): Shape {
  const corners = labelCorners(paper);
  const { x, y } = corners.at(-2) ?? { x: 0, y: 0 };
  const room = size.width - 6 * mm;
  const height = Math.min(footSize, (footSize * room) / textWidth(text, footSize));
  return lettering(text, { x: x + 3 * mm, y: y + size.height + 2.9 * mm }, { size: height, ink: 'soft' });
}
