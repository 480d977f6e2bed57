import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { loopwright, root } from './terminal.ts';

let place: string;
beforeAll(() => {
  place = mkdtempSync(join(tmpdir(), 'loopwright-witness-'));
});
afterAll(() => rmSync(place, { recursive: true }));

const inPlace = (name: string) => join(place, name);
const [key, kept] = [() => inPlace('witness.pem'), () => inPlace('kept.json')];
const witness = (file: string, ...more: readonly string[]) =>
  loopwright(['witness', file, '--key', key(), '--kept', kept(), ...more]);

function exported(name: string): string {
  const file = inPlace(name);
  expect(loopwright(['export', '--demo', file]).code).toBe(0);
  return file;
}

describe('witness', () => {
  it('[TERM-34] countersigns an export, and then it is seen by another device', () => {
    const file = exported('first.jsonl');
    const said = witness(file);
    expect(said).toMatchObject({ code: 0, stderr: '' });
    expect(said.stdout).toMatch(
      /Made a new key .*\n[0-9a-f]{12}: 1\d\d events countersigned, seen for the first time\./,
    );
    expect(statSync(key()).mode & 0o077).toBe(0);
    expect(witness(file).stdout).toContain('nothing new since the last time');
    const checked = loopwright(['verify', file, '--witnesses', `${file}.witnesses.jsonl`]);
    expect(checked).toMatchObject({ code: 0, stderr: '' });
    expect(checked.stdout).toMatch(/seen by one other device\.\n$/);
    const answer = JSON.parse(loopwright(['verify', file, '--witnesses', `${file}.witnesses.jsonl`, '--json']).stdout);
    expect(answer).toMatchObject({ verdict: 'ok', logs: [{ seenBy: 1, seenTo: answer.size }] });
  });

  it('[TERM-34] the verifier that stands alone says the same of the same files', () => {
    const file = inPlace('first.jsonl');
    const script = join(root, 'records/verifier/verify-record.mjs');
    const run = (...args: readonly string[]) => execFileSync(process.execPath, [script, ...args], { encoding: 'utf8' });
    const { size, head, root: top } = JSON.parse(loopwright(['verify', file, '--json']).stdout);
    const said = JSON.parse(run(file, '--witnesses', `${file}.witnesses.jsonl`, '--json'));
    expect(said).toMatchObject({ verdict: 'ok', logs: [{ size, head, root: top, seenBy: 1 }] });
    expect(run(file)).toMatch(/^ok plant=quillmoor\nlog device=/);
    const changed = inPlace('changed.jsonl');
    writeFileSync(changed, readFileSync(file, 'utf8').replace('Alder-24', 'Alder-25'));
    expect(() => run(changed)).toThrow(/Command failed/);
  });

  it('[TERM-35] a changed countersignature: verdict, line and field, exit 1', () => {
    const file = inPlace('first.jsonl');
    const changed = inPlace('changed.witnesses.jsonl');
    writeFileSync(changed, readFileSync(`${file}.witnesses.jsonl`, 'utf8').replace(/"size":1\d\d/, '"size":7'));
    const said = loopwright(['verify', file, '--witnesses', changed]);
    expect(said).toMatchObject({ code: 1, stderr: '' });
    expect(said.stdout).toMatch(/^Line 0 .* of the countersignatures was changed.*\nField: statement\.sig\.\n/);
  });

  it('[TERM-35] what is damaged, in use or no key is said; nothing is countersigned', () => {
    const file = exported('second.zip');
    writeFileSync(`${kept()}.lock`, '');
    expect(witness(file)).toMatchObject({ code: 1, stdout: '' });
    rmSync(`${kept()}.lock`);
    const whole = readFileSync(kept(), 'utf8');
    writeFileSync(kept(), whole.slice(0, -20));
    expect(witness(file).stderr).toContain('is damaged');
    writeFileSync(kept(), whole);
    writeFileSync(inPlace('no.pem'), 'x');
    const noKey = loopwright(['witness', file, '--key', inPlace('no.pem'), '--kept', kept()]);
    expect(noKey.stderr).toContain('no Ed25519 private key');
    expect(loopwright(['witness', file])).toMatchObject({ code: 2, stdout: '' });
    const broken = inPlace('broken.jsonl');
    writeFileSync(broken, readFileSync(inPlace('first.jsonl'), 'utf8').slice(0, -9));
    expect(witness(broken).code).toBe(1);
    expect(existsSync(`${file}.witnesses.jsonl`) || existsSync(`${broken}.witnesses.jsonl`)).toBe(false);
  });
});
