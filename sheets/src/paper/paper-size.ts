/** Papers a card is printed on: half a sheet, both sides. */
export const papers = ['A5', 'half-letter'] as const;
export type Paper = (typeof papers)[number];

/** Size in points of 1/72 in: ISO 216 A5 (148 x 210 mm) and half of US letter (5.5 x 8.5 in). */
export const paperSizes: Readonly<Record<Paper, { readonly width: number; readonly height: number }>> = {
  A5: { width: 419.53, height: 595.28 },
  'half-letter': { width: 396, height: 612 },
};

/** Nothing is printed nearer to the edge: 5 mm, of which 2 mm may be lost in cutting. */
export const margin = 14.2;
