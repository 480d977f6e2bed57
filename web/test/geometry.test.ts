import {
  byId,
  emptyPlant,
  lineSchema,
  type Plant,
  surveyLayouts,
  surveyQuestions,
  surveySchema,
} from '@loopwright/plant';
import { definitions, fold } from '@loopwright/records';
import { describe, expect, test } from 'vitest';
import { checkAgainst } from '../../tools/validation/check.ts';
import { startState } from '../src/places/start/start-steps.ts';
import { knownGeometry, movedRow, newRow, openedGeometry } from '../src/places/stores/line/geometry.ts';
import { geometryChanges } from '../src/places/stores/line/geometry-changes.ts';
import { draftOf, geometryOf } from '../src/places/stores/line/geometry-draft.ts';
import { layoutSketch } from '../src/places/stores/line/layout-sketch.ts';
import { type Led, loopNow } from '../src/places/stores/line/loop-now.ts';
import { readGeometry } from '../src/places/stores/line/read-geometry.ts';
import { rowsToStart } from '../src/places/stores/line/rows-to-start.ts';

const belt = {
  id: 'Heath-20',
  source: 'data sheet',
  thickness_m: 0.0024,
  k1_N_mm_pct: 12,
  freshFactor: 1.8,
  minPulley_m: 0.05,
  areaMass_kg_m2: 2.7,
  minElongation: 0.003,
  maxElongation: 0.01,
  friction: 0.3,
  frictionWet: 0.2,
  lengthTolerance: 0.003,
  fingerPitch_m: 0.01,
  fingerLength_m: 0.08,
  antistatic: false,
} as const;

const line = lineSchema.parse({
  id: 'L1',
  source: 'person',
  name: 'Infeed',
  belt: 'Heath-20',
  width_m: 0.05,
  setElongation: 0.008,
  speed_m_s: 0.5,
  hoursPerDay: 16,
  load_kg_m: 25,
  bed_m: 20,
});

const plant: Plant = { ...emptyPlant('mill', 'Mill'), belts: byId([belt]), lines: byId([line]) };
const ends = { infeedDiameter_m: 0.12, dischargeDiameter_m: 0.12, endDistance_m: 22.1 } as const;
const survey = surveySchema.parse({
  id: 'L1.survey',
  source: 'measured',
  line: 'L1',
  layout: 'end-drive-end-take-up',
  ...ends,
});
const outward = { ...line, takeUpX: 1, takeUpY: 0 };
const writer = { language: 'en', units: 'metric' } as const;

describe('sketches', () => {
  const wish = { driveEnd: 'infeed', takeUpEnd: undefined, alt: '' } as const;
  const asked = surveyLayouts.flatMap((layout) => surveyQuestions(layout).map(({ field }) => ({ layout, field })));

  test.each(surveyLayouts)('[GEOMETRY-01] %s: the drive is filled, and no two layouts look alike', (layout) => {
    const { shapes } = layoutSketch({ ...wish, layout });
    expect(shapes.filter((shape) => shape.shape === 'circle' && shape.fill === 'ink')).toHaveLength(1);
    const others = surveyLayouts.filter((other) => other !== layout);
    for (const other of others) expect(layoutSketch({ ...wish, layout: other }).shapes).not.toEqual(shapes);
  });

  test.each(asked)(
    '[GEOMETRY-02] $layout, $field: the sketch points at it and at nothing else',
    ({ layout, field }) => {
      const { shapes, height } = layoutSketch({ ...wish, layout, focus: field });
      const pointed = shapes.filter((shape) => shape.ink === 'accent' && shape.shape === 'path');
      expect(pointed.length).toBeGreaterThanOrEqual(3);
      const other = surveyQuestions(layout).find((question) => question.field !== field);
      expect(layoutSketch({ ...wish, layout, focus: other?.field ?? field }).shapes).not.toEqual(shapes);
      const numbers = pointed.flatMap((shape) =>
        (shape.shape === 'path' ? (shape.d.match(/-?[\d.]+/g) ?? []) : []).map(Number),
      );
      expect(Math.max(...numbers.filter((_, i) => i % 2 === 1))).toBeLessThanOrEqual(height);
    },
  );
});

