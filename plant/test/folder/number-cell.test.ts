import { describe, expect, it } from 'vitest';
import { readNumber } from '../../src/folder/number-cell.ts';

describe('number cells', () => {
  it.each([
    ['12', 12, 'none'],
    ['-0.5', -0.5, 'point'],
    ['+3.', 3, 'point'],
    ['.5', 0.5, 'point'],
    ['2,4', 2.4, 'comma'],
    ['1,234', 1.234, 'comma'],
    ['1e-3', 0.001, 'none'],
    ['2,5E+2', 250, 'comma'],
    ['\u22121.5', -1.5, 'point'],
    ['1e999', Number.POSITIVE_INFINITY, 'none'],
  ])('[PLANT-12] %s is the number %d', (cell, value, mark) => {
    expect(readNumber(cell)).toEqual({ value, mark });
  });

  it.each([
    '1.234,5',
    '1,234.5',
    '1.234.567',
    '1,234,567',
    "1'234.5",
    '1’234',
    '1 234,5',
    '1\u00a0234',
    '1\u202f234',
    '12.345,67',
  ])('[PLANT-13] %s groups its digits and is refused', (cell) => {
    expect(readNumber(cell)).toEqual({ code: 'thousands-separator' });
  });

  it.each([
    'NaN',
    'Infinity',
    '-Infinity',
    '0x10',
    '1e',
    'e5',
    '2.4 mm',
    '1/2',
    '1 1/2',
    '--1',
    '1-2',
    'zwölf',
    '.',
    ',',
    '1e99999',
    '٣',
  ])('[PLANT-12] %s is not a number', (cell) => {
    expect(readNumber(cell)).toEqual({ code: 'not-a-number' });
  });
});
