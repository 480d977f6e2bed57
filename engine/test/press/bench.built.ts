import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const root = join(import.meta.dirname, '../../..');
let empty: string;
beforeAll(() => {
  empty = mkdtempSync(join(tmpdir(), 'loopwright-bench-'));
});
afterAll(() => rmSync(empty, { recursive: true }));

describe('the bench of a press cycle', () => {
  it('[BENCH-01] without a compiler or SUNDIALS it says what is missing, prints our own numbers and goes on', () => {
    // Nowhere to look for a compiler.
    const env = { ...process.env, PATH: empty, LW_BENCH: 'brief' };
    const ran = spawnSync(process.execPath, [join(root, 'bench/run.mjs'), 'cycle'], {
      cwd: root,
      env,
      encoding: 'utf8',
    });
    expect({ status: ran.status, stderr: ran.stderr }).toEqual({ status: 0, stderr: '' });
    expect(ran.stdout).toContain('No C compiler or no SUNDIALS (libsundials-dev): our own numbers alone.');
    expect(ran.stdout).toContain('a brief run');
    expect(ran.stdout.match(/ours +\d+ steps; off: middle 0\.0\d+ K/g)).toHaveLength(2);
    expect(ran.stdout).toMatch(/First cycle in a fresh process/);
    expect(ran.stdout).toMatch(/ours, one thread +\d/);
    expect(ran.stdout).not.toMatch(/CVODE|undefined|NaN/);
  });
});
