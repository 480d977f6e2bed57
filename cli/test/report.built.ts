import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { World } from '../../jobs/test/press-run/run-world.ts';
import { signedRun } from '../../jobs/test/press-run/signed-run.ts';
import { wholeRun } from '../../jobs/test/press-run/whole-run.ts';
import { loopwright } from './terminal.ts';

let place: string;
beforeAll(async () => {
  place = mkdtempSync(join(tmpdir(), 'loopwright-report-'));
  writeFileSync(whole(), (await signedRun(wholeRun().events)).text);
  const other = new World(undefined, undefined, 'RUN00002');
  writeFileSync(two(), (await signedRun([...wholeRun().events, ...other.events])).text);
});
afterAll(() => rmSync(place, { recursive: true }));

const inPlace = (name: string) => join(place, name);
const [whole, two] = [() => inPlace('whole.jsonl'), () => inPlace('two.jsonl')];
const at = ['--now', '2026-11-25T07:00:00Z'] as const;

describe('report', () => {
  it('[TERM-60] the record of a run in every language: who, where, both curves, what is not accepted, head code', () => {
    const said = loopwright(['report', whole(), ...at]);
    expect(said).toMatchObject({ code: 0, stderr: '' });
    const text = said.stdout.replaceAll(/\s+/g, ' ');
    for (const part of ['Record of press run RUN00001', 'QM-04-3', 'b2 02:19', 'not accepted yet', 'one device only'])
      expect(text).toContain(part);
    expect(text).toMatch(/top 132 °C, bottom 139 °C/);
    expect(said.stdout).toMatch(/\nRUN00001 · [0-9A-Z]{4}(-[0-9A-Z]{4}){3}\n\n$/);
    expect(loopwright(['report', whole(), '--lang', 'de']).stdout).toContain('Nachweis des Presslaufs RUN00001');
    expect(loopwright(['report', whole(), '--lang', 'es']).stdout).toContain('Expediente del prensado RUN00001');
    expect(loopwright(['report', whole(), '--worked', '--units', 'us']).stdout).toMatch(/S = 2\s528\.42\sin \+/);
  });

  it('[TERM-61] as PDF on either paper, byte for byte the same, and its head code is said', () => {
    const write = (name: string, paper: string) =>
      loopwright(['report', whole(), '--out', inPlace(name), '--paper', paper, ...at]);
    const said = write('one.pdf', 'a4');
    expect(said).toMatchObject({ code: 0, stderr: '' });
    expect(said.stdout).toMatch(/Wrote .*one\.pdf\.\nHead code: [0-9A-Z]{4}(-[0-9A-Z]{4}){3}\n$/);
    write('other.pdf', 'a4');
    write('letter.pdf', 'letter');
    const bytes = (name: string) => readFileSync(inPlace(name));
    expect(bytes('one.pdf').equals(bytes('other.pdf'))).toBe(true);
    expect(bytes('one.pdf').toString('latin1')).toContain('/MediaBox [0 0 595.28 841.89]');
    expect(bytes('letter.pdf').toString('latin1')).toContain('/MediaBox [0 0 612 792]');
  });

  it('[TERM-62] of several runs one must be named; those there are get listed', () => {
    const said = loopwright(['report', two()]);
    expect(said).toMatchObject({ code: 2, stdout: '' });
    expect(said.stderr).toMatch(
      /several press runs.*\n {2}RUN00001 · QM-04-3 .* Finished\n {2}RUN00002 · QM-04-3 .* Still under way\n$/,
    );
    const wrong = loopwright(['report', two(), '--run', 'RUN00009']);
    expect(wrong).toMatchObject({ code: 1, stdout: '' });
    expect(wrong.stderr).toContain('no press run RUN00009');
    const named = loopwright(['report', two(), '--run', 'RUN00002']);
    expect(named.code).toBe(0);
    expect(named.stdout).toContain('This run is not over');
  });

  it('[TERM-63] of a file that does not hold nothing is made: the verdict is said, exit 1', () => {
    writeFileSync(inPlace('changed.jsonl'), readFileSync(whole(), 'utf8').replace('"value":64.36', '"value":64.35'));
    const said = loopwright(['report', inPlace('changed.jsonl'), '--out', inPlace('none.pdf')]);
    expect(said).toMatchObject({ code: 1, stderr: '' });
    expect(said.stdout).toMatch(/Line \d+ .* was changed after it was signed/);
    expect(() => readFileSync(inPlace('none.pdf'))).toThrow(/ENOENT/);
  });

  it('[TERM-63] a plant without a run, a folder, a file that is not there, another paper: one sentence', () => {
    loopwright(['export', '--demo', inPlace('plant.jsonl')]);
    const none = loopwright(['report', inPlace('plant.jsonl')]);
    expect(none).toMatchObject({ code: 1, stdout: '' });
    expect(none.stderr).toContain('holds no press run');
    expect(loopwright(['report', place])).toMatchObject({ code: 2, stdout: '' });
    expect(loopwright(['report', inPlace('gone.jsonl')])).toMatchObject({ code: 2, stdout: '' });
    expect(loopwright(['report', whole(), '--paper', 'a5'])).toMatchObject({ code: 2, stdout: '' });
  });
});
