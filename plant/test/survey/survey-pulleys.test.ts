import { Refusal } from '@loopwright/engine/refusal';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkAgainst } from '../../../tools/validation/check.ts';
import { linePulleys } from '../../src/survey/line-pulleys.ts';
import { measurementUncertainty_m, surveyOrigins, surveyPulleys } from '../../src/survey/survey-pulleys.ts';
import { surveyQuestions } from '../../src/survey/survey-questions.ts';
import { pulleySchema } from '../../src/things/line.ts';
import { type Survey, surveyLayouts, surveySchema } from '../../src/things/survey.ts';
import { knownLine, knownPulleys, runs, surveyOf } from './random-survey.ts';

const anyLine = fc.constantFrom(...surveyLayouts).chain(knownLine);

const simple: Survey = surveySchema.parse({
  id: 's',
  source: 'measured',
  line: 'L1',
  layout: 'end-drive',
  infeedDiameter_m: 0.1,
  endDistance_m: 10,
  dischargeDiameter_m: 0.08,
});

function refusal(survey: Survey): Pick<Refusal, 'code' | 'path'> {
  try {
    surveyPulleys(survey);
  } catch (error) {
    if (error instanceof Refusal) return { code: error.code, path: error.path };
    throw error;
  }
  return { code: 'accepted', path: '' };
}

