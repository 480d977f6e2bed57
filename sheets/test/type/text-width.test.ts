import { languages } from '@loopwright/words';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { textWidth } from '../../src/type/text-width.ts';
import { widthRuns } from '../../src/type/width-runs.ts';
import { wrapText } from '../../src/type/wrap-text.ts';
import { demoCard, demoPositions, pageOf } from '../demo-pages.ts';
import { sheetFonts } from '../sheet-fonts.ts';
import { fontWidths } from './font-widths.ts';

const settings = { seed: 42, numRuns: Number(process.env.LW_RUNS ?? 2000) };

describe('measure of text', () => {
  it('[SHEET-30] the table of widths agrees with the font, glyph by glyph', () => {
    for (const weight of ['regular', 'bold'] as const) {
      const inFont = fontWidths(sheetFonts[weight]);
      let compared = 0;
      for (const run of widthRuns) {
        run[weight].split(' ').forEach((_, i) => {
          const expected = inFont(run.from + i);
          if (expected === undefined) return;
          const width = textWidth(String.fromCodePoint(run.from + i), 1000, weight === 'bold');
          expect(Math.abs(width - expected), `U+${(run.from + i).toString(16)}`).toBeLessThanOrEqual(0.5);
          compared += 1;
        });
      }
      expect(compared).toBeGreaterThan(500);
    }
  });

  it('[SHEET-31] the font has every sign that a card prints', () => {
    const signs = new Set<string>();
    for (const position of demoPositions)
      for (const language of languages)
        for (const sign of JSON.stringify(pageOf(demoCard(position), language))) signs.add(sign);
    const [regular, bold] = [fontWidths(sheetFonts.regular), fontWidths(sheetFonts.bold)];
    const lacking = [...signs, '☐', '…'].filter((sign) => {
      const point = sign.codePointAt(0) ?? 0;
      return point >= 0x20 && (regular(point) === undefined || bold(point) === undefined);
    });
    expect(lacking).toEqual([]);
  });

  it('[SHEET-32] wrapped lines are no wider than asked and lose no letter', () => {
    const texts = fc.string({
      unit: fc.constantFrom('a', 'W', 'ß', ' ', ' ', '\u00a0', '3', '-', 'ñ'),
      maxLength: 120,
    });
    fc.assert(
      fc.property(texts, fc.double({ min: 20, max: 300, noNaN: true }), (text, width) => {
        const lines = wrapText(text, { size: 8, width });
        for (const line of lines) expect(textWidth(line, 8)).toBeLessThanOrEqual(width);
        expect(lines.join('').replaceAll(' ', '')).toBe(text.replaceAll(' ', ''));
      }),
      settings,
    );
  });
});
