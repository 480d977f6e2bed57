import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkAgainst } from '../../../tools/validation/check.ts';
import { cutLength } from '../../src/loop/cut-length.ts';
import type { CutLengthInput } from '../../src/loop/cut-length-form.ts';
import { beltPath } from '../../src/loop/path.ts';
import type { PathInput } from '../../src/loop/path-input.ts';
import { pathAtTravel, travelForLength } from '../../src/loop/take-up-travel.ts';
import {
  between,
  liveRollerLoop,
  liveRollerLoops,
  noThickness,
  runs,
  scaled,
  takeUpPulley,
  twoMillimetres,
} from './loops.ts';
import { finiteOrRefused, refusalOf } from './refusals.ts';

const reference: CutLengthInput = {
  ...liveRollerLoop(twoMillimetres),
  takeUp: { pulley: takeUpPulley, direction: [0, -1], reference_m: 0.03, max_m: 0.12 },
  setElongation: 0.008,
  fingerLength_m: 0.07,
  lengthTolerance: 0.003,
  k1_N_mm_pct: 8,
  width_m: 0.03,
};

function check(id: string, published: number, ours: number, tolerance: number, unit = 'mm'): void {
  checkAgainst({
    topic: 'loop',
    id,
    source: 'length of the path over length of the slack belt, by an independent program',
    evidence: 'derived',
    inputs: 'eight-pulley live-roller loop, t 2.0 mm, neutral line 0.6 mm, take-up 30 mm, 0.8 %, fingers 70 mm',
    unit,
    published,
    ours,
    tolerance,
    why: 'half the last digit given',
  });
}

const cases = fc
  .record({
    path: liveRollerLoops,
    max_m: between(0.05, 0.5),
    at: between(0, 1),
    setElongation: between(0, 0.02),
    fingerLength_m: between(0.03, 0.12),
    fitSlack_m: between(0, 0.05),
    trim_m: between(0, 0.05),
  })
  .map(
    ({ path, max_m, at, trim_m, ...rest }): CutLengthInput => ({
      ...path,
      ...rest,
      takeUp: { pulley: takeUpPulley, direction: [0, -1], reference_m: at * max_m, max_m },
      k1_N_mm_pct: 12,
      width_m: 0.05,
      resplice: { trim_m },
    }),
  );

/** Solving on the true path is slower than one formula: a quarter of the runs. */
const fewer = { ...runs, numRuns: Math.max(50, Math.round(runs.numRuns / 4)) };