describe('survey of a line', () => {
  it('[SURVEY-01] questions follow the walk: infeed end, drive, take-up, discharge end', () => {
    for (const layout of surveyLayouts) {
      const fields = surveyQuestions(layout).map((question) => question.field);
      expect(fields[0]).toBe('infeedDiameter_m');
      expect(fields.at(-1)).toBe('dischargeDiameter_m');
      const stations = fields.map((field) => /^(infeed|drive|takeUp|end|discharge)/.exec(field)?.[0]);
      const order = ['infeed', 'drive', 'takeUp', 'end', 'discharge'];
      const places = stations.map((station) => order.indexOf(station ?? ''));
      expect(places).toEqual([...places].sort((a, b) => a - b));
      expect(fields.some((field) => field.startsWith('drive'))).toBe(layout.startsWith('bed-drive'));
      expect(fields.some((field) => field.startsWith('takeUp'))).toBe(layout.endsWith('bed-take-up'));
    }
  });

  it('[SURVEY-02] a survey made from known coordinates gives them back', () => {
    fc.assert(
      fc.property(anyLine, (known) => {
        const pulleys = surveyPulleys(surveyOf(known));
        const expected = knownPulleys(known);
        expect(pulleys).toHaveLength(expected.length);
        for (const [i, [x_m, y_m, diameter_m]] of expected.entries()) {
          expect(pulleys[i]?.x_m).toBeCloseTo(x_m, 9);
          expect(pulleys[i]?.y_m).toBeCloseTo(y_m, 9);
          expect(pulleys[i]?.diameter_m).toBe(diameter_m);
        }
      }),
      runs,
    );
  });

  it('[SURVEY-03] every pulley meets the schema, is measured, and its uncertainty is not zero but at the start of the tape', () => {
    fc.assert(
      fc.property(anyLine, (known) => {
        for (const [i, pulley] of surveyPulleys(surveyOf(known)).entries()) {
          expect(pulleySchema.parse(pulley)).toEqual(pulley);
          expect(pulley.source).toBe('measured');
          expect(pulley.uncertainty_m > 0).toBe(i > 0);
        }
      }),
      { ...runs, numRuns: Math.min(runs.numRuns, 300) },
    );
  });

  it('[SURVEY-04] a coordinate moves with the measurements it names and with no other', () => {
    const layout = 'bed-drive-bed-take-up';
    fc.assert(
      fc.property(knownLine(layout), fc.constantFrom(...surveyQuestions(layout)), (known, { field }) => {
        const survey = surveyOf(known);
        const before = surveyPulleys(survey);
        const after = surveyPulleys({ ...survey, [field]: (survey[field] ?? 0) + 0.001 });
        for (const [i, origin] of surveyOrigins(survey).entries()) {
          for (const key of ['x_m', 'y_m', 'diameter_m'] as const) {
            const moved = Math.abs((after[i]?.[key] ?? 0) - (before[i]?.[key] ?? 0));
            expect(moved).toBeCloseTo(origin[key].includes(field) ? 0.001 : 0, 9);
          }
        }
      }),
      runs,
    );
  });

  it('[SURVEY-05] scaling every measurement scales every coordinate', () => {
    const scale = fc.double({ min: 0.5, max: 3, noNaN: true });
    fc.assert(
      fc.property(anyLine, scale, (known, by) => {
        const survey = surveyOf(known);
        const scaled = { ...survey };
        for (const { field } of surveyQuestions(survey.layout)) scaled[field] = (survey[field] ?? 0) * by;
        const larger = surveyPulleys(scaled);
        for (const [i, pulley] of surveyPulleys(survey).entries()) {
          expect(larger[i]?.x_m).toBeCloseTo(pulley.x_m * by, 9);
          expect(larger[i]?.y_m).toBeCloseTo(pulley.y_m * by, 9);
        }
      }),
      runs,
    );
  });

  it('[SURVEY-06] there is one drive in every layout, and one take-up where the layout has one', () => {
    for (const layout of surveyLayouts) {
      const roles = fc.sample(knownLine(layout), { seed: 42, numRuns: 1 }).flatMap((known) => {
        return surveyPulleys(surveyOf(known)).map((pulley) => pulley.role);
      });
      expect(roles.filter((role) => role === 'drive')).toHaveLength(1);
      expect(roles.filter((role) => role === 'take-up')).toHaveLength(layout.endsWith('take-up') ? 1 : 0);
    }
  });

  it('[SURVEY-07] end drive and end take-up stand at opposite ends', () => {
    const survey: Survey = { ...simple, layout: 'end-drive-end-take-up' };
    expect(surveyPulleys(survey).map((p) => p.role)).toEqual(['drive', 'take-up']);
    expect(surveyPulleys({ ...survey, driveEnd: 'discharge' }).map((p) => p.role)).toEqual(['take-up', 'drive']);
    expect(refusal({ ...survey, takeUpEnd: 'infeed' })).toEqual({ code: 'same-end', path: 'takeUpEnd' });
  });

  it('[SURVEY-08] a missing, superfluous or impossible measurement is refused by its name', () => {
    const [known] = fc.sample(knownLine('bed-drive-bed-take-up'), { seed: 42, numRuns: 1 });
    if (!known) throw new Error('no line drawn');
    const whole = surveyOf(known);
    for (const { field } of surveyQuestions(whole.layout)) {
      const { [field]: _left, ...without } = whole;
      expect(refusal(without as Survey)).toEqual({ code: 'measurement-missing', path: field });
      expect(refusal({ ...whole, [field]: Number.NaN })).toEqual({ code: 'not-finite', path: field });
    }
    expect(refusal({ ...simple, driveDrop_m: 0.3 })).toEqual({ code: 'measurement-not-used', path: 'driveDrop_m' });
    const beyond = { ...whole, takeUpDistance_m: known.endX_m + 5 };
    expect(refusal(beyond).code).toBe('measurement-out-of-order');
    expect(refusal({ ...whole, driveSnubBefore_m: (whole.driveDistance_m ?? 0) + 1 })).toEqual({
      code: 'measurement-out-of-order',
      path: 'driveSnubBefore_m',
    });
  });

  it('[SURVEY-09] a take-up before the drive is taken as it stands', () => {
    const [known] = fc.sample(knownLine('bed-drive-bed-take-up'), { seed: 42, numRuns: 1 });
    if (!known?.drive || !known.takeUp) throw new Error('no line drawn');
    const turned = surveyOf({ ...known, drive: known.takeUp, takeUp: known.drive });
    const roles = surveyPulleys(turned).map((pulley) => pulley.role);
    expect(roles.indexOf('take-up')).toBeLessThan(roles.indexOf('drive'));
  });

  it('[SURVEY-10] a reading within +/- a has the standard uncertainty a over the square root of 3', () => {
    checkAgainst({
      topic: 'survey',
      id: 'GUM rectangular limits',
      source: 'JCGM 100:2008, 4.3.7: u = a/sqrt(3)',
      evidence: 'derived',
      inputs: 'tape +/- (3 mm + 0.05 %), 10 m: a = 8 mm',
      unit: 'mm',
      published: 8 / Math.sqrt(3),
      ours: measurementUncertainty_m(simple, 'endDistance_m') * 1000,
      tolerance: 1e-9,
      why: 'rounding only',
    });
  });

  it('[SURVEY-11] the pulley table comes before a survey, the later survey before the earlier', () => {
    const pulleys = Object.fromEntries(surveyPulleys(simple).map((pulley) => [pulley.id, pulley]));
    const surveys = { a: { ...simple, id: 'a' }, b: { ...simple, id: 'b', endDistance_m: 12 } };
    expect(linePulleys({ pulleys, surveys }, 'L1').survey).toBeUndefined();
    expect(linePulleys({ pulleys, surveys }, 'L1').pulleys.at(-1)?.x_m).toBe(10);
    expect(linePulleys({ pulleys: {}, surveys }, 'L1').pulleys.at(-1)?.x_m).toBe(12);
    expect(linePulleys({ pulleys: {}, surveys: {} }, 'L1').pulleys).toEqual([]);
  });
});
