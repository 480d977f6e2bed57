import { type PressCycleReport, pressCycleReport } from '@loopwright/jobs';
import type { Plant } from '@loopwright/plant';
import { languages, voice } from '@loopwright/words';
import { describe, expect, it } from 'vitest';
import { cyclePage } from '../../src/page/cycle-page.ts';
import type { Page } from '../../src/page/page.ts';
import { flowPapers, flowSheets } from '../../src/paper/flow-sheets.ts';
import { printPdf } from '../../src/pdf/print-pdf.ts';
import { flowPrint } from '../../src/print/page-print.ts';
import { pageText } from '../../src/text/page-text.ts';
import { demo, drawingsOf, now, readers, wordsOf } from '../demo-pages.ts';
import { overlappingTexts, textsOutside } from '../overlaps.ts';
import { sheetFonts } from '../sheet-fonts.ts';

const reportOf = (position: string, press = 'P1', plant: Plant = demo): PressCycleReport =>
  pressCycleReport(plant, position, { now, press });
const reports = { north: reportOf('QM-04-3'), south: reportOf('QM-01-1', 'P2'), none: reportOf('QM-04-3', 'P2') };

const pageFor = (report: PressCycleReport, { language, units }: (typeof readers)[number]): Page =>
  cyclePage(report, voice(language, units));
const english = { language: 'en', units: 'metric' } as const;

/** The demo plant with names as long as they may be. */
function longNames(): Plant {
  const [line, press] = [demo.lines['QM-04'], demo.presses['P1']];
  if (!line || !press) throw new Error('the demo plant has lost its things');
  const long = 'Auslaufförderer der Kistenwaschanlage in Halle 7 '.repeat(3).trim();
  return {
    ...demo,
    lines: { ...demo.lines, 'QM-04': { ...line, name: long } },
    presses: { ...demo.presses, P1: { ...press, name: long } },
  };
}

