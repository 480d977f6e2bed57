import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkAgainst } from '../../../tools/validation/check.ts';
import { beltPath } from '../../src/loop/path.ts';
import { tensionRoundLoop } from '../../src/loop/tension-round-loop.ts';
import type { StrandLoad, TensionRoundLoopInput } from '../../src/loop/tension-round-loop-form.ts';
import {
  between,
  carryingSpan,
  drive,
  liveRollerLoop,
  liveRollerLoops,
  noThickness,
  runs,
  takeUpPulley,
} from './loops.ts';
import { finiteOrRefused, refusalOf } from './refusals.ts';
import { grown, searchSlip, stretchIntegral, verticalPull } from './slip-search.ts';

const reference: TensionRoundLoopInput = {
  ...liveRollerLoop(noThickness),
  drive,
  strand: carryingSpan,
  loads: [{ from_m: 0, to_m: 6, pull_N_m: 30 }],
  takeUp: { kind: 'screw', tension_N: 240 },
  friction: 0.25,
  beltMass_kg_m: 0,
  speed_m_s: 0,
};

function check(id: string, published: number, ours: number | null, tolerance = 5e-5, unit = 'N'): void {
  checkAgainst({
    topic: 'loop',
    id,
    source: 'conserved stretch and force balance, worked apart from this program',
    evidence: 'derived',
    inputs: 'eight-pulley live-roller loop, 240 N mean, 180 N along the 6 m strand, f 0.25',
    unit,
    published,
    ours: ours ?? Number.NaN,
    tolerance,
    why: 'half the last digit given',
  });
}

const shares = fc.array(fc.record({ from: between(0, 0.9), long: between(0.02, 1), pull_N_m: between(1, 40) }), {
  minLength: 1,
  maxLength: 4,
});

const screwCases = fc
  .record({
    path: liveRollerLoops,
    loads: shares,
    tension_N: between(100, 1000),
    friction: between(0.1, 0.5),
    beltMass_kg_m: between(0, 0.4),
    speed_m_s: between(0, 2),
  })
  .map(({ path, loads, tension_N, ...rest }): TensionRoundLoopInput => {
    const span_m = beltPath(path).spans_m[carryingSpan] ?? 0;
    return {
      ...path,
      ...rest,
      drive,
      strand: carryingSpan,
      loads: loads.map(({ from, long, pull_N_m }) => ({
        from_m: from * span_m,
        to_m: Math.min(1, from + long) * span_m,
        pull_N_m: (pull_N_m * 6) / span_m,
      })),
      takeUp: { kind: 'screw', tension_N },
    };
  });

