import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkAgainst } from '../../../tools/validation/check.ts';
import { resplice, takeUpReserve, takeUpTravelToMesh } from '../../src/loop/take-up-reserve.ts';
import { threeLengths } from '../../src/loop/three-lengths.ts';
import { between, runs } from './loops.ts';
import { refusalOf } from './refusals.ts';

const halfTurn = Math.PI;

function check(id: string, published: number, ours: number, tolerance: number, unit = 'mm'): void {
  checkAgainst({
    topic: 'loop',
    id,
    source: 'dL/dx = 2 sin(w/2), worked by hand',
    evidence: 'derived',
    inputs: 'fingers 80 mm, trim 25 mm, 0.95 %, wrap 180 deg, 24 368 mm endless; 24 mm slack where asked',
    unit,
    published,
    ours,
    tolerance,
    why: 'half the last digit given',
  });
}

const reference = {
  elongation: 0.0095,
  endlessLength_m: 24.368,
  takeUpWrap_rad: halfTurn,
  fitSlack_m: 0.024,
  fingerLength_m: 0.08,
  trim_m: 0.025,
  available_m: 0.084,
};

describe('what the take-up must give', () => {
  it('[TENSION-100] re-splice: travel given back, stretch, and both with the slack to mesh in place', () => {
    const out = resplice(reference);
    check('T8 travel given back', 105.998, 1000 * out.givenBack.value, 5e-4);
    check('T8 travel to mesh after a re-splice', 232.748, 1000 * out.toMesh.value, 5e-4);
    check('T8 endless length after a re-splice', 24_158, 1000 * out.endlessLength.value, 1e-9);
    expect(out).toMatchObject({ possible: false, meshesInPlace: false });
    const { stretch } = takeUpTravelToMesh(reference);
    check('T8 travel for the stretch', 115.7, 1000 * stretch.value, 0.05);
    expect(resplice({ ...reference, available_m: 0.106 })).toMatchObject({ possible: true, meshesInPlace: false });
    expect(resplice({ ...reference, available_m: 0.233 })).toMatchObject({ possible: true, meshesInPlace: true });
    expect(resplice({ ...reference, available_m: 0.198 }).meshesInPlace).toBe(false);
  });

  it('[TENSION-101] travel that is missing stays in the belt as stretch', () => {
    const short = resplice({ ...reference, endlessLength_m: 24.81, available_m: 0.105998 - 0.022 });
    check('T8 elongation when 22 mm are missing', 0.179, 100 * (short.elongation.value - 0.0095), 5e-4, '%');
    const enough = resplice({ ...reference, available_m: 1 });
    expect(enough.elongation.value).toBe(0.0095);
  });

  it('[TENSION-102] take-up reserve on the fitting and on the tension side', () => {
    const base = { endlessLength_m: 13.4945322, elongation: 0, fitSlack_m: 0, takeUpWrap_rad: halfTurn };
    const fit = takeUpReserve({ ...base, lengthTolerance: 0.003, permanentSet: 0 }).fit.value;
    check('T8 take-up reserve, tolerance, as loop', 40.48, 2000 * fit, 0.005);
    const tension = takeUpReserve({ ...base, lengthTolerance: 0, permanentSet: 0.01 }).tension.value;
    check('T8 take-up reserve, set, as loop', 134.95, 2000 * tension, 0.005);
    check('T8 take-up reserve', 67.5, 1000 * tension, 0.05);
  });

  it('[TENSION-103] loop of 64.2 m at 0.90 %: 578 mm of loop, 289 mm of travel', () => {
    const { stretch } = takeUpTravelToMesh({
      elongation: 0.009,
      endlessLength_m: 64.222,
      takeUpWrap_rad: halfTurn,
      fitSlack_m: 0,
    });
    check('T8 travel for the stretch of a long loop', 289, 1000 * stretch.value, 0.5);
  });

  it('[TENSION-104] three lengths: endless, tip to tip, square', () => {
    const out = threeLengths({ endlessLength_m: 64.222, fingerLength_m: 0.08, dieWaste_m: 0.025 });
    check('T8 three lengths, tip to tip', 64_302, 1000 * out.tipToTip.value, 1e-6);
    check('T8 three lengths, square', 64_352, 1000 * out.square.value, 1e-6);
    expect(out.endless_m).toBe(64.222);
  });

  it('[TENSION-105] less wrap needs more travel; no travel is ever negative; parts add up', () => {
    fc.assert(
      fc.property(
        between(0, 0.02),
        between(5, 100),
        between(1, Math.PI),
        between(0, 0.05),
        (elongation, L0, wrap, fitSlack_m) => {
          const at = (takeUpWrap_rad: number) =>
            takeUpTravelToMesh({ elongation, endlessLength_m: L0, takeUpWrap_rad, fitSlack_m });
          const out = at(wrap);
          expect(out.stretch.value + out.slack_m).toBeCloseTo(out.toMesh.value, 12);
          expect(out.slack_m).toBeGreaterThanOrEqual(0);
          expect(out.toMesh.value).toBeGreaterThanOrEqual(at(Math.PI).toMesh.value);
        },
      ),
      runs,
    );
  });

  it('[TENSION-106] bad input is refused with its field', () => {
    expect(refusalOf(() => resplice({ ...reference, trim_m: 11 })).path).toBe('trim_m');
    expect(refusalOf(() => resplice({ ...reference, endlessLength_m: 0.2 })).code).toBe('nothing-left');
    expect(refusalOf(() => resplice({ ...reference, available_m: -1 })).path).toBe('available_m');
    expect(refusalOf(() => takeUpTravelToMesh({ ...reference, takeUpWrap_rad: 0 })).path).toBe('takeUpWrap_rad');
    expect(refusalOf(() => threeLengths({ endlessLength_m: Number.NaN, fingerLength_m: 0, dieWaste_m: 0 })).path).toBe(
      'endlessLength_m',
    );
  });
});
