import { lettering, type Point } from '../drawing/shapes.ts';
import type { Shape } from '../page/page.ts';
import { textWidth } from '../type/text-width.ts';
import { wrapText } from '../type/wrap-text.ts';
import { leadingOf, type Piece } from './piece.ts';

/** A run of text in one weight. */
export interface Run {
  readonly text: string;
  readonly bold?: boolean;
  readonly soft?: boolean;
}

interface Word {
  readonly text: string;
  readonly bold: boolean;
  readonly soft: boolean;
  readonly width: number;
}

/** Words of all runs; a word wider than the line is cut so that it fits. */
function wordsOf(runs: readonly Run[], width: number, size: number): Word[] {
  return runs.flatMap(({ text, bold = false, soft = false }) =>
    text
      .split(' ')
      .filter((word) => word !== '')
      .flatMap((word) => wrapText(word, { size, bold, width }))
      .map((word) => ({ text: word, bold, soft, width: textWidth(word, size, bold) })),
  );
}

function drawLine(words: readonly Word[], size: number): Piece['draw'] {
  const gap = textWidth(' ', size);
  return ({ x, y }: Point): Shape[] => {
    let left = x;
    return words.map(({ text, bold, soft, width }) => {
      const shape = lettering(text, { x: left, y: y + size }, { size, bold, ink: soft ? 'soft' : 'ink' });
      left += width + gap;
      return shape;
    });
  };
}

/**
 * Runs of different weight set as one paragraph, one piece a line.
 * @param indent - room left free at the head of the first line
 */
export function richLines(runs: readonly Run[], width: number, size: number, indent = 0): Piece[] {
  const gap = textWidth(' ', size);
  const set: Word[][] = [[]];
  let room = width - indent;
  for (const word of wordsOf(runs, width, size)) {
    if (word.width > room && set.at(-1)?.length !== 0) {
      set.push([]);
      room = width;
    }
    set.at(-1)?.push(word);
    room -= word.width + gap;
  }
  return set.map((words, i) => ({
    height: leadingOf(size),
    draw: ({ x, y }: Point) => drawLine(words, size)({ x: i === 0 ? x + indent : x, y }),
  }));
}

/** Width of runs on one line, a space between them. */
export const runsWidth = (runs: readonly Run[], size: number): number =>
  runs.reduce((sum, { text, bold }, i) => sum + (i > 0 ? textWidth(' ', size) : 0) + textWidth(text, size, bold), 0);

/** Runs on one line from a baseline's left end. */
export function drawRuns(runs: readonly Run[], from: Point, size: number): Shape[] {
  let x = from.x;
  return runs.map(({ text, bold = false, soft = false }) => {
    const shape = lettering(text, { x, y: from.y }, { size, bold, ink: soft ? 'soft' : 'ink' });
    x += textWidth(text, size, bold) + textWidth(' ', size);
    return shape;
  });
}
