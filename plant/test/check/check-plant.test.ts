import { describe, expect, it } from 'vitest';
import { type CheckCode, checkCodes } from '../../src/check/check-codes.ts';
import { plantChecks } from '../../src/check/check-plant.ts';
import type { FolderProblem } from '../../src/folder/problem.ts';
import { edited, readWith, sampleFiles } from '../sample-folder.ts';

type Case = readonly [CheckCode, Record<string, string | undefined>, Partial<FolderProblem>];

const line = (column: string, value: string | number) => {
  const [header, row] = (sampleFiles['lines.csv'] ?? '').split('\n');
  return { 'lines.csv': `${header},${column}\n${row},${value}` };
};
const survey = (row: string) => ({
  'pulleys.csv': undefined,
  'surveys.csv': `id,source,line,layout,infeedDiameter_mm,endDistance_mm,dischargeDiameter_mm\n${row}`,
});

/** Every pulley with an id of its own: p1, p2 and so on. */
const namedPulleys = (content: string) => {
  const [header, ...rows] = content.split('\n');
  return { 'pulleys.csv': [`id,${header}`, ...rows.map((row, i) => `p${i + 1},${row}`)].join('\n') };
};

/** One plant for every rule, wrong in that one thing. Numbers of `data` in SI. */
const cases: readonly Case[] = [
  [
    'neutral-line-outside-belt',
    edited('belts.csv', '2.0,0.8', '2.0,2.2'),
    {
      file: 'belts.csv',
      row: 2,
      field: 'neutralLine_mm',
      data: { id: 'Reed-20', kind: 'length', value: 0.0022, min: 0, max: 0.002 },
    },
  ],
  [
    'covers-over-thickness',
    edited(
      'belts.csv',
      sampleFiles['belts.csv'] ?? '',
      (sampleFiles['belts.csv'] ?? '').replace('dataSheet', 'rollerCover_mm').replace('sheet A', '1.4'),
    ),
    {
      field: 'rollerCover_mm',
      data: { id: 'Reed-20', kind: 'length', value: expect.closeTo(0.0014 + 0.002 / 3, 12), max: 0.002 },
    },
  ],
  [
    'elongation-window-empty',
    edited(
      'belts.csv',
      sampleFiles['belts.csv'] ?? '',
      (sampleFiles['belts.csv'] ?? '').replace('dataSheet', 'minElongation_pct').replace('sheet A', '1.0'),
    ),
    { field: 'minElongation_pct', data: { id: 'Reed-20', kind: 'percent', value: 0.01, max: 0.01 } },
  ],
  [
    'die-fits-no-belt',
    { 'dies.csv': `${sampleFiles['dies.csv']}\ndie-5x40,person,5,40,60` },
    { row: 3, field: 'pitch_mm', data: { id: 'die-5x40', kind: 'length', pitch: 0.005, fingerLength: 0.04 } },
  ],
  [
    'line-without-die',
    edited('dies.csv', '10,80,60', '10,70,60'),
    {
      file: 'lines.csv',
      field: 'belt',
      data: { id: 'L1', kind: 'length', pitch: 0.01, fingerLength: 0.08, other: 'Reed-20' },
    },
  ],
  [
    'die-too-narrow',
    edited('dies.csv', '10,80,60', '10,80,25'),
    { field: 'width_mm', data: { id: 'L1', kind: 'length', value: 0.03, max: 0.025, other: 'die-10x80' } },
  ],
  [
    'line-without-template',
    edited('templates.csv', '30,2.0', '40,2.0'),
    { file: 'lines.csv', field: 'width_mm', data: { id: 'L1', kind: 'length', value: 0.03, other: 'Reed-20' } },
  ],
  [
    'template-wider-than-die',
    { 'templates.csv': `${sampleFiles['templates.csv']}\nwide,person,die-10x80,70,2.0,1.5` },
    {
      row: 3,
      field: 'pocketWidth_mm',
      data: { id: 'wide', kind: 'length', value: 0.07, max: 0.06, other: 'die-10x80' },
    },
  ],
  [
    'template-depth-differs',
    edited('templates.csv', '30,2.0', '30,3.0'),
    {
      field: 'pocketDepth_mm',
      data: { id: 'template-30', kind: 'length', value: 0.003, max: 0.002, other: 'Reed-20' },
    },
  ],
  [
    'belt-wider-than-pulley',
    edited('pulleys.csv', '120,left,running,50', '120,left,running,25'),
    {
      file: 'pulleys.csv',
      row: 7,
      field: 'faceWidth_mm',
      data: { id: 'L1.6', kind: 'length', value: 0.025, min: 0.03, other: 'L1' },
    },
  ],
  [
    'pulley-under-limit',
    edited('pulleys.csv', '120,left', '50,left'),
    {
      row: 7,
      field: 'diameter_mm',
      data: { id: 'L1.6', kind: 'length', value: 0.05, min: 0.06, other: 'Reed-20', line: 'L1' },
    },
  ],
  [
    'counter-bend-under-limit',
    edited('pulleys.csv', 'L1,2,snub,2890,-90,80', 'L1,2,snub,2890,-90,70'),
    {
      row: 3,
      field: 'diameter_mm',
      data: { id: 'L1.2', kind: 'length', value: 0.07, min: 0.075, other: 'Reed-20', line: 'L1' },
    },
  ],
  [
    'take-up-reference-over-stroke',
    edited('lines.csv', '300,120', '300,310'),
    { field: 'takeUpReference_mm', data: { id: 'L1', kind: 'length', value: 0.31, max: 0.3 } },
  ],
  [
    'take-up-over-stroke',
    edited('positions.csv', ',130', ',301'),
    {
      file: 'positions.csv',
      field: 'takeUp_mm',
      data: { id: 'L1-1', kind: 'length', value: 0.301, max: 0.3, other: 'L1' },
    },
  ],
  ['take-up-stroke-missing', edited('lines.csv', '300,120', ',120'), { field: 'takeUpStroke_mm', data: { id: 'L1' } }],
  ['take-up-direction-missing', line('takeUpY', 0), { field: 'takeUpX', data: { id: 'L1' } }],
  [
    'take-up-force-missing',
    line('takeUpKind', 'spring'),
    { field: 'takeUpForce_N', data: { id: 'L1', value: 'spring' } },
  ],
  [
    'drives-not-one',
    edited('pulleys.csv', 'drive', 'idler'),
    { file: 'lines.csv', row: 2, data: { id: 'L1', value: 0 } },
  ],
  [
    'take-ups-not-one',
    edited('pulleys.csv', '8,end', '8,take-up'),
    { file: 'lines.csv', data: { id: 'L1', value: 2 } },
  ],
  [
    'take-up-not-expected',
    line('takeUpKind', 'none'),
    { field: 'takeUpKind', data: { id: 'L1', value: 'none', other: 'L1.6' } },
  ],
  [
    'duplicate-order',
    namedPulleys(edited('pulleys.csv', 'L1,5,snub', 'L1,4,snub')['pulleys.csv'] ?? ''),
    { file: 'pulleys.csv', row: 6, field: 'order', data: { id: 'p5', value: 4, other: 'p4', line: 'L1' } },
  ],
  ['line-without-path', { 'pulleys.csv': undefined }, { file: 'lines.csv', row: 2, data: { id: 'L1' } }],
  [
    'survey-refused',
    { ...line('takeUpKind', 'none'), ...survey('s1,measured,L1,bed-drive,100,10000,100') },
    {
      file: 'surveys.csv',
      row: 2,
      data: expect.objectContaining({ id: 's1', reason: 'measurement-missing', line: 'L1' }),
    },
  ],
  [
    'path-refused',
    edited('pulleys.csv', '3690,-90', '3110,-90'),
    { file: 'pulleys.csv', data: expect.objectContaining({ line: 'L1', reason: 'no-tangent' }) },
  ],
  [
    'elongation-outside-window',
    edited('lines.csv', '30,0.8', '30,1.2'),
    {
      field: 'setElongation_pct',
      data: { id: 'L1', kind: 'percent', value: 0.012, min: 0.003, max: 0.01, other: 'Reed-20' },
    },
  ],
  [
    'recipe-not-above-opening',
    edited(
      'recipes.csv',
      sampleFiles['recipes.csv'] ?? '',
      (sampleFiles['recipes.csv'] ?? '')
        .replace('dwell_s', 'dwell_s,open_degC')
        .replace('180,185,170', '180,60,170,60'),
    ),
    { field: 'bottom_degC', data: { id: 'reed-north', kind: 'temperature', value: 60, min: 60 } },
  ],
  [
    'recipe-over-press-pressure',
    edited('presses.csv', '110,4', '110,1.5'),
    {
      file: 'recipes.csv',
      field: 'beltPressure_bar',
      data: { id: 'reed-north', kind: 'pressure', value: 200_000, max: 150_000, other: 'P1' },
    },
  ],
];

describe('limits across fields', () => {
  it.each(cases)('[PLANT-50] %s is found where it stands', (code, changes, expected) => {
    const { problems } = readWith(changes);
    const rule = plantChecks.find((check) => check.code === code);
    const found = problems.filter((problem) => problem.code === code);
    expect(found, JSON.stringify(problems)).toEqual([expect.objectContaining({ ...expected, level: rule?.level })]);
  });

  it('[PLANT-50] every rule has a case, and every code a rule', () => {
    expect(cases.map(([code]) => code).sort()).toEqual([...checkCodes].sort());
    expect(plantChecks.map(({ code }) => code).sort()).toEqual([...checkCodes].sort());
  });
});
