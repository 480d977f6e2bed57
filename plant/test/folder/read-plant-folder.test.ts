import { describe, expect, it } from 'vitest';
import { type FolderProblem, folderProblemCodes, readingCodes } from '../../src/folder/problem.ts';
import { edited, readWith, sampleFiles } from '../sample-folder.ts';

const latin1 = (text: string) => Uint8Array.from([...text].map((letter) => letter.charCodeAt(0)));
const semicolons = (file: string) => (sampleFiles[file] ?? '').replaceAll(',', ';');

describe('a plant folder without mistakes', () => {
  it('[PLANT-20] becomes definitions and a plant, numbers in SI', () => {
    const { plant, problems, notes, definitions } = readWith();
    expect(problems).toEqual([]);
    expect(notes).toEqual([]);
    expect(plant?.belts['Reed-20']).toMatchObject({ thickness_m: 0.002, k1_N_mm_pct: 8, freshFactor: 1.8 });
    expect(plant?.lines['L1']).toMatchObject({ setElongation: 0.008, takeUpStroke_m: 0.3, takeUpKind: 'screw' });
    expect(plant?.presses['P1']?.maxPressure_Pa).toBe(400_000);
    expect(plant?.pulleys['L1.3']).toMatchObject({ role: 'drive', diameter_m: 0.16, y_m: -0.33 });
    expect(definitions[0]).toEqual({
      kind: 'plant',
      thing: { id: 'sample', name: 'Sample Works', note: 'invented' },
    });
    expect(definitions).toHaveLength(18);
  });

  it('[PLANT-20] only plant.csv must be there', () => {
    const nothing = Object.fromEntries(Object.keys(sampleFiles).map((file) => [file, undefined]));
    const alone = { ...nothing, 'plant.csv': sampleFiles['plant.csv'] };
    expect(readWith(alone)).toMatchObject({ problems: [], plant: { id: 'sample', belts: {} } });
    expect(readWith({ 'plant.csv': undefined }).problems).toEqual([
      { file: 'plant.csv', level: 'error', code: 'file-missing', data: {} },
    ]);
  });

  it('[PLANT-21] a column may carry any unit of its kind', () => {
    const lines = edited(
      'lines.csv',
      sampleFiles['lines.csv'] ?? '',
      [
        'id,source,name,belt,width_in,setElongation_ratio,speed_ft_min,hoursPerDay,load_lb_ft,bed_ft,takeUpStroke_cm',
        'L1,person,Infeed,Reed-20,1.25,0.008,150,16,17,20,30',
      ].join('\n'),
    );
    const { plant } = readWith(lines);
    const line = plant?.lines['L1'];
    expect(line?.width_m).toBeCloseTo(0.03175, 15);
    expect(line?.speed_m_s).toBeCloseTo(0.762, 15);
    expect(line?.bed_m).toBeCloseTo(6.096, 14);
    expect(line?.load_kg_m).toBeCloseTo(25.298787, 6);
    expect(line?.takeUpStroke_m).toBeCloseTo(0.3, 15);
  });

  it('[PLANT-22] columns `source:` say where single numbers come from', () => {
    const belts = edited('belts.csv', 'thickness_mm', 'source:thickness,thickness_mm');
    const { plant } = readWith(
      edited(
        'belts.csv',
        sampleFiles['belts.csv'] ?? '',
        (belts['belts.csv'] ?? '').replace('sheet A,', 'sheet A,measured,'),
      ),
    );
    expect(plant?.belts['Reed-20']?.sources).toEqual({ thickness_m: 'measured' });
  });

  it('[PLANT-23] yes and no are read in three languages', () => {
    for (const [word, value] of [
      ['ja', true],
      ['sí', true],
      ['WAHR', true],
      ['0', false],
      ['nein', false],
    ] as const) {
      const { plant } = readWith(edited('rolls.csv', ',yes', `,${word}`));
      expect(plant?.rolls['roll-1']?.sealed, word).toBe(value);
    }
  });

  it('[PLANT-24] semicolons with decimal commas and tabs with decimal points are read', () => {
    const commas = semicolons('belts.csv').replace('2.0;0.8', '2,0;0,8').replace('2.4', '2,4');
    expect(readWith({ 'belts.csv': commas }).plant?.belts['Reed-20']?.neutralLine_m).toBe(0.0008);
    const tabs = (sampleFiles['belts.csv'] ?? '').replaceAll(',', '\t');
    expect(readWith({ 'belts.csv': tabs }).plant?.belts['Reed-20']?.neutralLine_m).toBe(0.0008);
  });

  it('[PLANT-25] a pulley without an id is known by line and order, one with an id keeps it', () => {
    const named = (sampleFiles['pulleys.csv'] ?? '')
      .replace(/^source/, 'id,source')
      .replaceAll('\nmeasured', '\n,measured');
    const { plant } = readWith({ 'pulleys.csv': named.replace('\n,measured', '\ninfeed,measured') });
    expect(Object.keys(plant?.pulleys ?? {}).slice(0, 2)).toEqual(['infeed', 'L1.2']);
  });
});

