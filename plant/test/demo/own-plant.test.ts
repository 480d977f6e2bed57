import { describe, expect, it } from 'vitest';
import { linePulleys } from '../../src/survey/line-pulleys.ts';
import { surveyUncertainty } from '../../src/survey/survey-uncertainty.ts';
import { readFolder } from './read-folder.ts';

const reading = readFolder('docs/guide/own-plant');

describe('the worked example of the guide', () => {
  it('[GUIDE-01] the folder of the guide has no error', () => {
    expect(reading.problems.filter((problem) => problem.level === 'error')).toEqual([]);
    expect(reading.notes).toEqual([]);
  });

  it('[GUIDE-02] inches and feet are read exactly: 481.25 in, 39 ft, 100 ft/min', () => {
    expect(reading.plant?.surveys['L1-survey']?.endDistance_m).toBeCloseTo(481.25 * 0.0254, 12);
    expect(reading.plant?.lines['L1']?.bed_m).toBeCloseTo(39 * 0.3048, 12);
    expect(reading.plant?.lines['L1']?.speed_m_s).toBeCloseTo((100 * 0.3048) / 60, 12);
  });

  it('[GUIDE-03] the survey gives a path: drive under the bed, the discharge end as take-up, uncertainty of centimetres', () => {
    const { plant } = reading;
    const survey = plant?.surveys['L1-survey'];
    const belt = plant?.belts['Teasel-20'];
    if (!plant || !survey || !belt) throw new Error('the guide has lost its line');
    const roles = linePulleys(plant, 'L1').pulleys.map((pulley) => pulley.role);
    expect(roles).toEqual(['end', 'snub', 'drive', 'snub', 'take-up']);
    const { length_m, uncertainty_m, shares } = surveyUncertainty(survey, belt);
    // A belt that goes there and back past a drive below the bed is longer than twice the centre distance and half
    // of both end pulleys, and shorter than that with the way down to the drive and back up added twice.
    const bare_m = 2 * survey.endDistance_m + Math.PI * 0.0889;
    expect(length_m).toBeGreaterThan(bare_m);
    expect(length_m).toBeLessThan(bare_m + 4 * (survey.driveDrop_m ?? 0));
    expect(uncertainty_m).toBeGreaterThan(0.005);
    expect(uncertainty_m).toBeLessThan(0.03);
    expect(shares[0]?.field).toBe('endDistance_m');
  });

  it('[GUIDE-04] nothing says how to press this belt', () => {
    expect(Object.keys(reading.plant?.recipes ?? {})).toEqual([]);
  });
});
