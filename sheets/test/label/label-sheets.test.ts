import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type PositionLabel, positionLabels } from '@loopwright/jobs';
import { voice } from '@loopwright/words';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { plantMark, positionCode } from '../../src/code/position-code.ts';
import { labelCorners, labelPaperSizes, labelPapers, label as labelSize, mm } from '../../src/label/label-paper.ts';
import { codeModules } from '../../src/paper/code-picture.ts';
import { printPdf } from '../../src/pdf/print-pdf.ts';
import { labelsPrint } from '../../src/print/labels-print.ts';
import { demo, now, readers } from '../demo-pages.ts';
import { overlappingTexts, textsOutside } from '../overlaps.ts';
import { sheetFonts } from '../sheet-fonts.ts';
import { codesIn, rasterOf } from './raster.ts';

const english = voice('en', 'metric');
const all = positionLabels(demo);
const codeOf = ({ position, plant }: PositionLabel) => positionCode({ position, plant: plantMark(plant.id) });
const long: PositionLabel = {
  position: 'Förderer-Nord_Abschnitt.12-Rücklaufstrang',
  line: 'Förderer-Nord_Abschnitt.12',
  lineName: 'Rücklauf '.repeat(30),
  place: 'hinter der Waschanlage '.repeat(12),
  belt: 'B'.repeat(40),
  width_m: 0.06,
  plant: { id: 'x', name: 'Werk '.repeat(60) },
};
const short: PositionLabel = {
  ...long,
  position: '7',
  line: '1',
  lineName: '',
  belt: 'b',
  plant: { id: 'y', name: '' },
};

let place: string;
beforeAll(() => {
  place = mkdtempSync(join(tmpdir(), 'loopwright-labels-'));
});
afterAll(() => rmSync(place, { recursive: true }));

describe.each(labelPapers)('labels on %s', (paper) => {
  it('[LABEL-10] ten of 95 x 50 mm a sheet, none over the other, 5 mm of paper left white', () => {
    const sheets = labelsPrint(all, { paper, speech: english, now }).sheets;
    expect(sheets).toHaveLength(6);
    const { width, height } = labelPaperSizes[paper];
    const inches = paper === 'letter' ? [8.5, 11] : [210 / 25.4, 297 / 25.4];
    // Paper sizes of ISO 216 and of US letter, within the hundredth of a point to which they are written.
    expect([width, height].map((side, i) => Math.abs(side - 72 * (inches[i] ?? 0)) < 0.01)).toEqual([true, true]);
    for (const { x, y } of labelCorners(paper)) {
      expect(Math.min(x, y, width - x - labelSize.width, height - y - labelSize.height)).toBeGreaterThan(5 * mm);
    }
    for (const sheet of sheets) for (const { x, y } of inked(sheet)) expect(inside({ x, y }, sheet)).toBe(true);
  });

  it('[LABEL-11] no text on another, none off the sheet, in any language, however long the names', () => {
    for (const { language, units } of readers) {
      for (const sheet of labelsPrint([...all, long, short], { paper, speech: voice(language, units), now }).sheets) {
        expect(overlappingTexts(sheet)).toEqual([]);
        expect(textsOutside(sheet, 5 * mm)).toEqual([]);
      }
    }
  });

  it('[LABEL-12] every label says position, line, place, belt and width; the position in the largest letters', () => {
    const [sheet] = labelsPrint(positionLabels(demo, { positions: ['QM-04-3'] }), {
      paper,
      speech: english,
      now,
    }).sheets;
    const texts = sheet?.shapes.filter((shape) => shape.shape === 'text') ?? [];
    const said = texts.map(({ text }) => text);
    for (const text of ['QM-04-3', 'QM-04 Spine', 'Spine section 3', 'Quillmoor Crate Works'])
      expect(said).toContain(text);
    expect(said.join(' ')).toMatch(/Flint-30 · 60\smm/);
    const [largest] = texts.toSorted((a, b) => b.size - a.size);
    expect(largest?.text).toBe('QM-04-3');
    // Capitals of 0.73 em: at least 6 mm high, to be read from two steps away.
    expect((largest?.size ?? 0) * 0.73).toBeGreaterThan(6 * mm);
  });

  it('[LABEL-13] marks to cut along stand outside every label', () => {
    const [sheet] = labelsPrint(all.slice(0, 3), { paper, speech: english, now }).sheets;
    const marks = sheet?.shapes.filter((shape) => shape.shape === 'path' && shape.fill === 'none') ?? [];
    expect(marks).toHaveLength(3 * 8);
    for (const mark of marks) {
      const ends = mark.shape === 'path' ? [...mark.d.matchAll(/([\d.]+) ([\d.]+)/g)] : [];
      for (const [, x, y] of ends)
        expect(labelCorners(paper).some((corner) => within(corner, Number(x), Number(y)))).toBe(false);
    }
  });

  it('[LABEL-14] another program reads every code off the sheet as a phone sees it at arm’s length', async () => {
    // 2.3 dots a millimetre: 1,920 dots over 1.37 m per metre, at 0.6 m.
    for (const sheet of labelsPrint([...all, long, short], { paper, speech: english, now }).sheets.slice(5)) {
      const expected = [...all, long, short]
        .slice(sheet.id === 'labels-6' ? 50 : 60)
        .slice(0, 10)
        .map(codeOf);
      expect((await codesIn(rasterOf(sheet, 2.3 / mm))).toSorted()).toEqual(expected.toSorted());
    }
  });
});

