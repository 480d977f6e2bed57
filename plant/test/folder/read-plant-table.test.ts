import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { byId, kinds } from '../../src/empty-plant.ts';
import { plantFiles, readPlantFolder } from '../../src/folder/read-plant-folder.ts';
import { readPlantTable } from '../../src/folder/read-plant-table.ts';
import { units } from '../../src/folder/units.ts';
import { plantTableCells, writePlantTable } from '../../src/folder/write-plant-folder.ts';
import type { Kind, Plant } from '../../src/plant.ts';
import { readWith } from '../sample-folder.ts';

const bytes = (text: string) => new TextEncoder().encode(text);
const read = (kind: Kind, text: string, plant: Plant) =>
  readPlantTable(kind, { file: 'mine.csv', bytes: bytes(text) }, plant);

function sample(): Plant {
  const { plant } = readWith();
  if (plant === undefined) throw new Error('the sample has a mistake');
  return plant;
}

function demo(): Plant {
  const folder = new URL('../../../demo/', import.meta.url);
  const there = plantFiles.flatMap((file) => {
    try {
      return [[file, new Uint8Array(readFileSync(new URL(file, folder)))] as const];
    } catch {
      return [];
    }
  });
  const { plant } = readPlantFolder(new Map(there));
  if (plant === undefined) throw new Error('the demo has a mistake');
  return plant;
}

