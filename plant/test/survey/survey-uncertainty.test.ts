import { Refusal } from '@loopwright/engine/refusal';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkAgainst } from '../../../tools/validation/check.ts';
import { surveyQuestions } from '../../src/survey/survey-questions.ts';
import { surveyUncertainty } from '../../src/survey/survey-uncertainty.ts';
import { type Survey, surveyLayouts, surveySchema } from '../../src/things/survey.ts';
import { knownLine, runs, surveyOf } from './random-survey.ts';

const belt = { thickness_m: 0.002 };
const anyLine = fc.constantFrom(...surveyLayouts).chain(knownLine);

const twoPulleys: Survey = surveySchema.parse({
  id: 's',
  source: 'measured',
  line: 'L1',
  layout: 'end-drive',
  infeedDiameter_m: 0.1,
  endDistance_m: 10,
  dischargeDiameter_m: 0.1,
});

describe('uncertainty of a surveyed loop', () => {
  it('[SURVEY-12] two equal pulleys: length 2C + pi(D + t), uncertainty from 2 u(C) and (pi/2) u(D) twice', () => {
    const { length_m, uncertainty_m } = surveyUncertainty(twoPulleys, belt);
    const closed = {
      topic: 'survey',
      source: 'closed form of two equal pulleys; law of propagation, JCGM 100:2008, 5.1.2',
      evidence: 'derived',
      inputs: 'C 10 m, D 100 mm twice, t 2 mm; tape +/- 8 mm, caliper +/- 1 mm',
      unit: 'mm',
    } as const;
    checkAgainst({
      ...closed,
      id: 'two equal pulleys, length',
      published: 20_000 + 102 * Math.PI,
      ours: length_m * 1000,
      tolerance: 1e-6,
      why: 'rounding only',
    });
    checkAgainst({
      ...closed,
      id: 'two equal pulleys, standard uncertainty',
      published: Math.hypot((2 * 8) / Math.sqrt(3), Math.PI / 2 / Math.sqrt(3), Math.PI / 2 / Math.sqrt(3)),
      ours: uncertainty_m * 1000,
      tolerance: 1e-4,
      why: 'central differences with a step of 0.01 mm',
    });
  });

  it('[SURVEY-13] a worse tape never makes the length surer, and an errorless one makes it exact', () => {
    const larger = fc.double({ min: 1.01, max: 10, noNaN: true });
    fc.assert(
      fc.property(anyLine, larger, (known, by) => {
        const survey = surveyOf(known);
        const worse = { ...survey, tapeError_m: survey.tapeError_m * by };
        const none = { ...survey, tapeError_m: 0, tapeShare: 0, diameterError_m: 0 };
        expect(surveyUncertainty(worse, belt).uncertainty_m).toBeGreaterThan(
          surveyUncertainty(survey, belt).uncertainty_m,
        );
        expect(surveyUncertainty(none, belt).uncertainty_m).toBe(0);
      }),
      { ...runs, numRuns: Math.ceil(runs.numRuns / 10) },
    );
  });

  it('[SURVEY-14] all lengths and errors larger by a factor: length and uncertainty larger by the same', () => {
    fc.assert(
      fc.property(anyLine, fc.double({ min: 0.8, max: 2, noNaN: true }), (known, by) => {
        const survey = surveyOf(known);
        const scaled = {
          ...survey,
          tapeError_m: survey.tapeError_m * by,
          diameterError_m: survey.diameterError_m * by,
        };
        for (const { field } of surveyQuestions(survey.layout)) scaled[field] = (survey[field] ?? 0) * by;
        const small = surveyUncertainty(survey, belt);
        const large = surveyUncertainty(scaled, { thickness_m: belt.thickness_m * by });
        expect(large.length_m / small.length_m).toBeCloseTo(by, 9);
        expect(large.uncertainty_m / small.uncertainty_m).toBeCloseTo(by, 5);
      }),
      { ...runs, numRuns: Math.ceil(runs.numRuns / 10) },
    );
  });

  it('[SURVEY-15] shares sum to one, and the end distance counts twice on a line without a drive under the bed', () => {
    fc.assert(
      fc.property(knownLine('end-drive'), (known) => {
        const { shares } = surveyUncertainty(surveyOf(known), belt);
        expect(shares.reduce((sum, part) => sum + part.share, 0)).toBeCloseTo(1, 9);
        expect(shares[0]?.field).toBe('endDistance_m');
        // Exact: 2 cos(a), a = slope of the belt between pulleys of unequal size; here at most 0.1 m in 6 m.
        expect(shares[0]?.sensitivity).toBeGreaterThan(2 * Math.cos(0.02));
        expect(shares[0]?.sensitivity).toBeLessThan(2 + 1e-6);
      }),
      { ...runs, numRuns: Math.ceil(runs.numRuns / 10) },
    );
  });

  it('[SURVEY-16] measurements that no belt can follow are refused by the one that placed the pulley', () => {
    const [known] = fc.sample(knownLine('bed-drive'), { seed: 42, numRuns: 1 });
    if (!known?.drive) throw new Error('no line drawn');
    const survey = surveyOf(known);
    const overlapping = { ...survey, driveDrop_m: survey.driveSnubDrop_m, driveSnubBefore_m: 0.01 };
    expect(() => surveyUncertainty(overlapping, belt)).toThrow(Refusal);
    try {
      surveyUncertainty(overlapping, belt);
    } catch (error) {
      expect((error as Refusal).path).toMatch(/^drive\w+_m$/);
    }
  });
});
