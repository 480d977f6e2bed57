import { verdicts } from '@loopwright/records/run';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { watchCodes } from '../../src/curve-watch/index.ts';
import {
  causesOf,
  type DefectCode,
  defectAnswers,
  defectCauses,
  defectCodes,
  defects,
  type Finding,
  findingPlaces,
  inspectionMeasures,
  judgeInspection,
  nextCodes,
  nextTimeOf,
  nowCodes,
} from '../../src/inspection/index.ts';

const runs = { seed: 42, numRuns: Number(process.env['LW_RUNS'] ?? 2000) };
const judge = (findings: readonly Finding[], more: Partial<Parameters<typeof judgeInspection>[0]> = {}) =>
  judgeInspection({ findings, ...more });
const verdict = (...findings: readonly Finding[]) => judge(findings).verdict;
const good = [
  { measure: 'bow', value: 0.001 },
  { measure: 'edge-step', value: 0.0002 },
  { measure: 'thickness-step', value: 0.00005 },
] as const;

describe('catalogue', () => {
  it('[INSP-01] twenty defects, numbered in order, each with causes, a separating question and what to do next time', () => {
    expect(defectCodes).toHaveLength(20);
    expect(defectCodes.map((code) => defects[code].number)).toEqual(defectCodes.map((_, i) => i + 1));
    for (const code of defectCodes) {
      const { causes, answers } = defects[code];
      expect(Object.keys(answers).length, code).toBeGreaterThan(1);
      const pointed = Object.values(answers).flat();
      for (const { cause, next } of causes) {
        expect(next.length, `${code} ${cause}`).toBeGreaterThan(0);
        expect(pointed, `${code}: no answer points at ${cause}`).toContain(cause);
      }
      for (const cause of pointed)
        expect(
          causes.map((row) => row.cause),
          code,
        ).toContain(cause);
    }
  });

  it('[INSP-01] every code of the lists is used, and none that is used is missing', () => {
    const rows = defectCodes.map((code) => defects[code]);
    const causes = rows.flatMap((row) => row.causes);
    expect(new Set(causes.map(({ cause }) => cause))).toEqual(new Set(defectCauses));
    expect(new Set(causes.flatMap(({ next }) => next))).toEqual(new Set(nextCodes));
    expect(new Set(rows.flatMap(({ answers }) => Object.keys(answers)))).toEqual(new Set(defectAnswers));
    expect(new Set(rows.flatMap(({ measure }) => measure ?? []))).toEqual(new Set(inspectionMeasures));
    const signs = causes.flatMap(({ curve = [] }) => curve);
    expect(signs.filter((sign) => !watchCodes.includes(sign))).toEqual([]);
  });

  it('[INSP-02] severities of the catalogue: critical ones never run by their look', () => {
    const critical = defectCodes.filter((code) => defects[code].severity === 'critical');
    expect(critical).toEqual([
      'outline-both-faces',
      'open-tip',
      'scorch',
      'delamination',
      'cold-end',
      'skewed-mesh',
      'over-fused',
    ]);
    for (const defect of critical) expect(verdict({ defect }), defect).not.toBe('run');
  });
});