describe('page of a press cycle', () => {
  it('[CYCLE-01] time line, curve, splice, outlet and opening stand in front, what it rests on behind', () => {
    const page = pageFor(reports.north, english);
    expect(page.front.map(({ id }) => id)).toEqual(['timeline', 'curve', 'splice', 'supply', 'opening']);
    expect(page.back.map(({ id }) => id)).toEqual([
      'rests-recipe',
      'rests-outlet',
      'rests-press',
      'rests-stack',
      'rests-belt',
      'examples',
      'formulas',
    ]);
  });

  it('[CYCLE-02] the light press opens after 17 to 18 min and says from when to when', () => {
    const { figure } = pageFor(reports.north, english).time;
    // Common practice, no source: a complete cycle of a light air-cooled press takes 17 to 18 min.
    expect(figure.value).toMatch(/^17:\d\d$/);
    expect(figure.range).toMatch(/^\d\d–\d\d$/);
    expect(figure.uncalibrated).toBeDefined();
  });

  it('[CYCLE-03] every number names its unit and where it comes from, in every language', () => {
    for (const reader of readers) {
      const page = pageFor(reports.south, reader);
      const rows = [...page.front, ...page.back].flatMap(({ blocks }) =>
        blocks.flatMap((block) => (block.kind === 'rows' ? block.rows : [])),
      );
      const figures = rows.flatMap(({ label, figure }) => (figure ? [{ label, figure }] : []));
      expect(figures.length).toBeGreaterThan(30);
      for (const { label, figure } of figures) {
        expect(label, label).not.toMatch(/^(presses|belts|lines|recipes|templates)\./);
        expect(figure.source.length, label).toBeGreaterThan(3);
        expect(figure.unit.length > 0 || /^[01][.,]\d\d$/.test(figure.value), `${label} ${figure.value}`).toBe(true);
      }
      expect(wordsOf(page)).not.toMatch(/undefined|NaN|\[object|Infinity/);
    }
  });

  it('[CYCLE-04] a late press, and what is missing for a cycle, come first', () => {
    for (const language of languages) {
      const late = pageFor(reports.south, { language, units: 'metric' }).front[0];
      expect(late?.id).toBe('warnings');
      expect(JSON.stringify(late)).toContain('South');
      const none = pageFor(reports.none, { language, units: 'metric' });
      expect(none.front.map(({ id }) => id)).toEqual(['warnings']);
      expect(none.front[0]?.blocks).toHaveLength(1);
    }
  });

  it('[CYCLE-05] it says computed, check it, that examples are examples, and that the display decides', () => {
    const text = pageText(pageFor(reports.north, english), 100);
    for (const said of ['Computed, check it', 'data sheet wins', 'uncalibrated', 'never by the clock', 'dummy splice'])
      expect(text.replaceAll(/\s+/g, ' ')).toContain(said);
  });

  it('[CYCLE-06] the curves say in words what they show, and name every line', () => {
    const page = pageFor(reports.north, english);
    expect(drawingsOf(page).map(({ id }) => id)).toEqual(['cycle-temperatures', 'cycle-fusion']);
    for (const drawing of drawingsOf(page)) {
      expect(drawing.alt).toMatch(/\d/);
      expect(overlappingTexts(drawing)).toEqual([]);
      expect(textsOutside(drawing)).toEqual([]);
    }
    const words = wordsOf(page);
    for (const line of ['top platen', 'sensors', 'belt, middle', 'bond', 'damage, of its limit'])
      expect(words).toContain(line);
  });

  it('[CYCLE-07] temperatures stand as the display of the press shows them', () => {
    const press = demo.presses['P1'];
    if (!press) throw new Error('no press P1');
    const plant: Plant = { ...demo, presses: { ...demo.presses, P1: { ...press, displayUnit: 'degF' } } };
    const text = pageText(pageFor(reportOf('QM-04-3', 'P1', plant), english), 100);
    // 183 and 190 degC of the recipe.
    expect(text).toMatch(/361\s°F/);
    expect(text).toMatch(/374\s°F/);
    expect(text).not.toMatch(/\d\s°C/);
  });
});

describe('a press cycle on paper', () => {
  for (const paper of flowPapers) {
    it(`[CYCLE-10] no text overlaps another or leaves the sheet on ${paper}, whatever the language and the names`, () => {
      const all = [...Object.values(reports), reportOf('QM-04-3', 'P1', longNames())];
      for (const report of all) {
        for (const reader of readers) {
          const sheets = flowSheets(pageFor(report, reader), paper);
          expect(sheets.length).toBeLessThanOrEqual(paper === 'A5' ? 4 : 2);
          for (const sheet of sheets) {
            expect(overlappingTexts(sheet), `${reader.language} ${sheet.id}`).toEqual([]);
            expect(textsOutside(sheet, 14), `${reader.language} ${sheet.id}`).toEqual([]);
          }
        }
      }
    });
  }

  it('[CYCLE-11] every row of the page is on some sheet', () => {
    for (const paper of flowPapers) {
      const page = pageFor(reports.south, { language: 'de', units: 'metric' });
      const texts = flowSheets(page, paper).flatMap(({ shapes }) =>
        shapes.flatMap((shape) => (shape.shape === 'text' ? [shape.text] : [])),
      );
      const printed = texts.join(' ').replaceAll(/\s+/g, ' ');
      for (const section of [...page.front, ...page.back])
        for (const block of section.blocks)
          for (const { label } of block.kind === 'rows' ? block.rows : [])
            expect(printed, `${paper} ${label}`).toContain(label.split(' ')[0]);
    }
  });

  it('[CYCLE-12] the same page gives the same bytes', async () => {
    const page = pageFor(reports.north, english);
    const print = flowPrint(page, 'A4');
    const [one, other] = [await printPdf(print, sheetFonts), await printPdf(print, sheetFonts)];
    expect(Buffer.from(one).equals(Buffer.from(other))).toBe(true);
    expect(Buffer.from(one).subarray(0, 5).toString()).toBe('%PDF-');
  });
});