describe('tension round the loop', () => {
  const ours = tensionRoundLoop(reference);

  it('[TENSION-50] fixed centres: tight and slack side, grip and shaft loads of the reference loop', () => {
    check('T4.4 slack side', 153.8231, ours.slack_N);
    check('T4.4 tight side', 333.8231, ours.tight_N);
    check('T4.4 ratio', 2.17018, ours.tight_N / ours.slack_N, 5e-6, '1');
    check('T4.4 friction needed', 0.24019, ours.frictionNeeded, 5e-6, '1');
    check('T4.4 pull held by the slack side', 190.7285, ours.slack_N * (ours.capstanRatio - 1));
    check('T4.4 pull at slip', 186.7321, ours.pullAtSlip_N);
    check('T4.4 slip reserve', 1.0374, ours.slipReserve, 5e-5, '1');
    check('T4.4 pull share', 0.478761, ours.pullShare, 5e-7, '1');
    check('T4.4 mean tension', 240, ours.meanTension_N, 1e-9);
    const named: readonly (readonly [string, number, number])[] = [
      ['left end', 0, 667.6462],
      ['snub in', 1, 481.926],
      ['drive', 2, 487.2732],
      ['snub out', 3, 222.0678],
      ['take-up snub in', 4, 213.0018],
      ['take-up', 5, 307.384],
      ['take-up snub out', 6, 213.0018],
      ['right end', 7, 307.6462],
    ];
    for (const [name, index, load] of named)
      check(`T4.4 shaft load, ${name}`, load, ours.shaftLoads_N[index] ?? null, 1e-4);
    expect(ours.tensions_N.map((t) => t === null)).toEqual([false, false, true, false, false, false, false, false]);
    expect(ours.warnings).toEqual([]);
  });

  it('[TENSION-51] mean tension: an integral over small pieces of the whole loop gives F0 L back', () => {
    fc.assert(
      fc.property(screwCases, (input) => {
        const out = tensionRoundLoop(input);
        const path = beltPath(input);
        const F0 = input.takeUp.kind === 'screw' ? input.takeUp.tension_N : Number.NaN;
        const integral = stretchIntegral(input, path, out.slack_N);
        expect(integral / (F0 * path.length_m)).toBeCloseTo(1, 9);
        expect(out.meanTension_N / F0).toBeCloseTo(1, 12);
      }),
      runs,
    );
  });

  it('[TENSION-52] at the pull at slip the reserve is 1, and a search over growing loads finds the same pull', () => {
    fc.assert(
      fc.property(screwCases, (input) => {
        const out = tensionRoundLoop(input);
        const atSlip = out.pullAtSlip_N ?? Number.NaN;
        fc.pre(atSlip > 0);
        const there = tensionRoundLoop({ ...input, loads: grown(input.loads, atSlip / out.pull_N) });
        expect(there.slipReserve).toBeCloseTo(1, 9);
        expect(there.frictionNeeded).toBeCloseTo(input.friction, 9);
        expect(searchSlip(input) / atSlip).toBeCloseTo(1, 7);
      }),
      { ...runs, numRuns: Math.max(50, Math.round(runs.numRuns / 4)) },
    );
  });

  it('[TENSION-53] reserve over 1 exactly when the friction suffices; never above what the slack side holds', () => {
    fc.assert(
      fc.property(screwCases, (input) => {
        const out = tensionRoundLoop(input);
        const held = (out.slack_N - out.centrifugalTension_N) * (out.capstanRatio - 1);
        expect(out.slipReserve ?? 0).toBeLessThanOrEqual(held / out.pull_N + 1e-12);
        const needed = out.frictionNeeded ?? Number.POSITIVE_INFINITY;
        if (Math.abs(needed - input.friction) > 1e-9) expect((out.slipReserve ?? 0) > 1).toBe(needed < input.friction);
        expect(out.warnings.some(({ code }) => code === 'slip')).toBe((out.slipReserve ?? 0) < 1);
      }),
      runs,
    );
  });

  it('[TENSION-54] a weight that gives the same mean tension gives the same tensions and shaft loads', () => {
    fc.assert(
      fc.property(screwCases, between(200, 3000), (input, force_N) => {
        const hung = tensionRoundLoop({ ...input, takeUp: { kind: 'gravity', pulley: takeUpPulley, force_N } });
        fc.pre(hung.meanTension_N > 1);
        const screwed = tensionRoundLoop({ ...input, takeUp: { kind: 'screw', tension_N: hung.meanTension_N } });
        expect(hung.pullAtSlip_N).toBeNull();
        expect(screwed.slack_N).toBeCloseTo(hung.slack_N, 6);
        screwed.shaftLoads_N.forEach((load, i) => {
          expect(load).toBeCloseTo(hung.shaftLoads_N[i] ?? Number.NaN, 6);
        });
        expect(screwed.slipReserve ?? 0).toBeLessThanOrEqual((hung.slipReserve ?? 0) + 1e-9);
      }),
      runs,
    );
  });

  it('[TENSION-55] weight: the belt pulls the take-up shaft with the force of the weight', () => {
    const w = beltPath(reference).wraps_rad[takeUpPulley] ?? 0;
    const takeUp = { kind: 'gravity', pulley: takeUpPulley, force_N: 383.6727 } as const;
    const hung = tensionRoundLoop({ ...reference, takeUp });
    check('T4.1 gravity take-up', 192, hung.slack_N);
    check('T4.1 gravity take-up, wrap', 175.268767, (w * 180) / Math.PI, 5e-7, 'deg');
    expect(hung.shaftLoads_N[takeUpPulley]).toBeCloseTo(383.6727, 9);
    expect(hung.used).toEqual({ 'takeUp.direction': 'down' });
    const sprung = tensionRoundLoop({ ...reference, takeUp: { ...takeUp, kind: 'spring' } });
    expect(sprung.slack_N).toBeCloseTo(192, 4);
    expect(sprung.used).toEqual({ 'takeUp.direction': 'bisector' });
  });

  it('[TENSION-56] take-up on the tight side, and the drive itself on the slide', () => {
    const end = { kind: 'spring', pulley: 0, force_N: 600, direction: [-1, 0] } as const;
    const tight = tensionRoundLoop({ ...reference, takeUp: end });
    expect(tight.tight_N).toBeCloseTo(300, 9);
    expect(tight.slack_N).toBeCloseTo(120, 9);
    expect(tight.warnings.map(({ code }) => code)).toContain('take-up-on-tight-side');
    fc.assert(
      fc.property(screwCases, between(300, 3000), (input, force_N) => {
        const sliding = tensionRoundLoop({ ...input, takeUp: { kind: 'gravity', pulley: drive, force_N } });
        // Balance of the drive on its slide: the vertical part of both strands is the weight.
        const path = beltPath(input);
        const down = verticalPull(path, sliding.tight_N, sliding.slack_N);
        expect(down / force_N).toBeCloseTo(1, 9);
      }),
      runs,
    );
  });

  it('[TENSION-57] all forces twice as large: all answers twice as large, the reserve the same', () => {
    fc.assert(
      fc.property(screwCases, between(0.2, 5), (input, by) => {
        const still = { ...input, speed_m_s: 0 };
        const out = tensionRoundLoop(still);
        const F0 = input.takeUp.kind === 'screw' ? input.takeUp.tension_N : 0;
        const larger = tensionRoundLoop({
          ...still,
          loads: grown(input.loads, by),
          takeUp: { kind: 'screw', tension_N: F0 * by },
        });
        expect(larger.slack_N).toBeCloseTo(out.slack_N * by, 6);
        expect(larger.shaftLoads_N[drive]).toBeCloseTo((out.shaftLoads_N[drive] ?? 0) * by, 6);
        expect(larger.slipReserve).toBeCloseTo(out.slipReserve ?? Number.NaN, 9);
      }),
      runs,
    );
  });

  it('[TENSION-58] the whole loop is in balance: shaft loads as vectors add to the pull of the load', () => {
    const path = beltPath(reference);
    let x = 0;
    let y = 0;
    path.tangents.forEach(({ from, to }, i) => {
      const [tIn, tOut] = spanTensions(ours.tight_N, ours.slack_N, i);
      const span = Math.hypot(to[0] - from[0], to[1] - from[1]);
      x += ((to[0] - from[0]) / span) * (tOut - tIn);
      y += ((to[1] - from[1]) / span) * (tOut - tIn);
    });
    // Only the carrying span changes its tension, by the pull, and it runs from right to left.
    expect(Math.abs(x)).toBeCloseTo(180, 6);
    expect(y).toBeCloseTo(0, 9);
  });

  it('[TENSION-59] without a load nothing slips and every strand pulls with the mean tension', () => {
    const idle = tensionRoundLoop({ ...reference, loads: [] });
    expect(idle).toMatchObject({ pull_N: 0, tight_N: 240, slack_N: 240, slipReserve: null, pullAtSlip_N: null });
    expect(idle.frictionNeeded).toBe(0);
    expect(idle.shaftLoads_N[0]).toBeCloseTo(480, 9);
  });

  it('[TENSION-60] overlapping loads add; a load split in two is the same load', () => {
    const split: StrandLoad[] = [
      { from_m: 0, to_m: 2.5, pull_N_m: 30 },
      { from_m: 2.5, to_m: 6, pull_N_m: 10 },
      { from_m: 2.5, to_m: 6, pull_N_m: 20 },
    ];
    expect(tensionRoundLoop({ ...reference, loads: split }).slack_N).toBeCloseTo(ours.slack_N, 9);
  });

  it('[TENSION-61] too much pull for the tension: slack side and slip are warned of', () => {
    const over = tensionRoundLoop({ ...reference, loads: [{ from_m: 0, to_m: 6, pull_N_m: 100 }] });
    expect(over.warnings.map(({ code }) => code)).toEqual(['belt-goes-slack', 'slip']);
    expect(over.frictionNeeded).toBeNull();
  });

  it('[TENSION-62] bad input is refused with its field', () => {
    const wrong = (change: Partial<TensionRoundLoopInput>) =>
      refusalOf(() => tensionRoundLoop({ ...reference, ...change }));
    expect(wrong({ drive: 8 }).path).toBe('drive');
    expect(wrong({ strand: -1 }).path).toBe('strand');
    expect(wrong({ friction: Number.NaN })).toMatchObject({ code: 'not-finite', path: 'friction' });
    expect(wrong({ loads: [{ from_m: 0, to_m: 6.1, pull_N_m: 1 }] }).path).toBe('loads[0].to_m');
    expect(wrong({ loads: [{ from_m: 3, to_m: 2, pull_N_m: 1 }] }).code).toBe('wrong-way-round');
    expect(wrong({ loads: [{ from_m: 0, to_m: 2, pull_N_m: -1 }] }).path).toBe('loads[0].pull_N_m');
    expect(wrong({ takeUp: { kind: 'screw', tension_N: -1 } }).path).toBe('takeUp.tension_N');
    expect(wrong({ takeUp: { kind: 'gravity', pulley: 0, force_N: 100 } }).code).toBe('take-up-shortens-loop');
    expect(wrong({ takeUp: { kind: 'spring', pulley: 99, force_N: 100 } }).path).toBe('takeUp.pulley');
    expect(wrong({ takeUp: { kind: 'spring', pulley: 5, force_N: Number.NaN } }).path).toBe('takeUp.force_N');
  });

  it('[TENSION-62] whatever the numbers: finite numbers and nulls, or a refusal', () => {
    const number = fc.oneof(fc.double(), between(-10, 1000), fc.constantFrom(0, Number.NaN, Number.NEGATIVE_INFINITY));
    fc.assert(
      fc.property(number, number, number, number, (tension_N, friction, speed_m_s, pull_N_m) =>
        finiteOrRefused(() =>
          tensionRoundLoop({
            ...reference,
            friction,
            speed_m_s,
            beltMass_kg_m: 0.1,
            loads: [{ from_m: 0, to_m: 6, pull_N_m }],
            takeUp: { kind: 'screw', tension_N },
          }),
        ),
      ),
      runs,
    );
  });
});

/** Tension before and after span i, for the reference loop. */
function spanTensions(tight: number, slack: number, span: number): readonly [number, number] {
  if (span === carryingSpan) return [slack, tight];
  return span < drive ? [tight, tight] : [slack, slack];
}
