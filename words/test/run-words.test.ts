import { describe, expect, it } from 'vitest';
import { type RunFacts, runWords, voice } from '../src/index.ts';

const facts: RunFacts = {
  names: { roll: 'roll-1', die: 'die-10x80', press: 'North' },
  numbers: {
    squareLength: { value: 64.352, kind: 'length' },
    open: { value: 50, kind: 'temperature', onDisplay: true },
  },
  people: 1,
};

describe('run', () => {
  it('[WORDS-18] what to do carries the numbers of the card, in the reader’s units', () => {
    expect(runWords(voice('en', 'metric'), facts).todo('cut')).toBe(
      'Cut 64\u202f352\u00a0mm square from the factory edge, fresh blade. Cut gloves.',
    );
    expect(runWords(voice('es', 'us'), facts).todo('cut')).toContain('in a escuadra');
  });

  it('[WORDS-18] what the press display shows is said as the display shows it', () => {
    const words = runWords(voice('de', 'metric'), facts, voice('de', 'us'));
    expect(words.todo('open')).toBe('Erst wenn beide Anzeigen 122\u00a0°F oder weniger zeigen. Hitzehandschuhe.');
  });

  it('[WORDS-18] what nobody knows reads as a dash', () => {
    expect(runWords(voice('en', 'metric'), facts).todo('remainder')).toContain('about –');
  });

  it('[WORDS-18] deviations, reasons why not and what happened meanwhile take their numbers and words', () => {
    const words = runWords(voice('en', 'metric'), facts);
    expect(words.deviation({ code: 'heat-before-steady', data: { waited_s: 20, wanted_s: 60 } })).toBe(
      'Heat after 20\u00a0s of pressure, 60\u00a0s are wanted.',
    );
    expect(words.deviation({ code: 'cycle-stopped', data: { reason: 'breaker' } })).toBe(
      'The cycle stopped: Breaker tripped.',
    );
    expect(
      words.deviation({
        code: 'measure-off',
        data: { measure: 'bow', value: 0.004, expected: 0, tolerance: 0.002, kind: 'shortLength' },
      }),
    ).toBe('Bow over 1 m: 4.0\u00a0mm, the card says 0.0\u00a0mm.');
    expect(words.blocked({ code: 'needs-steps', steps: ['lock-out', 'dry'] })).toBe(
      'First: Lock out, tag out and Dry?.',
    );
    expect(words.meanwhile({ code: 'cycle-ended', ago_s: 366, data: {} })).toBe(
      'The cycle ended about 6\u00a0min ago. Check the platens before you open: 50\u00a0°C or less.',
    );
    expect(
      words.blocked({
        code: 'reading-impossible',
        data: { platen: 'top', mark: 'hold', value: 300, least: 145, most: 225, kind: 'temperature', hint: 'hot' },
      }),
    ).toBe(
      '300\u00a0°C cannot be: between 145\u00a0°C and 225\u00a0°C can. Read the display again; is it the other platen, or another unit?',
    );
  });
});