describe('verdict', () => {
  it('[INSP-03] nothing seen and good measures run', () => {
    const found = judge([], { readings: good });
    expect(found).toMatchObject({ verdict: 'run', level: 'fine', secondPerson: false, ask: [], doNow: ['run-on'] });
    expect(found.because.map(({ code }) => code)).toContain('nothing-seen');
    expect(judge([]).verdict).toBe('run');
  });

  const straight: readonly [number, string, string][] = [
    [0.0015, 'run', 'fine'],
    [0.0025, 'run', 'look-closer'],
    [0.0035, 'cut-out', 'refused'],
  ];

  it.each(straight)('[INSP-04] a bow of %f m over a metre: %s, %s', (value, wanted, level) => {
    const found = judge([], { readings: [{ measure: 'bow', value }] });
    expect(found).toMatchObject({ verdict: wanted, level });
    expect(found.secondPerson).toBe(level === 'look-closer');
  });

  it('[INSP-04] a measure joins what was seen of its defect, and carries what it does to the belt', () => {
    const splice = { width_m: 0.05, elongation: 0.008 };
    const { because, found } = judge([{ defect: 'kink' }], { readings: [{ measure: 'bow', value: 0.0035 }], splice });
    expect(found).toHaveLength(1);
    expect(because[0]).toMatchObject({ code: 'over-limit', defect: 'kink', measure: 'bow' });
    expect(because[0]?.data).toMatchObject({ value: 0.0035, accept: 0.002, refuse: 0.003 });
    expect(because[0]?.data['edge_share']).toBeCloseTo(0.0774597 * 1.75, 6);
  });

  it('[INSP-05] what nobody measured counts as beyond its limit until somebody does; minor ones run', () => {
    expect(judge([{ defect: 'edge-step' }])).toMatchObject({ verdict: 'cut-out', level: 'look-closer' });
    expect(judge([{ defect: 'edge-step' }]).ask).toContainEqual({
      code: 'measure',
      defect: 'edge-step',
      measure: 'edge-step',
    });
    expect(judge([{ defect: 'edge-step', value: 0.0002 }])).toMatchObject({ verdict: 'run', level: 'fine' });
    for (const defect of ['gloss-change', 'flash', 'cloth-wrinkle', 'template-print'] as const)
      expect(verdict({ defect }), defect).toBe('run');
  });

  it('[INSP-06] a faint outline on one face: run up to a tenth of it, press again beyond a quarter, cut out when it opens', () => {
    const outline = (more: Partial<Finding>): Finding => ({ defect: 'outline-one-face', face: 'roller', ...more });
    expect(verdict(outline({ value: 0.05 }))).toBe('run');
    expect(judge([outline({ value: 0.2 })])).toMatchObject({
      verdict: 'run',
      level: 'look-closer',
      secondPerson: true,
    });
    expect(verdict(outline({ value: 0.4 }))).toBe('press-again');
    expect(verdict(outline({}))).toBe('press-again');
    expect(verdict(outline({ value: 0.05, opens: true }))).toBe('cut-out');
    const both = judge([outline({ value: 0.05 }), outline({ value: 0.05, face: 'pulley' })]);
    expect(both.found.map(({ finding }) => finding.defect)).toEqual(['outline-both-faces']);
    expect(both.verdict).toBe('press-again');
  });

  it('[INSP-06] a wrinkle that follows the zig-zag is an outline', () => {
    const wrinkle = (answer: 'yes' | 'no'): Finding => ({ defect: 'cloth-wrinkle', face: 'pulley', answer });
    expect(verdict(wrinkle('no'))).toBe('run');
    expect(verdict(wrinkle('yes'))).toBe('press-again');
  });

  it('[INSP-07] tips, slivers, voids, dirt and prints by their numbers and places', () => {
    expect(verdict({ defect: 'open-tip', value: 0.0004 })).toBe('press-again');
    expect(verdict({ defect: 'open-tip', value: 0.0006 })).toBe('cut-out');
    expect(verdict({ defect: 'edge-sliver', value: 0.008 })).toBe('press-again');
    expect(verdict({ defect: 'edge-sliver', value: 0.02 })).toBe('cut-out');
    const off = { defect: 'voids', place: 'off-flank' } as const;
    expect(verdict({ ...off, value: 0.0007 })).toBe('run');
    expect(judge([{ ...off, value: 0.0015 }])).toMatchObject({ verdict: 'run', secondPerson: true });
    expect(verdict({ ...off, value: 0.0025 })).toBe('cut-out');
    expect(verdict({ ...off, value: 0.0007, count: 4 })).toBe('cut-out');
    expect(verdict({ defect: 'voids', place: 'flank', value: 0.0012 })).toBe('cut-out');
    expect(verdict({ defect: 'voids', place: 'flank', value: 0.0005 })).toBe('run');
    expect(verdict({ defect: 'voids', place: 'edge-or-tip', value: 0.0003 })).toBe('cut-out');
    expect(judge([{ defect: 'voids', value: 0.0012 }]).ask.map(({ code }) => code)).toContain('place');
    expect(verdict({ defect: 'contamination', place: 'off-flank', value: 0.0004 })).toBe('run');
    expect(verdict({ defect: 'contamination', place: 'flank', value: 0.0002 })).toBe('cut-out');
    expect(verdict({ defect: 'weave-visible', opens: true })).toBe('cut-out');
    expect(judge([{ defect: 'weave-visible', opens: false }])).toMatchObject({ verdict: 'run', secondPerson: true });
    expect(verdict({ defect: 'skewed-mesh', value: 0.0004 })).toBe('cut-out');
    expect(verdict({ defect: 'skewed-mesh', value: 0.0002 })).toBe('run');
    expect(judge([{ defect: 'template-print', place: 'whole-width' }]).secondPerson).toBe(true);
  });

  it('[INSP-07] a length error runs as long as the take-up holds it', () => {
    const off = { defect: 'length-error', value: 0.08 } as const;
    expect(judge([off], { splice: { takeUpSpare_m: 0.1 } }).verdict).toBe('run');
    expect(judge([off], { splice: { takeUpSpare_m: 0.05 } }).verdict).toBe('cut-out');
    expect(judge([off])).toMatchObject({ verdict: 'run', level: 'look-closer' });
  });
});

