import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { papers } from '../../src/paper/paper-size.ts';
import { printPdf } from '../../src/pdf/print-pdf.ts';
import { cardPrint } from '../../src/print/page-print.ts';
import { demoCard, demoPositions, now, pageOf, readers } from '../demo-pages.ts';
import { sheetFonts } from '../sheet-fonts.ts';

const latin = (bytes: Uint8Array): string => Buffer.from(bytes).toString('latin1');
const pagesIn = (bytes: Uint8Array): number => latin(bytes).match(/\/Type \/Page\b(?!s)/g)?.length ?? 0;
const hash = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');

describe('the PDF', () => {
  for (const [index, position] of demoPositions.entries()) {
    it(`[SHEET-70] one sheet, two pages, of the paper asked for: ${position}`, async () => {
      for (const [turn, { language, units }] of readers.entries()) {
        const paper = papers[(index + turn) % papers.length] ?? 'A5';
        const bytes = await printPdf(cardPrint(pageOf(demoCard(position), language, units), paper), sheetFonts);
        expect(latin(bytes.subarray(0, 5))).toBe('%PDF-');
        expect(pagesIn(bytes)).toBe(2);
        expect(latin(bytes)).toContain(paper === 'A5' ? '/MediaBox [0 0 419.53 595.28]' : '/MediaBox [0 0 396 612]');
        expect(bytes.length).toBeLessThan(200_000);
      }
    });
  }

  it('[SHEET-71] the same card gives the same bytes', async () => {
    const bytes = await printPdf(cardPrint(pageOf(demoCard('QM-04-3'), 'de'), 'A5'), sheetFonts);
    const again = await printPdf(cardPrint(pageOf(demoCard('QM-04-3'), 'de'), 'A5'), sheetFonts);
    expect(hash(again)).toBe(hash(bytes));
  });

  it('[SHEET-72] the creation date is the moment of the job', async () => {
    const bytes = await printPdf(cardPrint(pageOf(demoCard('QM-04-3')), 'A5'), sheetFonts);
    const stamp = `D:${now.replaceAll(/[-:TZ]/g, '')}Z`;
    const stamps = Array.from(latin(bytes).matchAll(/\((D:\d+Z?)\)/g), ([, found]) => found);
    expect(stamps.length).toBeGreaterThan(0);
    expect(new Set(stamps)).toEqual(new Set([stamp]));
  });

  it('[SHEET-73] the typeface is inside the file', async () => {
    const text = latin(await printPdf(cardPrint(pageOf(demoCard('QM-04-3')), 'A5'), sheetFonts));
    expect(text).toMatch(/\/FontName \/\w+\+DejaVuSansCondensed\b/);
    expect(text).toMatch(/\/FontName \/\w+\+DejaVuSansCondensed-Bold/);
    expect(text.match(/\/FontFile2/g)?.length).toBe(2);
  });
});
