import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Answer, solve, topicOf, topics } from '../../src/solve/index.ts';
import { examples } from './examples.ts';

const say = ({ code, path }: { readonly code: string; readonly path: string }) => `${path}: ${code}`;

async function answer(id: string, input: unknown): Promise<Answer> {
  const topic = topicOf(id);
  if (topic === undefined) throw new Error(`no topic ${id}`);
  return solve(topic, input, { say });
}

const inputOf = (id: string) => examples.find(({ topic }) => topic === id)?.input ?? {};

describe('defaults', () => {
  it('[SOLVE-11] each default that was taken stands in `used` by its path, and none that was given', async () => {
    expect((await answer('tension-by-marks', inputOf('tension-by-marks'))).used).toEqual({
      readingError_m: 0.0005,
      freshFactor: 1.8,
    });
    expect((await answer('tension-by-marks', { ...inputOf('tension-by-marks'), freshFactor: 1.8 })).used).toEqual({
      readingError_m: 0.0005,
    });
    expect((await answer('cut-length', inputOf('cut-length'))).used).toMatchObject({
      crossed: false,
      cutOffset_m: 0,
      fitSlack_m: 0,
    });
  });

  it('[SOLVE-12] the face taken for a pulley that says none stands in `used`', async () => {
    expect((await answer('path', inputOf('path'))).used).toMatchObject({
      'pulleys[0].face': 'running',
      'pulleys[1].face': 'back',
      'pulleys[2].face': 'running',
    });
  });
});

describe('refusals of a form', () => {
  it('[SOLVE-13] a word that is none of those allowed is refused with those that are', async () => {
    const pulleys = [{ x_m: 0, y_m: 0, surfaceRadius_m: 0.05, turn: 'links' }];
    expect(await answer('path', { ...inputOf('path'), pulleys })).toMatchObject({
      code: 'not-one-of',
      path: 'pulleys[0].turn',
      data: { value: 'links', allowed: 'left, right' },
    });
    const takeUp = { kind: 'rope', tension_N: 240 };
    expect(await answer('tension-round-loop', { ...inputOf('tension-round-loop'), takeUp })).toMatchObject({
      code: 'not-one-of',
      path: 'takeUp.kind',
    });
  });

  it('[SOLVE-14] an index that is no whole number, and one beyond the list, are out of range', async () => {
    for (const drive of [1.5, -1, 8, 1e9])
      expect(await answer('tension-round-loop', { ...inputOf('tension-round-loop'), drive })).toMatchObject({
        code: 'out-of-range',
        path: 'drive',
      });
  });

  it('[SOLVE-15] too few pulleys and too few pulls are refused as such', async () => {
    expect(await answer('path', { ...inputOf('path'), pulleys: [] })).toMatchObject({
      code: 'too-few-pulleys',
      path: 'pulleys',
    });
    expect(await answer('tensile-sample', { pulls_N_mm: [90] })).toMatchObject({ code: 'too-few', path: 'pulls_N_mm' });
  });

  it('[SOLVE-16] a refusal of the engine keeps its code and names the pulley', async () => {
    const [first, ...rest] = inputOf('path').pulleys as { x_m: number }[];
    expect(await answer('path', { ...inputOf('path'), pulleys: [first, first, ...rest] })).toMatchObject({
      status: 'refused',
      code: 'no-tangent',
      path: 'pulleys[1]',
    });
    expect(
      await answer('path', { ...inputOf('path'), belt: { thickness_m: -0.002, neutralLineFromRunningFace_m: 0 } }),
    ).toMatchObject({
      code: 'out-of-range',
      path: 'belt.thickness_m',
      data: { value: -0.002, min: 0 },
    });
  });

  it('[SOLVE-17] a re-splice that cannot be set is answered, not refused', async () => {
    const input = { ...inputOf('cut-length'), resplice: { trim_m: 0.025 } };
    const answered = await answer('cut-length', input);
    expect(answered).toMatchObject({ status: 'ok', afterResplice: { possible: false } });
  });
});

describe('size and robustness', () => {
  it('[SOLVE-18] ten thousand pulleys are answered in less than a second', async () => {
    const count = 10_000;
    const pulleys = Array.from({ length: count }, (_, i) => {
      const angle = (2 * Math.PI * i) / count;
      return { x_m: 1000 * Math.cos(angle), y_m: 1000 * Math.sin(angle), surfaceRadius_m: 0.05, turn: 'left' };
    });
    // Processor time: the clock on the wall also counts what else the machine does.
    const started = process.cpuUsage();
    const answered = await answer('path', {
      pulleys,
      belt: { thickness_m: 0.002, neutralLineFromRunningFace_m: 0.001 },
    });
    const { user, system } = process.cpuUsage(started);
    expect((user + system) / 1e6).toBeLessThan(1);
    // Regular polygon of side 2 R sin(pi/n), and one full turn of the neutral radius.
    const perimeter = count * 2 * 1000 * Math.sin(Math.PI / count) + 2 * Math.PI * 0.051;
    expect(answered).toMatchObject({ status: 'ok', length_m: expect.closeTo(perimeter, 6) });
  });

  it('[SOLVE-19] whatever is put in, the answer is JSON with a status, never an exception and never NaN', async () => {
    const value = fc.oneof(
      { weight: 3, arbitrary: fc.double() },
      fc.anything({ maxDepth: 2 }),
      fc.constantFrom(0, -1, 1e308, 5e-324, '', 'left', [], {}),
    );
    await fc.assert(
      fc.asyncProperty(fc.constantFrom(...topics), fc.nat(), value, async (topic, at, wrong) => {
        const input = structuredClone(inputOf(topic.id)) as Record<string, unknown>;
        const keys = Object.keys(input);
        input[keys[at % keys.length] ?? ''] = wrong;
        const answered = await solve(topic, input, { say, explain: true });
        expect(['ok', 'refused', 'not-converged']).toContain(answered.status);
        expect(onlyPlain(answered)).toBe(true);
      }),
      { seed: 42, numRuns: Number(process.env['LW_RUNS'] ?? 2000) },
    );
  });
});

/** True when nothing inside would change by being written as JSON. */
function onlyPlain(value: unknown): boolean {
  if (typeof value === 'number') return Number.isFinite(value);
  if (value === null || typeof value === 'string' || typeof value === 'boolean') return true;
  return typeof value === 'object' && Object.values(value as object).every(onlyPlain);
}
