import type { Plant } from '@loopwright/plant';
import { cardCode, plantMark, positionCode } from '@loopwright/sheets';
import { describe, expect, it } from 'vitest';
import { brightness } from '../src/places/scan/brightness.ts';
import { judgeCode } from '../src/places/scan/judge-code.ts';

const plant = { id: 'here', name: 'Here', positions: { 'A-1': {} } } as unknown as Plant;
const label = (position: string, of = 'here') => positionCode({ position, plant: plantMark(of) });

describe('what a scanned text means', () => {
  it('[SCAN-01] a label or a printed card of a position that is there opens', () => {
    expect(judgeCode(label('A-1'), plant)).toEqual({ result: 'opens', position: 'A-1' });
    expect(judgeCode(cardCode({ position: 'A-1', revision: 'D7N0Z9MG' }), plant)).toEqual({
      result: 'opens',
      position: 'A-1',
    });
  });

  it('[SCAN-07] a position that is not there, or is of another plant, never opens by itself', () => {
    for (const position of ['A-2', 'constructor', 'toString'])
      expect(judgeCode(label(position), plant)).toEqual({ result: 'unknown', position });
    expect(judgeCode(label('A-1', 'there'), plant)).toEqual({ result: 'other-plant', position: 'A-1', isHere: true });
    expect(judgeCode(label('A-2', 'there'), plant)).toEqual({ result: 'other-plant', position: 'A-2', isHere: false });
  });

  it('[SCAN-02] a stranger’s text is shown short, without signs that cannot be seen or turn the line round', () => {
    const hostile = judgeCode(`https://example.org/\u202egnp.exe\u0000\u200b${'x'.repeat(10_000)}`, plant);
    expect(hostile).toMatchObject({ result: 'refused', why: 'address' });
    const text = hostile.result === 'refused' ? hostile.text : '';
    expect(text).not.toMatch(/[\p{C}]/u);
    expect(Array.from(text)).toHaveLength(81);
  });
});

describe('light', () => {
  it('[SCAN-04] brightness is the luma of ITU-R BT.601, from 0 to 1', () => {
    const filled = (r: number, g: number, b: number) =>
      Uint8ClampedArray.from({ length: 4 * 64 }, (_, i) => [r, g, b, 255][i % 4] ?? 0);
    // Weights printed in BT.601-7, section 2.5.1: 0.299, 0.587, 0.114.
    expect(brightness(filled(255, 0, 0))).toBeCloseTo(0.299, 9);
    expect(brightness(filled(0, 255, 0))).toBeCloseTo(0.587, 9);
    expect(brightness(filled(0, 0, 255))).toBeCloseTo(0.114, 9);
    expect(brightness(filled(255, 255, 255))).toBeCloseTo(1, 9);
    expect(brightness([])).toBe(0);
  });
});