describe('pressing again', () => {
  const cold: Finding = { defect: 'cold-end' };

  it('[INSP-08] once, on the same day, for a belt that never ran', () => {
    expect(judge([cold]).verdict).toBe('press-again');
    expect(judge([cold]).doNow).toEqual(['press-centred', 'change-cause', 'press-dried', 'press-again', 'photo-kept']);
    for (const [more, code] of [
      [{ attempt: 2 }, 'pressed-already'],
      [{ hasRun: true }, 'has-run'],
      [{ sameDay: false }, 'other-day'],
    ] as const) {
      const barred = judge([cold], more);
      expect(barred.verdict, code).toBe('cut-out');
      expect(barred.because.map((each) => each.code)).toContain(code);
    }
  });

  it('[INSP-09] for defects 1, 2, 3, 7 and 18 only; never for voids, brown, dirt, delamination, step, kink, skew', () => {
    const again = defectCodes.filter((code) => [defects[code].within, defects[code].over].includes('press-again'));
    expect(again.map((code) => defects[code].number)).toEqual([1, 2, 3, 7, 18]);
    const never: readonly DefectCode[] = [
      'voids',
      'scorch',
      'contamination',
      'delamination',
      'edge-step',
      'thickness-step',
      'kink',
      'skewed-mesh',
    ];
    for (const defect of never) expect(verdict(cold, { defect }), defect).toBe('cut-out');
  });

  it('[INSP-09] a step near its limit does not go away in the press', () => {
    const found = judge([cold, { defect: 'edge-step', value: 0.0008 }]);
    expect(found.verdict).toBe('cut-out');
    expect(found.because.map(({ code }) => code)).toContain('not-by-pressing');
    expect(verdict(cold, { defect: 'edge-step', value: 0.0002 })).toBe('press-again');
  });
});