it('[LABEL-15] a module is 1.3 mm or more for ids of up to 25 capital letters, digits and marks', () => {
  for (const position of ['7', 'QM-04-3', 'X'.repeat(25), `${'LINE-'.repeat(4)}12345`])
    expect(48 / codeModules(positionCode({ position, plant: '7K3Q' }), 'Q')).toBeGreaterThanOrEqual(1.297);
});

describe('labels as PDF', () => {
  const print = labelsPrint(all, { paper: 'A4', speech: english, now });

  it('[LABEL-16] one page a sheet, the same bytes for the same labels', async () => {
    const bytes = await printPdf(print, sheetFonts);
    const text = Buffer.from(bytes).toString('latin1');
    expect(text.match(/\/Type \/Page\b(?!s)/g)).toHaveLength(6);
    expect(text).toContain('/MediaBox [0 0 595.28 841.89]');
    expect(Buffer.from(await printPdf(print, sheetFonts)).equals(bytes)).toBe(true);
  });

  it('[LABEL-17] printed, every code of the plant is read back', async ({ skip }) => {
    const file = join(place, 'labels.pdf');
    writeFileSync(file, await printPdf(print, sheetFonts));
    // Poppler's renderer is a third program; where it is not installed, LABEL-14 stands alone.
    const { error, status } = spawnSync('pdftoppm', ['-r', '100', '-gray', '-png', file, join(place, 'page')]);
    if (error !== undefined) skip();
    expect(status).toBe(0);
    const pages = readdirSync(place).filter((name) => name.endsWith('.png'));
    expect(pages).toHaveLength(6);
    const found = await Promise.all(pages.map((name) => codesIn(readFileSync(join(place, name)))));
    expect(found.flat().toSorted()).toEqual(all.map(codeOf).toSorted());
  });
});

type Sheet = ReturnType<typeof labelsPrint>['sheets'][number];

/** Corners of everything drawn as a path. */
function inked(sheet: Sheet): { x: number; y: number }[] {
  return sheet.shapes.flatMap((shape) =>
    shape.shape === 'path'
      ? [...shape.d.matchAll(/[ML]([\d.]+) ([\d.]+)/g)].map(([, x, y]) => ({ x: Number(x), y: Number(y) }))
      : [],
  );
}

const inside = ({ x, y }: { x: number; y: number }, { width, height }: Sheet): boolean =>
  Math.min(x, y, width - x, height - y) > 5 * mm;

const within = (corner: { x: number; y: number }, x: number, y: number): boolean =>
  x > corner.x - 1 && x < corner.x + labelSize.width + 1 && y > corner.y - 1 && y < corner.y + labelSize.height + 1;
