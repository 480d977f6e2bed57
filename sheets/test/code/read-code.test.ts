import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cardCode } from '../../src/code/card-code.ts';
import { crc32 } from '../../src/code/checksum.ts';
import { plantMark, positionCode } from '../../src/code/position-code.ts';
import { codeFaults, readCode } from '../../src/code/read-code.ts';

const settings = { seed: 42, numRuns: Number(process.env.LW_RUNS ?? 2000) };
const name = fc.stringMatching(/^[A-Za-z0-9ÄÖÜäöüßñ][A-Za-z0-9ÄÖÜäöüßñ._-]{0,39}$/u);
const codes = fc.record({ position: name, plant: name.map(plantMark) });
const label = positionCode({ position: 'QM-04-3', plant: plantMark('quillmoor') });

describe('the code of a label', () => {
  it('[LABEL-01] is `LW1P position mark checksum`: data, never an address', () => {
    expect(label).toMatch(/^LW1P QM-04-3 [0-9A-HJKMNP-TV-Z]{4} [0-9A-HJKMNP-TV-Z]{7}$/);
    fc.assert(
      fc.property(codes, (code) => {
        expect(positionCode(code)).not.toMatch(/[:/?#@]/);
      }),
      settings,
    );
  });

  it('[LABEL-01] the mark of a plant is the low 20 bits of the CRC-32 of its id', () => {
    // CRC-32 of the digits 1 to 9 is CBF43926 (Williams 1993); its low 20 bits are 43926 hex, in fives 01000 01110 01001 00110.
    expect(plantMark('123456789')).toBe('8E96');
    expect(crc32(Uint8Array.from('123456789', (digit) => digit.charCodeAt(0))) & 0xfffff).toBe(0x43926);
  });

  it('[LABEL-02] what was written is read, with white space round it too', () => {
    fc.assert(
      fc.property(codes, (code) => {
        expect(readCode(positionCode(code))).toEqual({ is: 'position', ...code });
        expect(readCode(`\r\n ${positionCode(code)}\n`)).toEqual({ is: 'position', ...code });
      }),
      settings,
    );
  });

  it('[LABEL-03] any one changed, lost or doubled letter is noticed', () => {
    fc.assert(
      fc.property(codes, fc.nat(), fc.stringMatching(/^[ -~]$/), (code, place, other) => {
        const text = positionCode(code);
        const at = place % text.length;
        const changed = text.slice(0, at) + other + text.slice(at + 1);
        const lost = text.slice(0, at) + text.slice(at + 1);
        const doubled = text.slice(0, at) + text.charAt(at) + text.slice(at);
        for (const wrong of [changed, lost, doubled]) if (wrong !== text) expect(readCode(wrong).is).toBe('refused');
      }),
      settings,
    );
  });

  it('[LABEL-04] a card is told from a label, and neither is read as the other', () => {
    expect(readCode(cardCode({ position: 'QM-04-3', revision: 'D7N0Z9MG' }))).toEqual({
      is: 'card',
      position: 'QM-04-3',
      revision: 'D7N0Z9MG',
    });
    expect(readCode(label).is).toBe('position');
  });

  const refusals = {
    empty: ['', '   '],
    address: [
      'https://example.org/QM-04-3',
      'HTTP://EXAMPLE.ORG',
      'javascript:alert(1)',
      'tel:+4912345',
      'WIFI:T:WPA;S:hall;P:x;;',
      'www.example.org',
      'example.org/card/QM-04-3',
      'data:text/html,<b>',
    ],
    foreign: ['QM-04-3', '4006381333931', 'lw1p qm-04-3', '{"v":1}', 'Lot: A24', '<img src=x onerror=alert(1)>'],
    'later-form': ['LW2P QM-04-3 7K3Q 17MZAY2', 'LW1Q QM-04-3 7K3Q 17MZAY2', 'LW12 a b c'],
    malformed: ['LW1P', 'LW1P QM-04-3', 'LW1P QM-04-3 7K3Q', `${label} more`, 'LW1 a b c d'],
    checksum: [label.replace('04-3', '04-4'), `${label.slice(0, -1)}${label.endsWith('0') ? '1' : '0'}`],
  };
  it.each(codeFaults)('[LABEL-05] refused with its own reason: %s', (why) => {
    for (const text of refusals[why]) expect(readCode(text), text).toEqual({ is: 'refused', why });
  });

  it('[LABEL-05] a right checksum makes no address, no long name and no empty field a code', () => {
    for (const position of ['https://x', 'a/b', 'x'.repeat(41), '', '-a', '<b>'])
      expect(readCode(positionCode({ position, plant: '7K3Q' }))).toEqual({ is: 'refused', why: 'malformed' });
    for (const plant of ['7K3', '7K3QQ', '7k3q', 'ILOU'])
      expect(readCode(positionCode({ position: 'QM-04-3', plant }))).toEqual({ is: 'refused', why: 'malformed' });
  });

  it('[LABEL-05] whatever is scanned is read or refused, never an exception', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string({ unit: 'binary' }),
          fc.string().map((rest) => `LW1P ${rest}`),
        ),
        (text) => {
          expect(readCode(text).is).toBe('refused');
        },
      ),
      settings,
    );
  });
});