describe('one table against a plant', () => {
  it('[TABLE-01] new things are added, known ones changed, others left', () => {
    const plant = sample();
    const table =
      'id,source,belt,width_mm,left_m,sealed\nroll-1,measured,Reed-20,30,38.5,yes\nroll-2,measured,Reed-20,25,100,no\n';
    const reading = read('rolls', table, plant);
    expect(reading).toMatchObject({ rows: 2, added: ['roll-2'], changed: ['roll-1'], unchanged: 0, problems: [] });
    expect(reading.definitions).toEqual([
      { kind: 'rolls', thing: { ...plant.rolls['roll-1'], left_m: 38.5 } },
      {
        kind: 'rolls',
        thing: { id: 'roll-2', source: 'measured', belt: 'Reed-20', width_m: 0.025, left_m: 100, sealed: false },
      },
    ]);
    const same = read('rolls', 'id,source,belt,width_mm,left_m,sealed\nroll-1,measured,Reed-20,30,40,yes\n', plant);
    expect(same).toMatchObject({ added: [], changed: [], unchanged: 1, definitions: [] });
  });

  it('[TABLE-02] a column that is not there leaves its field and the source of it; an empty cell empties the field', () => {
    const [before] = Object.values(sample().positions);
    const thing = { ...before, name: 'gate', lot: 'A7', sources: { takeUp_m: 'measured' } } as NonNullable<
      typeof before
    >;
    const plant = { ...sample(), positions: byId([thing]) };
    const { definitions } = read('positions', 'id,source,line,number,lot,status\nL1-1,person,L1,1,,torn\n', plant);
    const { lot: _, ...kept } = thing;
    expect(definitions).toEqual([{ kind: 'positions', thing: { ...kept, status: 'torn' } }]);
    const told = read('positions', 'id,source,line,number,takeUp_mm\nL1-1,person,L1,1,140\n', plant).definitions[0];
    expect(told?.thing).toMatchObject({
      takeUp_m: 0.14,
      name: 'gate',
      lot: 'A7',
      status: 'running',
      fittedOn: '2026-03-02',
    });
    expect(told?.thing).not.toHaveProperty('sources');
  });

  it('[TABLE-03] references lead to what the plant has', () => {
    const plant = sample();
    expect(read('positions', 'id,source,line,number\nL1-2,person,L1,2\n', plant).added).toEqual(['L1-2']);
    const { problems, definitions } = read('rolls', 'id,source,belt,width_mm,left_m\nr9,person,Reed-2O,30,1\n', plant);
    expect(problems).toEqual([
      {
        file: 'mine.csv',
        row: 2,
        field: 'belt',
        level: 'error',
        code: 'dangling-reference',
        data: { value: 'Reed-2O', other: 'belts', nearest: 'Reed-20' },
      },
    ]);
    expect(definitions).toEqual([]);
    // Nothing of the kind is there at all: still the row is told, not a missing file.
    const none = read('rolls', 'id,source,belt,width_mm,left_m\nr9,person,Reed-20,30,1\n', {
      ...plant,
      belts: byId([]),
    });
    expect(none.problems.map(({ code, row }) => `${code} ${row}`)).toEqual(['dangling-reference 2']);
  });

  it('[TABLE-04] every wrong row is named, and then nothing is taken', () => {
    const table =
      'id,source,line,number\nL1-2,person,L1,2\nL1-3,person,L1,zero\n,person,L1,4\nL1-2,person,L1,5\nL1-6,nobody,L9,6\n';
    const { problems, definitions, added } = read('positions', table, sample());
    expect(problems.map(({ row, code }) => `${row} ${code}`).sort()).toEqual([
      '3 not-a-number',
      '4 missing-value',
      '5 duplicate-id',
      '6 dangling-reference',
      '6 not-one-of',
    ]);
    expect(definitions).toEqual([]);
    expect(added).toEqual(['L1-2']);
  });

  it('[TABLE-05] what a table would break elsewhere stops it, what was wrong before does not', () => {
    const plant = sample();
    const head = 'id,source,name,belt,width_mm,setElongation_pct,speed_m_s,hoursPerDay,load_kg_m,bed_m,takeUpStroke_mm';
    // The position's take-up stands at 130 mm.
    const short = `${head}\nL1,person,Infeed,Reed-20,30,0.8,0.75,16,25,6,125\n`;
    const { problems, definitions } = read('lines', short, plant);
    expect(problems.map(({ file, code, level, data }) => `${level} ${file} ${code} ${data['id']}`)).toContain(
      'error positions take-up-over-stroke L1-1',
    );
    expect(definitions).toEqual([]);
    const line = plant.lines['L1'];
    const wrong = { ...plant, lines: byId(line === undefined ? [] : [{ ...line, takeUpStroke_m: 0.125 }]) };
    expect(read('rolls', 'id,source,belt,width_mm,left_m\nr9,person,Reed-20,30,1\n', wrong)).toMatchObject({
      added: ['r9'],
      problems: [],
    });
  });

  it('[TABLE-06] a table of any kind, written and read, changes nothing', () => {
    const plant = demo();
    let tables = 0;
    for (const kind of kinds) {
      const things = Object.keys(plant[kind]).length;
      if (things === 0) continue;
      const styles = units.length.flatMap(({ unit }) => [
        { delimiter: ',', decimal: '.', unitOf: () => unit } as const,
        { delimiter: ';', decimal: ',', unitOf: () => unit } as const,
      ]);
      for (const style of styles) {
        const reading = read(kind, writePlantTable(plant, kind, style), plant);
        expect(reading.problems.filter(({ level }) => level === 'error')).toEqual([]);
        expect(reading).toMatchObject({ unchanged: things, added: [], changed: [] });
        tables += 1;
      }
      const cells = plantTableCells(plant, kind).map((row) =>
        row.map((cell) => (cell === undefined ? '' : String(cell))),
      );
      const reading = readPlantTable(kind, { file: 'mine.xlsx', cells }, plant);
      expect(reading).toMatchObject({ unchanged: things, added: [], changed: [] });
    }
    expect(tables).toBe(100);
  });

  it('[TABLE-07] cells of a workbook are read like a file, rows by their number', () => {
    const cells = [
      ['id', 'source', 'line', 'number', ''],
      [],
      ['L1-2', 'person', 'L1', '2'],
      ['L1-3', 'person', 'L1', '2,5x'],
    ];
    const { problems, added } = readPlantTable('positions', { file: 'mine.xlsx', cells }, sample());
    expect(added).toEqual(['L1-2']);
    expect(problems).toEqual([
      { file: 'mine.xlsx', row: 4, field: 'number', level: 'error', code: 'not-a-number', data: { value: '2,5x' } },
    ]);
    const empty = readPlantTable('positions', { file: 'mine.xlsx', cells: [] }, sample());
    expect(empty.problems.map(({ code }) => code)).toEqual(['no-header']);
    const wide = readPlantTable(
      'positions',
      { file: 'x', cells: [Array.from({ length: 201 }, (_, i) => `c${i}`)] },
      sample(),
    );
    expect(wide.problems.map(({ code }) => code)).toEqual(['too-many-columns']);
    const long = readPlantTable(
      'positions',
      { file: 'x', cells: Array.from({ length: 100_002 }, () => ['x']) },
      sample(),
    );
    expect(long.problems.map(({ code }) => code)).toEqual(['too-many-rows']);
  });

  it('[TABLE-08] a text that a spreadsheet would run is written behind an apostrophe', () => {
    const plant = sample();
    const texts = ['=cmd()', '+1', '-1', '@SUM(A1)', "'=x", '<img src=x onerror=alert(1)>'];
    const [roll] = Object.values(plant.rolls);
    const rolls = byId(texts.map((note, at) => ({ ...roll, id: `r${at}`, note })) as NonNullable<typeof roll>[]);
    const csv = writePlantTable({ ...plant, rolls }, 'rolls');
    for (const cell of csv.split(/[,\n]/)) expect(cell).not.toMatch(/^[=+\-@\t\r]/);
    expect(csv).toContain("'=cmd()");
    expect(read('rolls', csv, { ...plant, rolls })).toMatchObject({ unchanged: texts.length, problems: [] });
    expect(plantTableCells({ ...plant, rolls }, 'rolls').flat()).toContain("'@SUM(A1)");
  });

  it('[TABLE-09] marks of direction and spaces of no width are refused by their number', () => {
    for (const [sign, name] of [
      ['\u202e', 'U+202E'],
      ['\u200f', 'U+200F'],
      ['\u200b', 'U+200B'],
      ['\u2066', 'U+2066'],
    ]) {
      const { problems } = read('badges', `id,source,shape,word\nb2,person,star,He${sign}ron\n`, sample());
      expect(problems.map(({ code, row, data }) => [code, row, data['value']])).toEqual([['hidden-signs', 2, name]]);
    }
  });

  it('[TABLE-10] ten thousand rows against ten thousand positions', () => {
    const plant = sample();
    const [position] = Object.values(plant.positions);
    const many = Array.from({ length: 10_000 }, (_, at) => ({ ...position, id: `p${at}`, number: at + 1 }));
    const big = { ...plant, positions: byId(many as NonNullable<typeof position>[]) };
    const csv = writePlantTable(big, 'positions').replace('p77,', 'p10000,');
    const start = process.cpuUsage();
    const reading = read('positions', csv, big);
    const { user, system } = process.cpuUsage(start);
    expect(reading).toMatchObject({ rows: 10_000, added: ['p10000'], unchanged: 9_999 });
    expect((user + system) / 1e6).toBeLessThan(2);
  });

  it('[TABLE-11] a kind of which there is nothing is a heading to fill in', () => {
    const plant = { ...sample(), rolls: byId([]) };
    expect(writePlantTable(plant, 'rolls')).toBe('id,source,note,belt,width_mm,left_mm,lot,sealed,place\n');
    expect(read('rolls', writePlantTable(plant, 'rolls'), plant)).toMatchObject({ rows: 0, problems: [] });
  });

  it('[TABLE-08] a formula without an apostrophe is text, and a number below zero a number', () => {
    const plant = sample();
    const table = 'id,source,belt,width_mm,left_m,note\nr9,person,Reed-20,30,1,=cmd()|calc!A0\n';
    expect(read('rolls', table, plant).definitions[0]?.thing).toMatchObject({ note: '=cmd()|calc!A0' });
    const [pulley] = Object.values(plant.pulleys);
    const pulleys = byId([{ ...pulley, y_m: -5 }] as NonNullable<typeof pulley>[]);
    const written = writePlantTable({ ...plant, pulleys }, 'pulleys');
    expect(written).toContain(',-5000,');
    expect(plantTableCells({ ...plant, pulleys }, 'pulleys').flat()).toContain(-5000);
    expect(read('pulleys', written, { ...plant, pulleys })).toMatchObject({ unchanged: 1, problems: [] });
  });

  it('[TABLE-12] encodings, separators and decimal marks read alike; too long a text is refused', () => {
    const plant = sample();
    const rows = [
      ['id', 'source', 'belt', 'width_mm', 'left_m', 'place'],
      ['r9', 'person', 'Reed-20', '30', '38.5', 'Gestell Süd'],
    ];
    const written = (separator: string, mark: string) =>
      rows.map((row) => row.map((cell) => cell.replace('.', mark)).join(separator)).join('\r\n');
    const text = written(';', ',');
    const utf16 = new Uint8Array([0xff, 0xfe, ...[...text].flatMap((sign) => [sign.charCodeAt(0), 0])]);
    const files = {
      comma: bytes(written(',', '.')),
      mark: bytes(`\ufeff${text}`),
      tab: bytes(written('\t', ',')),
      utf16,
      windows: Uint8Array.from(text, (sign) => sign.charCodeAt(0)),
    };
    for (const [form, file] of Object.entries(files)) {
      const { definitions } = readPlantTable('rolls', { file: 'mine.csv', bytes: file }, plant);
      expect(definitions[0]?.thing, form).toMatchObject({ left_m: 38.5, width_m: 0.03, place: 'Gestell Süd' });
    }
    const long = read('rolls', text.replace('Gestell', 'x'.repeat(10_000)), plant);
    expect(long.problems).toMatchObject([{ row: 2, field: 'place', code: 'too-long', data: { length: 10_004 } }]);
  });
});
