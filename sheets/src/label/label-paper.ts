import type { Point } from '../drawing/shapes.ts';

/** Papers that labels are printed on: whole sheets, one side. */
export const labelPapers = ['A4', 'letter'] as const;
export type LabelPaper = (typeof labelPapers)[number];

/** Points of 1/72 in per millimetre. */
export const mm = 72 / 25.4;

/** Size in points: ISO 216 A4 (210 x 297 mm) and US letter (8.5 x 11 in). */
export const labelPaperSizes: Readonly<Record<LabelPaper, { readonly width: number; readonly height: number }>> = {
  A4: { width: 595.28, height: 841.89 },
  letter: { width: 612, height: 792 },
};

/** One label: a lasting adhesive film or a laminated card of 95 x 50 mm. */
export const label = { width: 95 * mm, height: 50 * mm } as const;
const columns = 2;
const rows = 5;
/** Room between labels, for the marks and the knife. */
const gutter = 3 * mm;

export const labelsOnSheet = columns * rows;

/** Upper left corner of each label on a sheet, row by row. */
export function labelCorners(paper: LabelPaper): readonly Point[] {
  const { width, height } = labelPaperSizes[paper];
  const left = (width - columns * label.width - (columns - 1) * gutter) / 2;
  const top = (height - rows * label.height - (rows - 1) * gutter) / 2;
  return Array.from({ length: labelsOnSheet }, (_, i) => ({
    x: left + (i % columns) * (label.width + gutter),
    y: top + Math.floor(i / columns) * (label.height + gutter),
  }));
}
