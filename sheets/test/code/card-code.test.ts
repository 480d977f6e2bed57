import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cardCode, readCardCode } from '../../src/code/card-code.ts';
import { crc32 } from '../../src/code/checksum.ts';

const settings = { seed: 42, numRuns: Number(process.env.LW_RUNS ?? 2000) };
const word = fc.stringMatching(/^[A-Za-z0-9ÄÖÜäöüßñ][A-Za-z0-9ÄÖÜäöüßñ._-]{0,30}$/u);
const codes = fc.record({ position: word, revision: fc.stringMatching(/^[0-9A-HJKMNP-TV-Z]{8}$/) });

describe('the printed code', () => {
  it('[SHEET-20] CRC-32 of the digits 1 to 9 is CBF43926', () => {
    // Check value of CRC-32/ISO-HDLC in Williams, A Painless Guide to CRC Error Detection Algorithms (1993).
    expect(crc32(Uint8Array.from('123456789', (digit) => digit.charCodeAt(0)))).toBe(0xcbf43926);
  });

  it('[SHEET-21] what was written is read', () => {
    fc.assert(
      fc.property(codes, (code) => {
        expect(readCardCode(cardCode(code))).toEqual(code);
      }),
      settings,
    );
  });

  it('[SHEET-22] any one changed, lost or doubled letter is noticed', () => {
    const letter = fc.stringMatching(/^[ -~]$/);
    fc.assert(
      fc.property(codes, fc.nat(), letter, (code, place, other) => {
        const text = cardCode(code);
        const at = place % text.length;
        const changed = text.slice(0, at) + other + text.slice(at + 1);
        const lost = text.slice(0, at) + text.slice(at + 1);
        const doubled = text.slice(0, at) + text.charAt(at) + text.slice(at);
        for (const wrong of [changed, lost, doubled]) if (wrong !== text) expect(readCardCode(wrong)).toBeUndefined();
      }),
      settings,
    );
  });

  it('[SHEET-23] it is data, never an address', () => {
    expect(cardCode({ position: 'QM-04-3', revision: 'D7N0Z9MG' })).toMatch(
      /^LW1 QM-04-3 D7N0Z9MG [0-9A-HJKMNP-TV-Z]{7}$/,
    );
    for (const other of ['', 'LW1', 'https://example.org/x', 'LW2 QM-04-3 D7N0Z9MG 17MZAY2', 'LW1 a b c d'])
      expect(readCardCode(other)).toBeUndefined();
  });
});
