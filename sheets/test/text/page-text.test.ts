import { describe, expect, it } from 'vitest';
import { pageText } from '../../src/text/page-text.ts';
import { demoCard, demoPositions, pageOf, readers } from '../demo-pages.ts';

const linesOf = (text: string): string[] => text.split('\n');
const widest = (text: string): number => Math.max(...linesOf(text).map((line) => Array.from(line).length));

describe('the card as text', () => {
  it('[SHEET-80] no line is longer than the terminal is wide', () => {
    for (const position of demoPositions) {
      for (const { language, units } of readers) {
        for (const width of [60, 80, 120]) {
          const text = pageText(pageOf(demoCard(position), language, units), width, { worked: true });
          expect(widest(text), `${position} ${language} ${width}`).toBeLessThanOrEqual(width);
        }
      }
    }
  });

  it('[SHEET-81] steps carry their ringed numbers in order, lock-out before the cut', () => {
    const text = pageText(pageOf(demoCard('QM-04-3')));
    const rings = Array.from(text.matchAll(/^[①-⑳]/gm), ([ring]) => ring).join('');
    expect(rings).toBe('①②③④⑤⑥⑦⑧⑨⑩⑪⑫⑬');
    expect(text.indexOf('Lock out')).toBeLessThan(text.indexOf('tip to tip'));
    // Cut square first, 64 352 mm: 64 302 from tip to tip and 25 mm of waste at both ends.
    expect(text.indexOf('First cut 64\u202f352\u00a0mm square')).toBeGreaterThan(0);
    expect(text.indexOf('First cut 64')).toBeLessThan(text.indexOf('64\u202f302'));
  });

  it('[SHEET-82] a number stands with unit, range and origin; formulas are written out on demand', () => {
    const page = pageOf(demoCard('QM-04-3'));
    // 64 302 mm: common practice, no source; 64 222 endless and one finger of 80.
    expect(pageText(page)).toMatch(/64\u202f302\u00a0mm tip to tip \(±\u00a0\d+\) \[computed\]/);
    const open = pageText(page, 100, { worked: true });
    expect(open).toMatch(/= S = L0 \+ lf \+ c/);
    expect(open.length).toBeGreaterThan(pageText(page, 100).length);
  });

  it('[SHEET-83] the state is told by sign and word', () => {
    expect(pageText(pageOf(demoCard('QM-04-3')))).toMatch(/^✕ Torn since/m);
  });
});