describe('the loop as one types', () => {
  test('[GEOMETRY-03] two equal end pulleys: length, wraps and take-up gain of an open belt', () => {
    const { path, gain, worst } = loopNow(plant, outward, belt, { survey });
    const inputs = 'C = 22.1 m, D = 120 mm, t = 2.4 mm';
    const source = 'open belt round two equal pulleys: L = 2C + pi(D + t), wrap pi, dL/dC = 2';
    const about = { topic: 'app', source, evidence: 'derived', inputs, tolerance: 1e-9, why: 'rounding' } as const;
    checkAgainst({
      ...about,
      id: 'APP-03 length',
      unit: 'm',
      published: 44.2 + Math.PI * 0.1224,
      ours: path?.length.value ?? 0,
    });
    checkAgainst({
      ...about,
      id: 'APP-04 wrap',
      unit: 'rad',
      published: Math.PI,
      ours: path?.pulleys[0]?.wrap_rad ?? 0,
    });
    checkAgainst({ ...about, id: 'APP-05 take-up gain', unit: '1', published: 2, ours: gain ?? 0 });
    expect(worst?.measurement).toBe('endDistance_m');
  });

  test('[GEOMETRY-03] the range of the length is that of tape and caliper', () => {
    const { path } = loopNow(plant, outward, belt, { survey });
    // Rectangular errors, GUM 4.3.7 and 5.1.2: a = 3 mm + 0.05 % of 22.1 m for the tape, 1 mm for each diameter.
    const tape_m = (2 * (0.003 + 0.0005 * 22.1)) / Math.sqrt(3);
    const caliper_m = ((Math.PI / 2) * 0.001) / Math.sqrt(3);
    checkAgainst({
      topic: 'app',
      id: 'APP-06 half the 95 % range of a surveyed loop',
      source: 'JCGM 100:2008 (GUM) 4.3.7, 5.1.2; open belt, dL/dC = 2, dL/dD = pi/2 for each pulley',
      evidence: 'derived',
      inputs: 'tape 3 mm + 0.05 %, caliper 1 mm, C = 22.1 m',
      unit: 'm',
      published: 2 * Math.hypot(tape_m, caliper_m, caliper_m),
      ours: (path?.length.high ?? 0) - (path?.length.value ?? 0),
      tolerance: 1e-6,
      why: 'derivatives by differences',
    });
  });

  test('[GEOMETRY-04] what stands in the way is named: the measurement of a survey, the pulley of a table', () => {
    const tight: Led = { survey: { ...survey, endDistance_m: 0.1 } };
    expect(loopNow(plant, outward, belt, tight).fault).toMatchObject({
      code: 'pulleys-overlap',
      measurement: 'endDistance_m',
    });
    const bed = surveySchema.parse({
      ...survey,
      layout: 'end-drive-bed-take-up',
      takeUpDistance_m: 30,
      takeUpDrop_m: 0.4,
      takeUpDiameter_m: 0.1,
      takeUpSnubBefore_m: 0.1,
      takeUpSnubAfter_m: 0.1,
      takeUpSnubDrop_m: 0.1,
      takeUpSnubDiameter_m: 0.06,
    });
    expect(loopNow(plant, outward, belt, { survey: bed }).fault).toMatchObject({
      code: 'measurement-out-of-order',
      measurement: 'endDistance_m',
    });
    const [first, second] = loopNow(plant, outward, belt, { survey }).pulleys;
    if (first === undefined || second === undefined) throw new Error('a survey has two end pulleys at least');
    const third = { ...second, id: 'L1.p3', order: 3, x_m: 22.05, turn: 'left' } as const;
    const { fault } = loopNow(plant, outward, belt, { pulleys: [first, second, third] });
    expect(fault?.code).toBe('pulleys-overlap');
    expect([1, 2]).toContain(fault?.pulley);
  });
});

