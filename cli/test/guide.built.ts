import { spawnSync } from 'node:child_process';
import { chmodSync, cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { root } from './terminal.ts';

const guide = readFileSync(join(root, 'docs/guide/terminal.md'), 'utf8');
const examples = [...guide.matchAll(/```console\n\$ (.*)\n([\s\S]*?)```/g)].map((match) => ({
  command: match[1] ?? '',
  output: (match[2] ?? '').trimEnd().split('\n'),
}));

let place: string;
beforeAll(() => {
  place = mkdtempSync(join(tmpdir(), 'loopwright-guide-'));
  cpSync(join(root, 'docs/guide'), join(place, 'docs/guide'), { recursive: true });
  const program = join(place, 'loopwright');
  writeFileSync(program, `#!/bin/sh\nexec "${process.execPath}" "${join(root, 'cli/bin/loopwright.js')}" "$@"\n`);
  chmodSync(program, 0o755);
});
afterAll(() => rmSync(place, { recursive: true }));

it('[TERM-21] the guide has its examples', () => {
  expect(examples.length).toBeGreaterThanOrEqual(7);
});

it.each(examples)('[TERM-22] the guide prints what the program prints: $command', ({ command, output }) => {
  const { stdout, stderr } = spawnSync('/bin/sh', ['-c', command], {
    cwd: place,
    encoding: 'utf8',
    env: { ...process.env, PATH: `${place}${delimiter}${process.env['PATH']}` },
  });
  // Numbers and units hold together by no-break spaces, which nobody would type into a guide.
  const printed = (stdout + stderr).replaceAll('\u00a0', ' ').trimEnd().split('\n');
  let at = 0;
  output.forEach((line, i) => {
    if (line === '…') return;
    const found = output[i - 1] === '…' ? printed.indexOf(line, at) : at;
    expect(printed[found], `line ${i + 1} of ${command}`).toBe(line);
    at = found + 1;
  });
  if (output.at(-1) !== '…') expect(printed).toHaveLength(at);
});
