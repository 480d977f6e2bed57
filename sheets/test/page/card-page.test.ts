import { missingCodes } from '@loopwright/jobs';
import { languages, voice } from '@loopwright/words';
import { describe, expect, it } from 'vitest';
import type { Figure, Page } from '../../src/page/page.ts';
import { barePlant, blocksOf, demo, demoCard, demoPositions, pageOf, readers, wordsOf } from '../demo-pages.ts';

const idsOf = (page: Page): string[] => page.front.filter(({ number }) => number !== undefined).map(({ id }) => id);

function figuresOf(page: Page): Figure[] {
  return blocksOf(page).flatMap((block) => {
    if (block.kind === 'figure') return [block.figure];
    if (block.kind === 'figures') return block.figures.map(({ figure }) => figure);
    return block.kind === 'rows' ? block.rows.flatMap(({ figure }) => (figure ? [figure] : [])) : [];
  });
}

describe('the card as a page', () => {
  it('[SHEET-01] lock-out with stored energy comes before anything is cut, everything in hand before the knife', () => {
    for (const position of demoPositions) {
      const ids = idsOf(pageOf(demoCard(position)));
      expect(ids).toEqual([
        'cause',
        'lock',
        'gather',
        'site',
        'cut',
        'ends',
        'marks',
        'thread',
        'take-up',
        'press',
        'open',
        'restart',
        'tension',
      ]);
      const lock = pageOf(demoCard(position)).front.find(({ id }) => id === 'lock');
      expect(lock?.blocks[0]).toMatchObject({ kind: 'caution', level: 'stop' });
    }
  });

  it('[SHEET-02] numbered steps count from 1 without a gap', () => {
    const numbers = pageOf(demoCard('QM-04-3')).front.flatMap(({ number }) => (number === undefined ? [] : [number]));
    expect(numbers).toEqual(numbers.map((_, i) => i + 1));
  });

  it('[SHEET-03] numbers that a formula gave carry it with the numbers in place', () => {
    const figures = figuresOf(pageOf(demoCard('QM-04-3')));
    const tips = figures.find(({ value }) => value === '64\u202f302');
    // 64 222 + 80 = 64 302 mm: common practice, no source; endless and cut length differ by one finger.
    expect(tips?.worked?.withNumbers).toMatch(/64\u202f222.* \+ 80.*= 64\u202f302/);
    expect(figures.filter(({ worked }) => worked).length).toBeGreaterThan(12);
    for (const { worked } of figures) if (worked) expect(worked.title).not.toMatch(/^[a-z]+(-[a-z]+)+$/);
  });

  it('[SHEET-04] warnings stand first: those that stop, then those that ask for care', () => {
    const page = pageOf(demoCard('QM-02-3'));
    expect(page.front[0]?.id).toBe('warnings');
    const levels = (page.front[0]?.blocks ?? []).map((block) => (block.kind === 'caution' ? block.level : 'other'));
    expect(levels).toContain('stop');
    expect(levels.toSorted((a, b) => ['stop', 'care'].indexOf(a) - ['stop', 'care'].indexOf(b))).toEqual(levels);
  });

  it('[SHEET-05] what the plant does not know is said with what to measure, and nothing is left out for it', () => {
    const card = demoCard('QM-04-3', 1, barePlant('QM-04-3'));
    expect(card.missing.length).toBeGreaterThan(8);
    for (const language of languages) {
      const page = pageOf(card, language);
      expect(idsOf(page)).toHaveLength(13);
      for (const code of card.missing) {
        const sentence = voice(language, 'metric').say(`missing.${code}`);
        expect(wordsOf(page), code).toContain(JSON.stringify(sentence).slice(1, -1));
      }
    }
  });

  it('[SHEET-05] every code that a card may miss has its place on the page', () => {
    const card = { ...demoCard('QM-04-3'), missing: missingCodes };
    const page = pageOf(card);
    for (const code of missingCodes)
      expect(wordsOf(page), code).toContain(voice('en', 'metric').say(`missing.${code}`));
  });

  it('[SHEET-06] no key, no code and no empty value reaches a reader', () => {
    for (const position of demoPositions) {
      for (const { language, units } of readers) {
        const words = wordsOf(pageOf(demoCard(position), language, units));
        expect(words).not.toMatch(
          /\b(card|warning|missing|gather|restart|inspect|stack|source|meaning|formula)\.[a-z]/,
        );
        expect(words).not.toMatch(/undefined|NaN|\{\w+\}/);
      }
    }
  });

  it('[SHEET-07] press temperatures stand as the display of the press shows them, whatever units the reader has', () => {
    const press = { ...demo.presses.P1, displayUnit: 'degF' as const };
    const plant = { ...demo, presses: { ...demo.presses, P1: press } } as typeof demo;
    const fahrenheit = wordsOf(pageOf(demoCard('QM-04-3', 1, plant), 'en', 'metric'));
    // 183 degC = 361.4 degF, 190 degC = 374 degF, 50 degC = 122 degF, 40 degC = 104 degF: exact by definition.
    for (const degF of ['361', '374']) expect(fahrenheit).toContain(`"value":"${degF}","unit":"°F"`);
    expect(fahrenheit).toContain('122\u00a0°F');
    expect(fahrenheit).toContain('104\u00a0°F');
    const celsius = wordsOf(pageOf(demoCard('QM-04-3'), 'en', 'us'));
    expect(celsius).toContain('"value":"183","unit":"°C"');
  });

  it('[SHEET-08] a press with one set point and a recipe with two stops the job', () => {
    const press = { ...demo.presses.P1, setPoints: 1 as const };
    const plant = { ...demo, presses: { ...demo.presses, P1: press } } as typeof demo;
    const section = pageOf(demoCard('QM-04-3', 1, plant)).front.find(({ id }) => id === 'press');
    const stops = section?.blocks.filter((block) => block.kind === 'caution' && block.level === 'stop') ?? [];
    expect(stops).toHaveLength(1);
  });

  it('[SHEET-09] recipe numbers that are examples say so, and the data sheet wins', () => {
    const page = pageOf(demoCard('QM-04-3'));
    const press = page.front.find(({ id }) => id === 'press');
    const figures = press?.blocks.find((block) => block.kind === 'figures');
    const sources = figures?.kind === 'figures' ? figures.figures.map(({ figure }) => figure.source) : [];
    expect(sources.filter((source) => source === 'example').length).toBeGreaterThanOrEqual(3);
    expect(JSON.stringify(press)).toContain('data sheet wins');
    expect(page.footer.join(' ')).toContain('Computed, check it');
  });

  it('[SHEET-10] nothing promises safety, in any language', () => {
    for (const language of languages) {
      const words = wordsOf(pageOf(demoCard('QM-04-3'), language));
      expect(words).not.toMatch(
        /\b(safe|certified|guaranteed|sicher|zertifiziert|garantiert|segur[oa]|certificad[oa]|garantizad[oa])\b/i,
      );
    }
  });

  it('[SHEET-11] the ranges of the inputs are shown with the result', () => {
    const cut = pageOf(demoCard('QM-04-3')).front.find(({ id }) => id === 'cut');
    const figure = cut?.blocks.find((block) => block.kind === 'figure');
    expect(figure?.kind === 'figure' && figure.figure.range).toMatch(/^±/);
    expect(pageOf(demoCard('QM-04-3')).time.figure.range).toBeDefined();
  });

  it('[SHEET-12] a splice that does not mesh in place says how much is missing, before the cut and at the take-up', () => {
    const card = demoCard('QM-04-3');
    const far = { ...card, takeUp: { ...card.takeUp, meshesInPlace: false, pullNeeded: card.takeUp.neededToMesh } };
    const page = pageOf(far as typeof card);
    const step = page.front.find(({ id }) => id === 'take-up');
    expect(step?.blocks.some((block) => block.kind === 'caution' && block.level === 'stop')).toBe(true);
  });
});
