import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { zipSync } from 'fflate';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { loopwright, root } from './terminal.ts';

let place: string;
beforeAll(() => {
  place = mkdtempSync(join(tmpdir(), 'loopwright-export-'));
});
afterAll(() => rmSync(place, { recursive: true }));

const inPlace = (name: string) => join(place, name);

function exported(name: string, ...args: readonly string[]): string {
  const file = inPlace(name);
  expect(loopwright(['export', ...args, file])).toMatchObject({ code: 0, stderr: '' });
  return file;
}

const verify = (file: string, ...args: readonly string[]) => loopwright(['verify', file, ...args]);

describe('export and verify', () => {
  it.each(['jsonl', 'zip'])('[TERM-30] the demo plant as .%s is whole', (form) => {
    const file = exported(`demo.${form}`, '--demo');
    const { code, stdout, stderr } = verify(file);
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
    expect(stdout).toMatch(
      /^Whole: .*\n[0-9a-f]{12}: 1\d\d events, all covered by a checkpoint\.\n[0-9a-f]{12}: seen by no other device, on this device only\.\n$/,
    );
    expect(readdirSync(place).filter((name) => name.endsWith('.part'))).toEqual([]);
  });

  it('[TERM-31] the events of an export are the definitions of the folder', () => {
    const file = exported('own.jsonl', '--plant', join(root, 'docs/guide/own-plant'));
    const lines = readFileSync(file, 'utf8').trimEnd().split('\n');
    const events = lines.slice(1, -1).map((line) => JSON.parse(line) as { type: string; body: { thing: object } });
    expect(events[0]?.type).toBe('plant.defined');
    const count = (type: string) => events.filter((event) => event.type === type).length;
    expect([count('line.defined'), count('position.defined')]).toEqual([1, 3]);
    const answer = JSON.parse(verify(file, '--json').stdout) as Record<string, unknown>;
    expect(answer).toMatchObject({ status: 'ok', verdict: 'ok', size: events.length, witnessed: events.length });
    expect(Object.keys(answer)).toEqual(expect.arrayContaining(['head', 'root', 'warnings', 'engine', 'used']));
  });

  it('[TERM-32] a changed, cut or repeated export: verdict and line, exit 1', () => {
    const file = exported('whole.jsonl', '--demo');
    const text = readFileSync(file, 'utf8');
    const lines = text.trimEnd().split('\n');
    const cases: readonly (readonly [string, string, RegExp])[] = [
      ['bad-signature', text.replace('Alder-24', 'Alder-25'), /^Line \d+ /],
      ['sequence-gap', `${[...lines.slice(0, 9), ...lines.slice(10)].join('\n')}\n`, /^At line 9 /],
      ['truncated', `${lines.slice(0, 20).join('\n')}\n`, /^The end is missing after 20\./],
      ['not-canonical', text.slice(0, -1), /^Line \d+ /],
    ];
    for (const [verdict, changed, sentence] of cases) {
      const copy = inPlace('changed.jsonl');
      writeFileSync(copy, changed);
      const said = verify(copy);
      expect({ code: said.code, stderr: said.stderr }).toEqual({ code: 1, stderr: '' });
      expect(said.stdout).toMatch(sentence);
      const answer = JSON.parse(verify(copy, '--json').stdout) as object;
      expect(answer).toMatchObject({ status: 'ok', verdict, at: expect.any(Number) });
    }
    expect(verify(inPlace('changed.jsonl'), '--lang', 'de').stdout).toMatch(/^Zeile \d+ /);
    expect(verify(inPlace('changed.jsonl'), '--lang', 'es').stdout).toMatch(/^La línea \d+ /);
  });

  it('[TERM-32] a .zip with one bit of its log changed is refused', () => {
    const file = exported('bit.zip', '--demo');
    const bytes = readFileSync(file);
    for (const at of [60, 2000, 9000]) {
      const copy = Uint8Array.from(bytes);
      copy[at] = (copy[at] ?? 0) ^ 4;
      writeFileSync(inPlace('bit2.zip'), copy);
      const { code, stdout, stderr } = verify(inPlace('bit2.zip'));
      expect(code).toBe(1);
      expect(`${stdout}${stderr}`).not.toMatch(/\n\s+at |should not have happened/);
    }
  });

  it('[TERM-33] what is no export: one sentence that helps, exit 1 or 2', () => {
    const bomb = inPlace('bomb.zip');
    writeFileSync(bomb, zipSync({ 'log.jsonl': new Uint8Array(50_000_000) }));
    const outside = inPlace('outside.zip');
    writeFileSync(outside, zipSync({ '../log.jsonl': Uint8Array.of(1) }));
    const others = inPlace('others.zip');
    writeFileSync(others, zipSync({ 'notes.txt': Uint8Array.of(1) }));
    const said = [bomb, outside, others, join(root, 'README.md')].map((file) => verify(file));
    expect(said.map(({ code, stdout }) => [code, stdout])).toEqual(said.map(() => [1, '']));
    expect(said.map(({ stderr }) => stderr.trim())).toEqual([
      expect.stringContaining('more than 100 times its size'),
      expect.stringContaining('points out of the archive'),
      expect.stringContaining('holds no log.jsonl'),
      expect.stringContaining('neither an export nor a whole archive'),
    ]);
    const refused = JSON.parse(verify(bomb, '--json').stdout) as object;
    expect(refused).toMatchObject({ status: 'refused', code: 'file-ratio', path: '' });
    expect(verify(inPlace('nowhere.zip'))).toMatchObject({ code: 2, stdout: '' });
  });

  it('[TERM-33] an export with another ending, or of two plants, is not begun', () => {
    for (const args of [[inPlace('plant.txt')], ['--demo', '--plant', 'x', inPlace('plant.zip')]]) {
      const { code, stdout, stderr } = loopwright(['export', ...args]);
      expect({ code, stdout }).toEqual({ code: 2, stdout: '' });
      expect(stderr.trim().split('\n')).toHaveLength(1);
    }
    expect(existsSync(inPlace('plant.txt')) || existsSync(inPlace('plant.zip'))).toBe(false);
  });
});
