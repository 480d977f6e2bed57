import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { spliceCard } from '@loopwright/jobs';
import { type AuditReport, auditReport } from '@loopwright/jobs/audit-report';
import { deviceOf } from '@loopwright/records/log';
import { voice } from '@loopwright/words';
import { afterAll, describe, expect, it } from 'vitest';
import { Device, World } from '../../../jobs/test/press-run/run-world.ts';
import { signedRun } from '../../../jobs/test/press-run/signed-run.ts';
import { wholeRun } from '../../../jobs/test/press-run/whole-run.ts';
import { readCheckpointCode } from '../../src/code/checkpoint-code.ts';
import { auditPage } from '../../src/page/audit-page.ts';
import { flowPapers, flowSheets } from '../../src/paper/flow-sheets.ts';
import { printPdf } from '../../src/pdf/print-pdf.ts';
import { flowPrint } from '../../src/print/page-print.ts';
import { pageText } from '../../src/text/page-text.ts';
import { barePlant, drawingsOf, readers, wordsOf } from '../demo-pages.ts';
import { codesIn } from '../label/raster.ts';
import { overlappingTexts, textsOutside } from '../overlaps.ts';
import { sheetFonts } from '../sheet-fonts.ts';

const whole = await signedRun(wholeRun().events, { seenTo: 20 });
const made = {
  plant: { id: 'quillmoor', name: 'Quillmoor Crate Works' },
  checked: true,
  now: '2026-11-25T07:00:00.000Z',
  engine: '0.1.0',
};
const report = auditReport(whole.state, { ...made, logs: [whole.log] });
const bareCard = spliceCard(barePlant('QM-04-3'), 'QM-04-3', { now: '2026-11-25T02:10:00.000Z', people: 1 });
const bare = auditReport(new World(new Device('phone'), bareCard, 'RUN00002').state, {
  ...made,
  checked: false,
  logs: [],
});

const english = { language: 'en', units: 'metric' } as const;
const pageFor = (of: AuditReport, { language, units }: (typeof readers)[number] = english) =>
  auditPage(of, voice(language, units));
const textOf = (of: AuditReport) => pageText(pageFor(of), 100).replaceAll(/\s+/g, ' ');

const place = mkdtempSync(join(tmpdir(), 'loopwright-record-'));
afterAll(() => rmSync(place, { recursive: true }));

