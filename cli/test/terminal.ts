import { spawnSync } from 'node:child_process';
import { join } from 'node:path';

export const root = join(import.meta.dirname, '../..');
const program = join(root, 'cli/bin/loopwright.js');

export interface Ran {
  readonly code: number | null;
  readonly stdout: string;
  readonly stderr: string;
  readonly ms: number;
}

/** Runs the built program in a process of its own, as a person does. */
export function loopwright(
  args: readonly string[],
  { input = '', cwd = root }: { input?: string; cwd?: string } = {},
): Ran {
  const started = performance.now();
  const { status, stdout, stderr } = spawnSync(process.execPath, [program, ...args], {
    cwd,
    input,
    encoding: 'utf8',
    maxBuffer: 64_000_000,
  });
  return { code: status, stdout, stderr, ms: performance.now() - started };
}