describe('notes', () => {
  it('[PLANT-02] a file in Windows-1252 is read, with a note', () => {
    const { plant, notes } = readWith({ 'plant.csv': latin1('id,name\nsample,Fördertechnik Süd') });
    expect(plant?.name).toBe('Fördertechnik Süd');
    expect(notes).toEqual([{ file: 'plant.csv', code: 'encoding-assumed', data: { value: 'Windows-1252' } }]);
  });

  it('[PLANT-26] a table nobody reads is noted with the name it may have meant; other files are left alone', () => {
    const { notes } = readWith({ 'pulley.csv': 'a', 'README.md': 'x' });
    expect(notes).toEqual([
      { file: 'pulley.csv', code: 'unknown-file', data: { value: 'pulley.csv', nearest: 'pulleys.csv' } },
    ]);
  });
});

type Case = readonly [
  code: (typeof readingCodes)[number],
  changes: Record<string, string | Uint8Array | undefined>,
  problem: Partial<FolderProblem>,
];

const belt = (from: string, to: string) => edited('belts.csv', from, to);

/** Every code a file alone can have, once at least. */
const cases: readonly Case[] = [
  ['file-missing', { 'belts.csv': undefined }, { file: 'belts.csv', data: { other: 'recipes.csv' } }],
  [
    'file-too-large',
    { 'belts.csv': new Uint8Array(200_000_000) },
    { file: 'belts.csv', data: { value: 200_000_000, max: 20_000_000 } },
  ],
  ['too-many-rows', { 'badges.csv': `id\n${'x\n'.repeat(100_001)}` }, { file: 'badges.csv', data: { max: 100_000 } }],
  ['too-many-columns', { 'badges.csv': ','.repeat(300) }, { file: 'badges.csv', data: { value: 301, max: 200 } }],
  ['not-text', { 'badges.csv': Uint8Array.of(0x00, 0xff) }, { data: { value: '0x00', at: 0 } }],
  ['workbook', { 'badges.csv': Uint8Array.of(0x50, 0x4b, 0x03, 0x04) }, { file: 'badges.csv' }],
  ['open-quote', { 'badges.csv': 'id,source\n"b1,person' }, { row: 2 }],
  ['no-header', { 'badges.csv': '\n# nothing here\n' }, { file: 'badges.csv' }],
  [
    'duplicate-column',
    belt('neutralLine_mm', 'thickness_in'),
    { row: 1, field: 'thickness_in', data: { value: 'thickness_in', other: 'thickness_mm' } },
  ],
  [
    'unknown-column',
    belt('k1_', 'k2_'),
    { field: 'k2_N_mm_pct', data: { value: 'k2_N_mm_pct', nearest: 'k1_N_mm_pct' } },
  ],
  [
    'missing-column',
    belt(
      ',fingerLength_mm\nReed-20,example,sheet A,2.0,0.8,8,60,2.4,10,80',
      '\nReed-20,example,sheet A,2.0,0.8,8,60,2.4,10',
    ),
    {
      row: 1,
      field: 'fingerLength',
      data: { allowed: 'fingerLength_m, fingerLength_cm, fingerLength_mm, fingerLength_in, fingerLength_ft' },
    },
  ],
  ['unit-missing', edited('lines.csv', 'setElongation_pct', 'setElongation'), { field: 'setElongation' }],
  ['unknown-unit', belt('thickness_mm', 'thickness_MM'), { field: 'thickness_MM' }],
  ['ragged-row', belt('2.0,0.8', '2,0,0,8'), { row: 2, field: '', data: { value: 12, max: 10 } }],
  ['not-one-row', { 'plant.csv': 'id,name\na,A\nb,B' }, { file: 'plant.csv', data: { value: 2 } }],
  ['not-one-row', { 'plant.csv': 'id,name\n' }, { file: 'plant.csv', data: { value: 0 } }],
  ['missing-value', belt('2.0,0.8', ',0.8'), { row: 2, field: 'thickness_mm' }],
  ['not-a-number', belt('2.0,0.8', 'NaN,0.8'), { row: 2, field: 'thickness_mm', data: { value: 'NaN' } }],
  ['not-a-number', belt('2.0,0.8', 'two,0.8'), { row: 2, field: 'thickness_mm', data: { value: 'two' } }],
  ['decimal-comma', belt('2.0,0.8', '"2,0",0.8'), { field: 'thickness_mm', data: { value: '2,0' } }],
  [
    'mixed-decimals',
    { 'belts.csv': semicolons('belts.csv').replace('0.8', '0,8') },
    { row: 2, field: 'neutralLine_mm', data: { value: '0,8', other: '2.0', otherRow: 2 } },
  ],
  [
    'thousands-separator',
    { 'belts.csv': semicolons('belts.csv').replace('2.0', '1.234,5') },
    { row: 2, field: 'thickness_mm', data: { value: '1.234,5' } },
  ],
  [
    'thousands-separator',
    { 'belts.csv': semicolons('belts.csv').replace('2.0', '1,234.5') },
    { row: 2, field: 'thickness_mm', data: { value: '1,234.5' } },
  ],
  [
    'out-of-range',
    belt('2.0,0.8', '-2.0,0.8'),
    { row: 2, field: 'thickness_mm', data: { value: '-2.0', min: 0.3, max: 20, unit: 'mm' } },
  ],
  ['out-of-range', belt('2.0,0.8', '1e999,0.8'), { data: { value: '1e999', min: 0.3, max: 20, unit: 'mm' } }],
  [
    'not-one-of',
    edited('badges.csv', 'circle', 'oval'),
    { field: 'shape', data: { value: 'oval', allowed: 'triangle, circle, square, diamond, star, hexagon' } },
  ],
  ['not-yes-or-no', edited('rolls.csv', ',yes', ',maybe'), { field: 'sealed', data: { value: 'maybe' } }],
  ['not-a-day', edited('positions.csv', '2026-03-02', '02.03.2026'), { data: { value: '02.03.2026' } }],
  ['not-a-day', edited('positions.csv', '2026-03-02', '2026-02-30'), { data: { value: '2026-02-30' } }],
  [
    'not-a-moment',
    edited(
      'positions.csv',
      'fittedOn,takeUp_mm\nL1-1,person,L1,1,running,2026-03-02',
      'since,takeUp_mm\nL1-1,person,L1,1,running,2026-03-02',
    ),
    { field: 'since', data: { value: '2026-03-02' } },
  ],
  ['too-long', edited('badges.csv', 'Otter', 'O'.repeat(301)), { field: 'word' }],
  ['hidden-signs', edited('badges.csv', 'Otter', 'Ot\u202eter'), { row: 2, field: 'word', data: { value: 'U+202E' } }],
  ['bad-id', edited('badges.csv', 'b1', '__proto__'), { field: 'id', data: { value: '__proto__' } }],
  ['bad-id', edited('badges.csv', 'b1', '<img src=x>'), { field: 'id', data: { value: '<img src=x>' } }],
  [
    'duplicate-id',
    { 'badges.csv': `${sampleFiles['badges.csv']}\nb1,person,star,Heron` },
    { row: 3, field: 'id', data: { value: 'b1', otherRow: 2 } },
  ],
  [
    'dangling-reference',
    edited('recipes.csv', 'Reed-20', 'Reed-02'),
    { row: 2, field: 'belt', data: { value: 'Reed-02', other: 'belts.csv', nearest: 'Reed-20' } },
  ],
  [
    'more-problems',
    { 'badges.csv': `id,source,shape,word\n${'!,?,?,\n'.repeat(400)}` },
    { file: 'badges.csv', data: { value: 1100 } },
  ],
];