describe('causes', () => {
  const warning = (code: (typeof watchCodes)[number]) => ({ code, level: 'care', data: {}, causes: [] }) as const;

  it('[INSP-17] the answer points at a cause, the curve comes second, the catalogue last', () => {
    expect(causesOf({ defect: 'outline-both-faces' })).toEqual(['core-cold', 'dwell-short', 'mains-sag']);
    expect(causesOf({ defect: 'outline-both-faces' }, [warning('hold-short')])[0]).toBe('dwell-short');
    expect(causesOf({ defect: 'outline-both-faces', answer: 'yes' }, [warning('hold-short')])[0]).toBe('core-cold');
    expect(nextTimeOf({ defect: 'voids', answer: 'flanks-only' })).toEqual(['pressure-before-heat']);
    expect(nextTimeOf({ defect: 'outline-one-face', answer: 'no' })).toEqual(['check-stack']);
  });

  it('[INSP-18] what the curve shows makes a good look a closer one; it changes no verdict', () => {
    const found = judge([], { readings: good, curveWarnings: [warning('hold-short'), warning('fast-ramp')] });
    expect(found).toMatchObject({ verdict: 'run', level: 'look-closer', secondPerson: false });
    expect(found.because.filter(({ code }) => code === 'curve-shows').map(({ watch }) => watch)).toEqual([
      'hold-short',
    ]);
  });

  it('[INSP-19] nothing is asked twice: what was answered, placed or measured', () => {
    expect(judge([{ defect: 'voids' }]).ask.map(({ code }) => code)).toEqual(['place', 'measure', 'cause']);
    const told = judge([{ defect: 'voids', place: 'off-flank', value: 0.0005, answer: 'whole-zone' }]);
    expect(told.ask).toEqual([]);
  });
});

const finding: fc.Arbitrary<Finding> = fc.record(
  {
    defect: fc.constantFrom(...defectCodes),
    face: fc.constantFrom('roller' as const, 'pulley' as const),
    value: fc.double({ min: 0, max: 0.01, noNaN: true }),
    place: fc.constantFrom(...findingPlaces),
    count: fc.integer({ min: 1, max: 6 }),
    answer: fc.constantFrom(...defectAnswers),
    opens: fc.boolean(),
  },
  { requiredKeys: ['defect'] },
);
const strictness = (of: (typeof verdicts)[number]): number => verdicts.indexOf(of);

describe('any findings', () => {
  it('[INSP-20] one more finding never makes the verdict milder', () => {
    fc.assert(
      fc.property(fc.array(finding, { maxLength: 4 }), finding, (some, more) => {
        const [before, after] = [judge(some), judge([...some, more])];
        expect(strictness(after.verdict)).toBeGreaterThanOrEqual(strictness(before.verdict));
      }),
      runs,
    );
  });

  it('[INSP-20] a larger defect never makes the verdict milder', () => {
    fc.assert(
      fc.property(finding, fc.double({ min: 1, max: 5, noNaN: true }), (one, times) => {
        const larger = { ...one, ...(one.value !== undefined && { value: one.value * times }) };
        expect(strictness(verdict(larger))).toBeGreaterThanOrEqual(strictness(verdict(one)));
      }),
      runs,
    );
  });

  it('[INSP-20] what is critical by its look never runs, whatever else is said', () => {
    fc.assert(
      fc.property(fc.array(finding, { maxLength: 4 }), finding, (some, one) => {
        fc.pre(defects[one.defect].severity === 'critical' && one.defect !== 'skewed-mesh');
        expect(judge([...some, one]).verdict).not.toBe('run');
      }),
      runs,
    );
  });

  it('[INSP-20] the answer is made of codes of the lists, with a reason and something to do', () => {
    fc.assert(
      fc.property(fc.array(finding, { maxLength: 4 }), (some) => {
        const found = judge(some);
        expect(found.because.length).toBeGreaterThan(0);
        expect(found.doNow.length).toBeGreaterThan(0);
        expect(found.doNow.filter((code) => !nowCodes.includes(code))).toEqual([]);
        expect(new Set(found.doNow).size).toBe(found.doNow.length);
        expect(found.secondPerson && found.verdict !== 'run').toBe(false);
      }),
      runs,
    );
  });
});
