import { describe, expect, it } from 'vitest';
import { drawingSvg, xmlText } from '../../src/drawing/drawing-svg.ts';
import { fingerLine } from '../../src/drawing/finger-line.ts';
import { demoCard, demoPositions, drawingsOf, pageOf, readers } from '../demo-pages.ts';
import { overlappingTexts, textsOutside } from '../overlaps.ts';

describe('drawings', () => {
  for (const position of demoPositions) {
    it(`[SHEET-40] no two texts of a drawing overlap and none stands outside: ${position}, all readers`, () => {
      const card = demoCard(position);
      for (const { language, units } of readers) {
        for (const drawing of drawingsOf(pageOf(card, language, units))) {
          expect(overlappingTexts(drawing), `${drawing.id} ${language} ${units}`).toEqual([]);
          expect(textsOutside(drawing), `${drawing.id} ${language} ${units}`).toEqual([]);
        }
      }
    });
  }

  it('[SHEET-41] every drawing says in words what it shows', () => {
    const drawings = drawingsOf(pageOf(demoCard('QM-04-3')));
    expect(drawings.map(({ id }) => id).toSorted()).toEqual([
      'finger-ends',
      'lengths',
      'recipe-curve',
      'stack',
      'thread-path',
    ]);
    for (const { alt } of drawings) expect(alt.length).toBeGreaterThan(30);
  });

  it('[SHEET-42] both ends are one curve, moved: tip to tip is longer than endless by one finger', () => {
    const cut = { width: 60, pitch: 10, length: 80, firstTip: 2.5 };
    const endless = 64_222;
    const left = fingerLine(cut, { x: 0, y: 0 }, 1);
    const right = fingerLine(cut, { x: endless, y: 0 }, 1);
    const xs = (line: typeof left): number[] => line.map(({ x }) => x);
    expect(Math.max(...xs(right)) - Math.min(...xs(left))).toBeCloseTo(endless + 80, 9);
    right.forEach(({ x, y }, i) => {
      expect(x - (left[i]?.x ?? Number.NaN)).toBeCloseTo(endless, 9);
      expect(y).toBe(left[i]?.y);
    });
  });

  it('[SHEET-43] the first tip stands at its distance from the fence, the next ones a pitch further', () => {
    const line = fingerLine({ width: 60, pitch: 10, length: 80, firstTip: 2.5 }, { x: 0, y: 0 }, 1);
    const tips = line.filter(({ x }) => Math.abs(x - 80) < 1e-9).map(({ y }) => y);
    expect(tips).toEqual([2.5, 12.5, 22.5, 32.5, 42.5, 52.5]);
  });

  it('[SHEET-44] names typed by a person cannot become markup', () => {
    expect(xmlText('<script>"&\u0007')).toBe('&lt;script&gt;&quot;&amp; ');
    const svg = drawingSvg({ id: 'x', alt: '</title><script>', width: 1, height: 1, shapes: [] });
    expect(svg).not.toContain('<script>');
  });
});
