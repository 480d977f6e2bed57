import type { Page, Section } from '../page/page.ts';
import { blockPieces, sectionPieces } from './block-pieces.ts';
import { balanced, type Flowed, flow } from './flow.ts';
import { columnWidth, type Frame, oneColumn, type Room, rule, twoColumns } from './frame.ts';
import { heightOf, type PaperStyle } from './piece.ts';

/** The doing steps of a page: those with a number. */
export const numberedSteps = (page: Page): Section[] => page.front.filter((section) => section.number !== undefined);

const onFront = (section: Section): Section => ({
  ...section,
  blocks: section.blocks.filter(({ overleaf }) => !overleaf),
});

/**
 * The front: warnings across the sheet, then steps in two columns.
 * @param steps - how many of the numbered steps stand here; the rest go on overleaf
 */
export function frontBody(page: Page, steps: number, frame: Frame, room: Room, style: PaperStyle): Flowed {
  const warnings = page.front.filter((section) => section.number === undefined);
  const above = warnings.flatMap(({ blocks }) => blocks.flatMap((block) => blockPieces(block, frame.inner, style)));
  const head = flow(above, oneColumn(frame, room.top, room.bottom));
  const begin = above.length > 0 ? room.top + heightOf(above) + 1 : room.top;
  const here = numberedSteps(page).slice(0, steps).map(onFront);
  const pieces = here.flatMap((section) => sectionPieces(section, columnWidth(frame), style));
  const body = balanced(pieces, twoColumns(frame, begin + 3, room.bottom));
  return {
    shapes: [...head.shapes, ...(above.length > 0 ? [rule(frame, begin, 0.8)] : []), ...body.shapes],
    left: [...head.left, ...body.left],
  };
}
