import { closeSync, ftruncateSync, mkdtempSync, openSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { loopwright, root } from './terminal.ts';

let place: string;
beforeAll(() => {
  place = mkdtempSync(join(tmpdir(), 'loopwright-solve-'));
});
afterAll(() => rmSync(place, { recursive: true }));

const triangle = {
  pulleys: [
    { x_m: 0, y_m: 0, surfaceRadius_m: 0.04, turn: 'left' },
    { x_m: 0.6, y_m: 0, surfaceRadius_m: 0.04, turn: 'left' },
    { x_m: 0.3, y_m: 0.5196152422706632, surfaceRadius_m: 0.04, turn: 'left' },
  ],
  belt: { thickness_m: 0, neutralLineFromRunningFace_m: 0 },
};

/** Answers of the program; whatever it prints on stdout must be one JSON object. */
function solve(topic: string, input: unknown) {
  const ran = loopwright(['solve', topic], { input: typeof input === 'string' ? input : JSON.stringify(input) });
  expect(ran.stderr).not.toMatch(/\n\s+at |node_modules/);
  return { ...ran, answer: JSON.parse(ran.stdout) };
}

describe('answers', () => {
  it('[TERM-01] from standard input and from a file, the same answer and exit 0', () => {
    const fromInput = solve('path', triangle);
    const file = join(place, 'triangle.json');
    writeFileSync(file, JSON.stringify(triangle));
    const fromFile = loopwright(['solve', 'path', file]);
    expect(fromInput.code).toBe(0);
    // Three sides of 600 mm and one circle of radius 40 mm.
    expect(fromInput.answer.length_m).toBeCloseTo(1.8 + 0.08 * Math.PI, 12);
    expect(fromFile).toMatchObject({ code: 0, stdout: fromInput.stdout, stderr: '' });
  });

  it('[TERM-02] --list, --schema and --explain are JSON', () => {
    const { topics } = JSON.parse(loopwright(['solve', '--list']).stdout);
    expect(topics.length).toBeGreaterThanOrEqual(10);
    for (const { id } of topics) {
      const schema = JSON.parse(loopwright(['solve', id, '--schema']).stdout);
      expect(schema).toMatchObject({ topic: id, input: { type: 'object' }, output: expect.any(Object) });
    }
    const { formulas } = JSON.parse(loopwright(['solve', 'cut-length', '--explain']).stdout);
    expect(formulas[0]).toMatchObject({ expression: 'L0 = L / (1 + e)' });
    const explained = loopwright(['solve', 'path', '--explain'], { input: JSON.stringify(triangle) });
    expect(JSON.parse(explained.stdout).explain[0].withNumbers).toBe('r = 0.04 + 0 = 0.04 m');
  });
});

describe('bad input', () => {
  const [first, ...rest] = triangle.pulleys;
  const belt = triangle.belt;
  const cases: [string, unknown, string, string][] = [
    ['NaN', '{"pulleys": [], "belt": NaN}', 'not-json', ''],
    ['Infinity', '{"pulleys": Infinity}', 'not-json', ''],
    [
      'a number too large for any machine',
      '{"pulleys": [], "belt": {"thickness_m": 1e999, "neutralLineFromRunningFace_m": 0}}',
      'not-finite',
      'belt.thickness_m',
    ],
    [
      'text for a number',
      { ...triangle, pulleys: [{ ...first, x_m: '0,5' }, ...rest] },
      'not-a-number',
      'pulleys[0].x_m',
    ],
    ['negative thickness', { ...triangle, belt: { ...belt, thickness_m: -0.002 } }, 'out-of-range', 'belt.thickness_m'],
    ['no pulleys', { ...triangle, pulleys: [] }, 'too-few-pulleys', 'pulleys'],
    ['two pulleys in one place', { ...triangle, pulleys: [first, first, ...rest] }, 'no-tangent', 'pulleys[1]'],
    ['an unknown field', { ...triangle, colour: 'red' }, 'unknown-field', 'colour'],
    ['nothing', '', 'not-json', ''],
    ['a list', [], 'wrong-type', ''],
    ['half an object', '{"pulleys": [', 'not-json', ''],
    ['deep nesting', '['.repeat(100_000) + ']'.repeat(100_000), 'wrong-type', ''],
    [
      'a field that touches the prototype',
      '{"__proto__": {"pulleys": []}, "pulleys": [], "belt": 5}',
      'unknown-field',
      '__proto__',
    ],
  ];
  it.each(cases)('[TERM-03] %s: refused on stdout with code, path and sentence, exit 1', (_name, input, code, path) => {
    const { code: exitCode, answer } = solve('path', input);
    expect(exitCode).toBe(1);
    expect(answer).toMatchObject({ status: 'refused', code, path, message: expect.stringMatching(/\S{3}/) });
    expect(answer.message).not.toMatch(/undefined|\[object|NaN\b(?!”)/);
  });

  it('[TERM-04] a file of 200 MB is refused at once, without being read', () => {
    const file = join(place, 'large.json');
    const handle = openSync(file, 'w');
    ftruncateSync(handle, 200_000_000);
    closeSync(handle);
    const ran = loopwright(['solve', 'path', file]);
    expect(ran.code).toBe(1);
    expect(JSON.parse(ran.stdout)).toMatchObject({ code: 'too-large', data: { value: 200_000_000 } });
    expect(ran.ms).toBeLessThan(5000);
  });

  it('[TERM-05] an endless standard input is cut off above the limit', () => {
    const { code, answer } = solve('path', ' '.repeat(21_000_000));
    expect(code).toBe(1);
    expect(answer.code).toBe('too-large');
  });

  it('[TERM-06] ten thousand pulleys are answered, and the whole program takes little longer than for three', () => {
    const count = 10_000;
    const pulleys = Array.from({ length: count }, (_, i) => {
      const angle = (2 * Math.PI * i) / count;
      return { x_m: 1000 * Math.cos(angle), y_m: 1000 * Math.sin(angle), surfaceRadius_m: 0.05, turn: 'left' };
    });
    const few = solve('path', triangle);
    const many = solve('path', { pulleys, belt });
    expect(many.answer.status).toBe('ok');
    expect(many.ms - few.ms).toBeLessThan(1500);
  });
});

describe('calls that make no sense', () => {
  it.each([
    [['solve'], 'topic'],
    [['solve', 'pathh'], 'path'],
    [['solve', 'path', 'no-such-file.json'], 'no-such-file.json'],
    [['solve', 'path', root], root],
    [['solve', 'path', '--colour'], '--colour'],
    [['solve', 'path', 'a', 'b'], 'loopwright solve --help'],
    [['cart'], 'card'],
    [['card'], 'position'],
    [['card', 'QM-04-3', '--lang', 'fr'], 'en, de, es'],
    [['card', 'QM-04-3', '--units', 'imperial'], 'metric, us'],
    [['card', 'QM-04-3', '--people', '3'], '1, 2'],
    [['card', 'QM-04-3', '--paper', 'a3'], 'a5'],
    [['card', 'QM-04-3', '--now', 'yesterday'], '2026-11-25T02:04:00Z'],
    [['card', 'QM-04-3', '--plant', 'no-such-plant'], 'plant.csv'],
    [['plant', 'check'], 'folder'],
    [['plant', 'check', 'package.json'], 'plant.csv'],
    [[], 'Usage:'],
  ])('[TERM-07] %j: exit 2, nothing on stdout, a sentence that names it', (args, named) => {
    const { code, stdout, stderr } = loopwright(args);
    expect(code).toBe(2);
    expect(stdout).toBe('');
    expect(stderr).toContain(named);
    expect(stderr).not.toMatch(/\n\s+at |node_modules/);
  });
});