describe('what is written down', () => {
  const known = knownGeometry(plant, line);

  test('[GEOMETRY-05] only what differs is written, and what was written says what was entered', () => {
    const changes = geometryChanges(known, outward, { survey });
    expect(changes.map(({ type }) => type)).toEqual(['line.defined', 'survey.defined']);
    const after = fold(changes, plant);
    expect(after.surveys['L1.survey']).toEqual(survey);
    expect(after.lines['L1']).toEqual(outward);
    expect(geometryChanges(knownGeometry(after, outward), outward, { survey })).toEqual([]);
  });

  test('[GEOMETRY-06] a survey takes coordinates away, coordinates leave the survey', () => {
    const pulleys = loopNow(plant, outward, belt, { survey }).pulleys.map((pulley, i) => ({
      ...pulley,
      id: `L1.p${i + 1}`,
    }));
    const both = fold(geometryChanges(known, line, { pulleys }), fold(geometryChanges(known, line, { survey }), plant));
    expect(Object.keys(both.surveys)).toEqual(['L1.survey']);
    expect(Object.keys(both.pulleys)).toEqual(['L1.p1', 'L1.p2']);
    const back = fold(geometryChanges(knownGeometry(both, line), line, { survey }), both);
    expect(Object.keys(back.pulleys)).toEqual([]);
  });

  test('[GEOMETRY-07] a draft gives back the editor as it was left', () => {
    const opened = openedGeometry(plant, known, 'us');
    const typed = {
      ...opened,
      survey: { ...opened.survey, layout: { text: 'end-drive' }, infeedDiameter_m: { text: '4 1/2', unit: 'in' } },
      rows: [newRow('L1.p1', 'L1', {}, 'us'), newRow('L1.p10', 'L1', {}, 'us')],
    };
    expect(geometryOf(JSON.parse(JSON.stringify(draftOf(typed, known))))).toEqual(typed);
    expect(geometryOf({ entries: { 'nobody.knows': { text: '' } } })).toBeUndefined();
  });

  test('[GEOMETRY-08] the table of pulleys begins with those that the survey found, to the digit', () => {
    const surveyed = fold(geometryChanges(known, outward, { survey }), plant);
    const now = knownGeometry(surveyed, outward);
    const opened = openedGeometry(surveyed, now, 'us');
    const reader = { plant: surveyed, known: now, language: 'en' } as const;
    const rows = rowsToStart(surveyed, now, readGeometry(opened, reader), writer);
    const { pulleys } = readGeometry({ ...opened, way: 'coordinates', rows }, reader);
    expect(pulleys.map((pulley) => [pulley?.x_m, pulley?.y_m, pulley?.diameter_m, pulley?.role])).toEqual([
      [0, 0, 0.12, 'drive'],
      [22.1, 0, 0.12, 'take-up'],
    ]);
    expect(movedRow(rows, 1, -1).map(({ key }) => key)).toEqual(rows.map(({ key }) => key).reverse());
    expect(movedRow(rows, 0, -1)).toBe(rows);
  });

  test('[GEOMETRY-09] an end take-up tightens outwards, a layout without one has none, travel is where it stands and what is left', () => {
    const opened = openedGeometry(plant, known, 'metric');
    const typed = (layout: string, takeUp: Readonly<Record<string, string>>) => {
      const entries = (texts: Readonly<Record<string, string>>) =>
        Object.fromEntries(Object.entries(texts).map(([key, text]) => [key, { text }]));
      const geometry = {
        ...opened,
        survey: { ...opened.survey, ...entries({ layout }) },
        takeUp: { ...opened.takeUp, ...entries(takeUp) },
      };
      return readGeometry(geometry, { plant, known, language: 'en' });
    };
    expect(typed('end-drive-end-take-up', { takeUpBack: '120', takeUpOn: '80' }).line).toMatchObject({
      takeUpX: 1,
      takeUpY: 0,
      takeUpKind: 'screw',
      takeUpReference_m: 0.12,
      takeUpStroke_m: 0.2,
    });
    expect(typed('end-drive', {}).line?.takeUpKind).toBe('none');
    expect(typed('end-drive-bed-take-up', { direction: 'up' }).line).toMatchObject({ takeUpX: 0, takeUpY: 1 });
    expect(typed('end-drive-bed-take-up', { takeUpBack: '120' }).takeUpProblems).toHaveProperty('takeUpOn');
  });
});

test('[START-02] the next step is what the plant lacks first; nothing but belt, line, survey and positions is needed', () => {
  const nothing = emptyPlant('mill', 'Mill');
  expect(startState(nothing, false).step).toBe('name');
  expect(startState(nothing, true).step).toBe('belts');
  expect(startState({ ...nothing, belts: plant.belts }, true).step).toBe('lines');
  expect(startState(plant, true).step).toBe('measure');
  const measured = fold(definitions([{ kind: 'surveys', thing: survey }]), plant);
  expect(startState(measured, true).step).toBe('positions');
  const position = { id: 'L1-1', source: 'person', line: 'L1', number: 1, status: 'running' } as const;
  expect(startState(fold(definitions([{ kind: 'positions', thing: position }]), measured), true)).toEqual({
    step: 'ready',
    position: 'L1-1',
  });
});