describe('cut length', () => {
  const ours = cutLength(reference);

  it('[TENSION-30] lengths of the reference loop', () => {
    check('T4.2 path at reference', 13602.488483, 1000 * ours.pathAtReference_m, 5e-7);
    check('T4.2 endless length', 13494.5322, 1000 * ours.endlessLength_m, 5e-5);
    check('T4.2 strip tip to tip', 13564.5322, 1000 * ours.stripTipToTip_m, 5e-5);
    check('T4.2 strand tension', 192, ours.strandTension_N, 1e-9, 'N');
  });

  it('[TENSION-31] elongation over the travel of the reference loop', () => {
    const lengthAt = pathAtTravel(reference, reference.takeUp);
    const table = [
      [0, 0.35559],
      [20, 0.65186],
      [60, 1.24445],
      [100, 1.8371],
      [120, 2.13344],
    ] as const;
    for (const [travel_mm, percent] of table) {
      const value = 100 * (lengthAt(travel_mm / 1000) / ours.endlessLength_m - 1);
      check(`T4.2 elongation at ${travel_mm} mm`, percent, value, 5e-6, '%');
    }
    expect(ours.elongationAt.map(({ takeUp_m }) => takeUp_m)).toEqual([0, 0.03, 0.12]);
    check('T4.2 elongation fully in', 0.35559, 100 * (ours.elongationAt[0]?.elongation ?? 0), 5e-6, '%');
    check('T4.2 elongation fully out', 2.13344, 100 * (ours.elongationAt[2]?.elongation ?? 0), 5e-6, '%');
  });

  it('[TENSION-32] travel at which the belt lies slack, and travel for an elongation', () => {
    check('T4.2 slack take-up', -24.0073, 1000 * (ours.slackTakeUp_m ?? 0), 5e-5);
    const lengthAt = pathAtTravel(reference, reference.takeUp);
    const travel = (elongation: number) =>
      1000 * (travelForLength(lengthAt, ours.endlessLength_m * (1 + elongation), 0) ?? 0);
    check('T4.2 travel for 1.2 %', 56.9997, travel(0.012), 5e-5);
    check('T4.2 travel for 2.0 %', 110.9943, travel(0.02), 5e-5);
    expect(ours.meshesInPlace).toBe(false);
    expect(ours.warnings.map(({ code }) => code)).toEqual(['not-in-place']);
  });

  it('[TENSION-33] the tolerance of the length, carried to elongation and tension', () => {
    const [low, high] = ours.elongationRange;
    check('T4.3 elongation range, low', 0.4985, 100 * low, 5e-6, '%');
    check('T4.3 elongation range, high', 1.10331, 100 * high, 5e-6, '%');
    check('T4.3 tension, low', -38, 100 * (low / 0.008 - 1), 0.5, '%');
    check('T4.3 tension, high', 38, 100 * (high / 0.008 - 1), 0.5, '%');
  });

  it('[TENSION-33] without a tolerance, the published table’s is taken and said', () => {
    const { lengthTolerance: _, ...without } = reference;
    expect(cutLength(without).used).toEqual({ cutOffset_m: 0, fitSlack_m: 0, lengthTolerance: 0.003 });
    expect(cutLength(without).elongationRange).toEqual(ours.elongationRange);
    expect(cutLength({ ...reference, cutOffset_m: 0.001, fitSlack_m: 0.01 }).used).toEqual({});
  });

  it('[TENSION-34] a re-splice of the reference loop is answered, not refused, when the take-up cannot follow', () => {
    const after = cutLength({ ...reference, resplice: { trim_m: 0.025 } }).afterResplice;
    expect(after?.endlessLength_m).toBeCloseTo(ours.endlessLength_m - 0.19, 12);
    expect(after?.stripTipToTip_m).toBeCloseTo(ours.endlessLength_m - 0.19 + 0.07, 12);
    expect(after?.possible).toBe(false);
    expect(after?.takeUp_m).toBeLessThan(0);
    expect(after?.elongationFullyIn).toBeGreaterThan(0.008);
    expect(cutLength(reference).afterResplice).toBeUndefined();
    const nothingLeft = cutLength({ ...reference, resplice: { trim_m: 9 } }).afterResplice;
    expect(nothingLeft).toMatchObject({
      endlessLength_m: null,
      takeUp_m: null,
      elongationFullyIn: null,
      possible: false,
    });
  });

  it('[TENSION-35] round trip: path at the reference over endless length is the set elongation', () => {
    fc.assert(
      fc.property(cases, (input) => {
        const out = cutLength(input);
        expect(out.pathAtReference_m / out.endlessLength_m - 1).toBeCloseTo(input.setElongation, 12);
        const moved = moveTakeUp(input, input.takeUp.reference_m);
        expect(beltPath(moved).length_m).toBeCloseTo(out.pathAtReference_m, 12);
        expect(out.stripTipToTip_m - out.endlessLength_m).toBeCloseTo(input.fingerLength_m, 12);
      }),
      runs,
    );
  });

  it('[TENSION-36] at the slack travel the path is the endless length; at 1 % it is 1 % longer', () => {
    fc.assert(
      fc.property(cases, (input) => {
        const out = cutLength(input);
        for (const [travel, elongation] of [
          [out.slackTakeUp_m, 0],
          [out.takeUpAtOnePercent_m, 0.01],
        ] as const) {
          if (travel === null) continue;
          const length_m = beltPath(moveTakeUp(input, travel)).length_m;
          expect(Math.abs(length_m - out.endlessLength_m * (1 + elongation))).toBeLessThan(1e-10);
        }
      }),
      fewer,
    );
  });

  it('[TENSION-37] more elongation: shorter belt, harder pull, further back to slack; more travel: more elongation', () => {
    fc.assert(
      fc.property(cases, between(0.0005, 0.005), (input, more) => {
        const out = cutLength(input);
        const tighter = cutLength({ ...input, setElongation: input.setElongation + more });
        expect(tighter.endlessLength_m).toBeLessThan(out.endlessLength_m);
        expect(tighter.strandTension_N).toBeGreaterThan(out.strandTension_N);
        expect(tighter.pullNeeded_m).toBeGreaterThanOrEqual(out.pullNeeded_m);
        expect(tighter.slackTakeUp_m ?? -1e9).toBeLessThan(out.slackTakeUp_m ?? 1e9);
        const [atZero, , atMax] = out.elongationAt.map(({ elongation }) => elongation ?? Number.NaN);
        expect(atZero).toBeLessThanOrEqual(input.setElongation + 1e-12);
        expect(atMax).toBeGreaterThanOrEqual(input.setElongation - 1e-12);
        expect(out.elongationRange[0]).toBeLessThanOrEqual(input.setElongation);
        expect(out.elongationRange[1]).toBeGreaterThanOrEqual(input.setElongation);
      }),
      fewer,
    );
  });

  it('[TENSION-38] a layout twice the size gives lengths twice as long and the same elongations', () => {
    fc.assert(
      fc.property(cases, between(0.5, 3), (input, by) => {
        const out = cutLength({ ...input, lengthTolerance: 0.003 });
        const large = cutLength({
          ...scaled(input, by),
          takeUp: { ...input.takeUp, reference_m: input.takeUp.reference_m * by, max_m: input.takeUp.max_m * by },
          setElongation: input.setElongation,
          fingerLength_m: input.fingerLength_m * by,
          lengthTolerance: 0.003,
          k1_N_mm_pct: input.k1_N_mm_pct,
          width_m: input.width_m,
        });
        expect(large.stripTipToTip_m / out.stripTipToTip_m).toBeCloseTo(by, 9);
        expect(large.elongationAt[2]?.elongation).toBeCloseTo(out.elongationAt[2]?.elongation ?? Number.NaN, 9);
        if (out.slackTakeUp_m !== null) expect(large.slackTakeUp_m).toBeCloseTo(out.slackTakeUp_m * by, 8);
      }),
      fewer,
    );
  });

  it('[TENSION-39] take-up between two parallel spans: every travel is half of the length, exactly', () => {
    fc.assert(
      fc.property(between(1, 20), between(0.02, 0.2), between(0.001, 0.02), between(0.01, 0.3), (C, r, e, at) => {
        const out = cutLength({
          belt: noThickness,
          pulleys: [
            { x_m: 0, y_m: 0, surfaceRadius_m: r, turn: 'left' },
            { x_m: C, y_m: 0, surfaceRadius_m: r, turn: 'left' },
          ],
          takeUp: { pulley: 1, direction: [3, 0], reference_m: at, max_m: 0.3 },
          setElongation: e,
          fingerLength_m: 0.08,
          k1_N_mm_pct: 10,
          width_m: 0.03,
          resplice: { trim_m: 0.025 },
        });
        const path = 2 * (C + at) + 2 * Math.PI * r;
        const L0 = path / (1 + e);
        expect(out.endlessLength_m).toBeCloseTo(L0, 12);
        expect(out.slackTakeUp_m).toBeCloseTo(at - (e * L0) / 2, 10);
        expect(out.takeUpAtOnePercent_m).toBeCloseTo(at + ((0.01 - e) * L0) / 2, 10);
        expect(out.afterResplice?.givenBack_m).toBeCloseTo((0.21 * (1 + e)) / 2, 10);
        expect(out.afterResplice?.possible).toBe((0.21 * (1 + e)) / 2 <= at);
      }),
      runs,
    );
  });

  it('[TENSION-40] after a re-splice: elongation at the new travel is the set one; nothing meshes that must be pulled', () => {
    fc.assert(
      fc.property(cases, (input) => {
        const out = cutLength(input);
        const after = out.afterResplice;
        if (!after || after.endlessLength_m === null) return;
        expect(after.pullNeeded_m ?? 0).toBeGreaterThanOrEqual(out.pullNeeded_m);
        expect(after.meshesInPlace).toBe(after.pullNeeded_m === 0);
        if (after.takeUp_m === null) {
          expect(after.possible).toBe(false);
          return;
        }
        const path_m = beltPath(moveTakeUp(input, after.takeUp_m)).length_m;
        expect(path_m / after.endlessLength_m - 1).toBeCloseTo(input.setElongation, 10);
        expect(after.possible).toBe(after.takeUp_m >= 0);
        expect((after.elongationFullyIn ?? 0) <= input.setElongation + 1e-12).toBe(after.possible);
      }),
      fewer,
    );
  });

  it('[TENSION-41] a travel that the pulley cannot reach is null', () => {
    const lengthAt = pathAtTravel(reference, reference.takeUp);
    expect(travelForLength(lengthAt, 12.9, 0)).toBeNull();
    const upwards = {
      ...reference,
      takeUp: { ...reference.takeUp, reference_m: 0, max_m: 0.001 },
      setElongation: 0.05,
    };
    expect(cutLength(upwards).slackTakeUp_m).toBeNull();
    expect(cutLength(upwards).afterResplice).toBeUndefined();
  });

  it('[TENSION-42] bad input is refused with its field', () => {
    const wrong = (change: Partial<CutLengthInput>) => refusalOf(() => cutLength({ ...reference, ...change }));
    expect(wrong({ setElongation: Number.NaN })).toMatchObject({ code: 'not-finite', path: 'setElongation' });
    expect(wrong({ setElongation: -0.01 }).data).toMatchObject({ value: -0.01, min: 0, max: 0.5, unit: '1' });
    expect(wrong({ k1_N_mm_pct: 0 }).path).toBe('k1_N_mm_pct');
    expect(wrong({ width_m: Number.NEGATIVE_INFINITY }).code).toBe('not-finite');
    expect(wrong({ takeUp: { ...reference.takeUp, pulley: 8 } }).path).toBe('takeUp.pulley');
    expect(wrong({ takeUp: { ...reference.takeUp, pulley: 1.5 } }).path).toBe('takeUp.pulley');
    expect(wrong({ takeUp: { ...reference.takeUp, direction: [0, 0] } }).code).toBe('no-direction');
    expect(wrong({ takeUp: { ...reference.takeUp, direction: [0, 1] } }).code).toBe('take-up-shortens-loop');
    expect(wrong({ takeUp: { ...reference.takeUp, reference_m: 0.13 } }).path).toBe('takeUp.reference_m');
    expect(wrong({ resplice: { trim_m: -1 } }).path).toBe('resplice.trim_m');
    expect(wrong({ pulleys: [] }).code).toBe('too-few-pulleys');
  });

  it('[TENSION-42] whatever the numbers: finite numbers and nulls, or a refusal', () => {
    const number = fc.oneof(fc.double(), between(-1, 1), fc.constantFrom(0, Number.NaN, Number.POSITIVE_INFINITY));
    fc.assert(
      fc.property(
        fc.record({ setElongation: number, fingerLength_m: number, fitSlack_m: number, width_m: number }),
        number,
        (change, at) =>
          finiteOrRefused(() =>
            cutLength({ ...reference, ...change, takeUp: { ...reference.takeUp, reference_m: at } }),
          ),
      ),
      runs,
    );
  });
});

function moveTakeUp(input: PathInput, travel_m: number): PathInput {
  const pulleys = input.pulleys.map((p, i) => (i === takeUpPulley ? { ...p, y_m: p.y_m - travel_m } : p));
  return { belt: input.belt, pulleys };
}