describe('mistakes in a plant folder', () => {
  it.each(cases)('[PLANT-30] %s is found and stops the import', (code, changes, expected) => {
    const { problems, plant, definitions } = readWith(changes);
    const found = problems.filter((problem) => problem.code === code);
    expect(found, JSON.stringify(problems.slice(0, 5))).toEqual([
      expect.objectContaining({ level: 'error', ...expected }),
    ]);
    expect(plant).toBeUndefined();
    expect(definitions).toEqual([]);
  });

  it('[PLANT-30] every code has a case', () => {
    expect([...new Set(cases.map(([code]) => code))].sort()).toEqual([...readingCodes].sort());
    expect(new Set(folderProblemCodes).size).toBe(folderProblemCodes.length);
  });

  it('[PLANT-31] all mistakes are told at once, across files and within a row, each once', () => {
    const { problems } = readWith({
      ...belt('2.0,0.8,8', '-2,abc,'),
      ...edited('badges.csv', 'circle', 'oval'),
      ...edited('positions.csv', 'L1-1,person,L1', 'L1-1,person,L9'),
    });
    expect(problems.map(({ file, code, field }) => `${file} ${code} ${field}`)).toEqual([
      'belts.csv out-of-range thickness_mm',
      'belts.csv not-a-number neutralLine_mm',
      'belts.csv missing-value k1_N_mm_pct',
      'badges.csv not-one-of shape',
      'positions.csv dangling-reference line',
    ]);
  });

  it('[PLANT-31] a misspelt column is one mistake, not one a row', () => {
    const { problems } = readWith(belt('thickness_mm', 'thicknes_mm'));
    expect(problems).toEqual([
      expect.objectContaining({ code: 'unknown-column', data: { value: 'thicknes_mm', nearest: 'thickness_mm' } }),
    ]);
  });

  it('[PLANT-32] an id made from line and order that is no id is told', () => {
    const line = 'L'.repeat(40);
    const changes = Object.fromEntries(
      ['lines.csv', 'pulleys.csv', 'positions.csv'].map((file) => [
        file,
        (sampleFiles[file] ?? '').replaceAll(/\bL1\b(?!-)/g, line),
      ]),
    );
    expect(readWith(changes).problems.map(({ code }) => code)).toEqual(Array(8).fill('bad-id'));
  });

  it('[PLANT-33] ids that name something in the language itself are ids like any other', () => {
    for (const id of ['constructor', 'toString', 'hasOwnProperty', 'prototype']) {
      const { problems, plant } = readWith(edited('badges.csv', 'b1', id));
      expect(problems).toEqual([]);
      expect(plant?.badges[id]?.word).toBe('Otter');
      expect(plant?.belts[id]).toBeUndefined();
      const lost = readWith(edited('rolls.csv', 'Reed-20', id)).problems;
      expect(lost).toEqual([
        expect.objectContaining({ code: 'dangling-reference', data: { value: id, other: 'belts.csv' } }),
      ]);
    }
  });

  it('[PLANT-33] hostile headings and names change nothing outside the plant', () => {
    const { problems } = readWith({
      'badges.csv': 'id,source,shape,word,__proto__,source:__proto__\nb1,person,circle,x,y,measured',
    });
    expect(problems.map(({ code }) => code)).toEqual(['unknown-column', 'unknown-column']);
    expect(Object.keys(Object.prototype)).toEqual([]);
    const { plant } = readWith(edited('badges.csv', 'Otter', '"<script>alert(1)</script>, ""x"""'));
    expect(plant?.badges['b1']?.word).toBe('<script>alert(1)</script>, "x"');
  });
});