describe('page of a record', () => {
  it('[AUDIT-10] all that an auditor asks has its section, in every language and unit system', () => {
    for (const reader of readers) {
      const page = pageFor(report, reader);
      const ids = [...page.front, ...page.back].map(({ id }) => id);
      for (const id of [
        'warnings',
        'made',
        'who',
        'when',
        'curve-1',
        'moments-1',
        'readings-1',
        'watched',
        'measures',
        'deviations',
        'inspection',
        'photos',
        'tension',
        'open',
        'steps',
        'notes',
        'taken-back',
        'passed-over',
        'numbers',
        'cycle-numbers',
        'formulas',
        'check',
        'logs',
        'software',
      ])
        expect(ids, reader.language).toContain(id);
      expect(wordsOf(page)).not.toMatch(/undefined|NaN|\[object|Infinity|audit\.|run\.\w+\./);
    }
    const text = textOf(report);
    for (const said of [
      'QM-04-3',
      'Flint-30',
      'F30-2610',
      'die-10x80',
      '13 Nov 2026',
      'flint-north',
      'Handed over to b2',
      'Snub roller S3',
    ])
      expect(text).toContain(said);
  });

  it('[AUDIT-11] what it shows and what it does not, and what is not accepted, not seen, not over, not checked comes first', () => {
    const first = (of: AuditReport): string => JSON.stringify(pageFor(of).front[0]);
    expect(first(report)).toContain('neither that the splice holds');
    expect(first(report)).toContain('One deviation is not accepted yet');
    expect(first(report)).toContain(`${report.unseen} entries of this run stand on one device only`);
    expect(first(report)).not.toContain('This run is not over');
    expect(first(bare)).toContain('This run is not over');
    expect(first(bare)).toContain('Made without the log behind it');
    expect(first({ ...report, checked: false })).toContain('The log was not checked');
    expect(first({ ...report, notCovered: 3 })).toContain('3 entries are newer than the head code');
  });

  it('[AUDIT-12] every computed number shows its formula with the inputs in place, every other where it comes from', () => {
    const page = pageFor(report);
    const rowsOf = (id: string) =>
      page.back
        .filter((each) => each.id === id)
        .flatMap(({ blocks }) => blocks.flatMap((block) => (block.kind === 'rows' ? block.rows : [])));
    const { numbers } = report.record.software;
    expect(rowsOf('numbers').length).toBe(numbers.length + 1);
    for (const { figure, text, label } of [...rowsOf('numbers'), ...rowsOf('cycle-numbers')])
      expect(figure?.source ?? text, label).toBeTruthy();
    const withInputs = [...numbers, ...(report.record.predicted?.numbers ?? [])].filter(
      ({ inputs }) => inputs !== undefined,
    );
    expect(rowsOf('formulas').length).toBe(withInputs.length + 1);
    // Tip to tip from the endless length and one finger: 64 222 + 80 = 64 302 mm.
    expect(JSON.stringify(rowsOf('formulas'))).toMatch(/S = 64\s222\smm \+ 80.0\smm \+ 0.0\smm = 64\s302\smm/);
    // Marks 2000 mm and 2018 mm apart: 18 / 2000 = 0.90 %.
    expect(JSON.stringify(rowsOf('tension').concat(rowsOf('formulas')))).toMatch(
      /\(2\s018\smm − 2\s000\smm\) \/ 2\s000\smm = 0.90\s%/,
    );
  });

  it('[AUDIT-13] both curves stand in one drawing that says in words what it shows; lines differ by pattern and mark', () => {
    for (const reader of readers) {
      const [drawing] = drawingsOf(pageFor(report, reader));
      if (!drawing) throw new Error('no drawing');
      expect(drawing.alt).toMatch(/7/);
      expect(overlappingTexts(drawing)).toEqual([]);
      expect(textsOutside(drawing)).toEqual([]);
    }
    const words = wordsOf(pageFor(report));
    for (const line of ['top, computed', 'bottom, read', 'open at 50\u00a0°C or less', 'Hold began', 'Opened'])
      expect(words).toContain(line);
  });

  it('[AUDIT-14] a record with little in it says so', () => {
    const text = textOf(bare);
    for (const said of ['Still under way', 'Nothing was in the press', 'Nothing was measured', 'Not set in this run'])
      expect(text).toContain(said);
  });
});

describe('a record on paper', () => {
  for (const paper of flowPapers)
    it(`[AUDIT-15] on ${paper} nothing overlaps, leaves the sheet or is left out`, () => {
      for (const reader of readers)
        for (const of of [report, bare]) {
          const page = pageFor(of, reader);
          const sheets = flowSheets(page, paper);
          if (paper !== 'A5') expect(sheets.length).toBeLessThanOrEqual(4);
          for (const sheet of sheets) {
            expect(overlappingTexts(sheet), `${reader.language} ${sheet.id}`).toEqual([]);
            expect(textsOutside(sheet, 14), `${reader.language} ${sheet.id}`).toEqual([]);
          }
          const printed = sheets
            .flatMap(({ shapes }) => shapes.flatMap((shape) => (shape.shape === 'text' ? [shape.text] : [])))
            .join(' ')
            .replaceAll(/\s+/g, ' ');
          for (const { title, blocks } of [...page.front, ...page.back]) {
            expect(printed).toContain(title.split(' ')[0]);
            for (const block of blocks)
              for (const { text = '' } of block.kind === 'rows' ? block.rows : [])
                for (const word of text.split(/\s/).filter((each) => each.length > 3)) expect(printed).toContain(word);
          }
        }
    });

  it('[AUDIT-16] every sheet carries run, head code and which sheet of how many it is', () => {
    for (const paper of ['A4', 'letter'] as const) {
      const sheets = flowSheets(pageFor(report, { language: 'de', units: 'metric' }), paper);
      for (const [i, sheet] of sheets.entries()) {
        const texts = sheet.shapes.flatMap((shape) => (shape.shape === 'text' ? [shape.text] : [])).join(' ');
        expect(texts).toContain('RUN00001');
        expect(texts).toContain(report.logs[0]?.code);
        expect(texts).toContain(`Seite ${i + 1} von ${sheets.length}`);
      }
    }
  });

  it('[AUDIT-17] the printed code is read back, and holds the signed checkpoint', async ({ skip }) => {
    const file = join(place, 'record.pdf');
    writeFileSync(file, await printPdf(flowPrint(pageFor(report), 'A4'), sheetFonts));
    // Poppler's renderer and ZXing are other programs than ours.
    const { error, status } = spawnSync('pdftoppm', [
      '-r',
      '200',
      '-gray',
      '-png',
      '-l',
      '1',
      file,
      join(place, 'page'),
    ]);
    if (error !== undefined) skip();
    expect(status).toBe(0);
    const [code = ''] = await codesIn(readFileSync(join(place, 'page-1.png')));
    const read = readCheckpointCode(code, (key) => deviceOf(new Uint8Array(Buffer.from(key, 'hex'))));
    expect(read).toEqual({ key: whole.log.key, checkpoint: whole.checkpoint });
  });

  it('[AUDIT-18] the same record gives the same bytes', async () => {
    const [one, other] = [
      await printPdf(flowPrint(pageFor(report), 'letter'), sheetFonts),
      await printPdf(flowPrint(pageFor(report), 'letter'), sheetFonts),
    ];
    expect(Buffer.from(one).equals(Buffer.from(other))).toBe(true);
  });
});
