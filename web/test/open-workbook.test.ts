import { strToU8, zipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import writeXlsxFile from 'write-excel-file/universal';
import type { FileFault } from '../src/places/stores/table/file-fault.ts';
import { FileRefused } from '../src/places/stores/table/file-fault.ts';
import { openWorkbook, workbookLimits } from '../src/places/stores/table/open-workbook.ts';
import { workbookCells } from '../src/places/stores/table/workbook-cells.ts';
import { workbookOf } from './workbook-of.ts';

async function faultOf(bytes: Uint8Array): Promise<FileFault | undefined> {
  try {
    await workbookCells(bytes);
    return undefined;
  } catch (problem) {
    if (problem instanceof FileRefused) return problem.fault;
    throw problem;
  }
}

describe('workbooks', () => {
  test('[TABLES-01] the first sheet as text: numbers to the last digit, days, yes and no, formulas by their result', async () => {
    const blob = await writeXlsxFile(
      [
        ['id', 'width', 'day', 'sealed', 'note'],
        ['a', -5, new Date(Date.UTC(2026, 2, 2)), true, '=cmd()'],
        ['b', 0.1 + 0.2, new Date(Date.UTC(2026, 2, 2, 6, 30)), false, null],
      ],
      { sheet: 'x', dateFormat: 'yyyy-mm-dd' },
    ).toBlob();
    expect(await workbookCells(new Uint8Array(await blob.arrayBuffer()))).toEqual([
      ['id', 'width', 'day', 'sealed', 'note'],
      ['a', '-5', '2026-03-02', 'true', '=cmd()'],
      ['b', '0.30000000000000004', '2026-03-02T06:30:00Z', 'false', ''],
    ]);
    const formula = workbookOf('<row r="1"><c r="A1"><f>1+1</f><v>2</v></c></row>');
    expect(await workbookCells(formula)).toEqual([['2']]);
  });

  test('[TABLES-02] sizes are looked at before anything is unpacked', async () => {
    const filled = (size: number) => new Uint8Array(size);
    // Zeros pack a thousandfold (RFC 1951: at most 258 bytes for two bits or so).
    expect(await faultOf(workbookOf('', { 'xl/media/a.bin': filled(4 * 2 ** 20) }))).toEqual({
      code: 'steep',
      data: { max: workbookLimits.ratio },
    });
    expect(await faultOf(workbookOf('', { 'a.bin': filled(120 * 2 ** 20) }))).toEqual({
      code: 'unpacks-large',
      data: { value: 121, max: 100 },
    });
    const many = Object.fromEntries(Array.from({ length: 1000 }, (_, at) => [`a${at}.xml`, strToU8('<a/>')]));
    expect(await faultOf(workbookOf('', many))).toEqual({ code: 'many-files', data: { value: 1004, max: 1000 } });
  });

  test('[TABLES-02] a part that unpacks to more than its directory says is no workbook', async () => {
    const bytes = workbookOf(`<row r="1"><c r="A1"><v>${'7'.repeat(200_000)}</v></c></row>`);
    const view = new DataView(bytes.buffer);
    let lies = 0;
    for (let at = 0; at + 46 < bytes.length; at++) {
      // The directory's entry of each large part says 100 bytes (APPNOTE.TXT 4.3.12).
      if (view.getUint32(at, true) !== 0x02014b50 || view.getUint32(at + 24, true) < 200_000) continue;
      view.setUint32(at + 24, 100, true);
      lies += 1;
    }
    expect(lies).toBe(1);
    expect(await faultOf(bytes)).toEqual({ code: 'no-workbook', data: {} });
  });

  test('[TABLES-03] a lone cell far out is refused by row and column, before a place is set aside for all up to it', async () => {
    const cell = (address: string) =>
      `<row r="1"><c r="A1"><v>1</v></c></row><row><c r='${address}'><v>1</v></c></row>`;
    expect(await faultOf(workbookOf(cell('A1048576')))).toEqual({
      code: 'many-rows',
      data: { value: 1_048_576, max: 100_001 },
    });
    expect(await faultOf(workbookOf(cell('XFD2')))).toEqual({
      code: 'many-columns',
      data: { value: 16_384, max: 200 },
    });
    expect(await faultOf(workbookOf(cell('GR100000')))).toEqual({
      code: 'many-cells',
      data: { value: 20_000_000, max: 4_000_000 },
    });
    expect(await faultOf(workbookOf(cell('&#88;FD1048576')))).toEqual({ code: 'no-workbook', data: {} });
    expect(await faultOf(workbookOf('<row r="99999999999"/>'))).toEqual({ code: 'no-workbook', data: {} });
    expect(await faultOf(workbookOf(cell('B2')))).toBeUndefined();
  });

  test('[TABLES-04] texts that name other texts are not blown up, and nothing outside is fetched', async () => {
    const laughs = Array.from({ length: 20 }, (_, at) => `<!ENTITY a${at + 1} "&a${at};&a${at};&a${at};&a${at};">`);
    const bomb = `<!DOCTYPE x [<!ENTITY a0 "aaaaaaaaaa">${laughs.join('')}<!ENTITY out SYSTEM "file:///etc/passwd">]>`;
    const bytes = workbookOf('<row r="1"><c r="A1" t="inlineStr"><is><t>&a20;&out;</t></is></c></row>', {}, bomb);
    const before = Date.now();
    const cells = await workbookCells(bytes).catch((problem: unknown) => problem);
    expect(Date.now() - before).toBeLessThan(2000);
    if (cells instanceof FileRefused) expect(cells.fault.code).toBe('no-workbook');
    else expect(JSON.stringify(cells).length).toBeLessThan(100);
  });

  test('[TABLES-02] what is cut off, or no workbook at all, is refused', async () => {
    const bytes = workbookOf('<row r="1"><c r="A1"><v>1</v></c></row>');
    for (let end = 1; end < bytes.length; end += 37) {
      expect(await faultOf(bytes.slice(0, end))).toMatchObject({ code: 'no-workbook' });
    }
    expect(await faultOf(zipSync({ 'log.jsonl': strToU8('{}') }))).toEqual({ code: 'no-workbook', data: {} });
    expect(() => openWorkbook(new Uint8Array())).toThrow(FileRefused);
  });
});
