import { describe, expect, it } from 'vitest';
import { deviceKey, exportOf, happening, plantId, sampleLog } from '../log/sample-log.ts';
import { alone, ours } from './both-verifiers.ts';
import { signed } from './forge.ts';
import { fileOf } from './sample-record.ts';
import { type Choice, seeded } from './seeded.ts';

const events = 1000;
const log = await sampleLog(events);
const file = await exportOf([log]);
const lines = Buffer.from(file).toString('utf8').split('\n').slice(0, -1);
const branch = await sampleLog(events, { change: (n) => happening(n, n > 400 ? { by: 'x' } : {}) });
const stranger = await sampleLog(events, { key: deviceKey('stranger') });
const elsewhere = await sampleLog(events, { plant: 'elsewhere' });
const each = process.env['LW_SOAK'] === '1' ? 500 : 2;

/** A line of an event; grafts from the branch lie where it is another log. */
const place = (choice: Choice, from = 1): number => from + choice.below(events - from);
const changed = (choice: Choice, change: (line: string) => string | Uint8Array): Uint8Array => {
  const at = place(choice);
  return fileOf(lines.map((line, i) => (i === at ? change(line) : line)));
};

async function byAnotherKey(choice: Choice): Promise<Uint8Array> {
  const at = place(choice);
  const { sig: _, ...said } = JSON.parse(lines[at] ?? '') as Record<string, unknown>;
  const { sig } = (await signed('event', said, deviceKey('thief'))) as { sig: string };
  return fileOf(lines.with(at, (lines[at] ?? '').replace(/"sig":"[0-9a-f]+"/, `"sig":"${sig}"`)));
}

const order = 2n ** 252n + 27742317777372353535851937790883648493n;
const reversed = (hex: string) => (hex.match(/../g) ?? []).reverse().join('');
function beyondOrder(line: string): string {
  const scalar = /"sig":"[0-9a-f]{64}([0-9a-f]{64})"/.exec(line)?.[1] ?? '';
  const larger = (BigInt(`0x${reversed(scalar)}`) + order).toString(16).padStart(64, '0');
  return line.replace(scalar, reversed(larger));
}

/** Every kind of tampering, and the verdicts that it may have. */
const kinds: Readonly<Record<string, (choice: Choice) => Uint8Array | Promise<Uint8Array>>> = {
  'a bit': (choice) => {
    const at = choice.below(file.length);
    return file.with(at, (file[at] ?? 0) ^ (1 << choice.below(8)));
  },
  'a byte': (choice) => file.with(choice.below(file.length), 0x7f),
  'cut at a byte': (choice) => file.subarray(0, choice.below(file.length)),
  'cut at a line': (choice) => fileOf(lines.slice(0, place(choice))),
  'the end cut out': (choice) => fileOf([...lines.slice(0, place(choice)), lines.at(-1) ?? '']),
  'two lines swapped': (choice) => {
    const at = place(choice);
    return fileOf(lines.with(at, lines[at + 1] ?? '').with(at + 1, lines[at] ?? ''));
  },
  'a line repeated': (choice) => {
    const at = place(choice);
    return fileOf(lines.toSpliced(at, 0, lines[at] ?? ''));
  },
  'a line dropped': (choice) => fileOf(lines.toSpliced(place(choice), 1)),
  'grafted from a branch': (choice) => {
    const at = place(choice, 402);
    return fileOf([...lines.slice(0, at), ...branch.lines.slice(at - 1), lines.at(-1) ?? '']);
  },
  'grafted from a stranger': (choice) => {
    const at = place(choice);
    return fileOf(lines.with(at, stranger.lines[at - 1] ?? ''));
  },
  'grafted from another plant': (choice) => {
    const at = place(choice);
    return fileOf(lines.with(at, elsewhere.lines[at - 1] ?? ''));
  },
  'signed by another key': byAnotherKey,
  'a scalar beyond the order': (choice) => changed(choice, beyondOrder),
  'a point of low order': (choice) =>
    changed(choice, (line) => line.replace(/"sig":"[0-9a-f]{64}/, `"sig":"01${'0'.repeat(62)}`)),
  'a point written another way': (choice) =>
    changed(choice, (line) => line.replace(/"sig":"[0-9a-f]{64}/, `"sig":"ee${'f'.repeat(60)}7f`)),
  'a byte-order mark': (choice) => changed(choice, (line) => `\ufeff${line}`),
  'a byte-order mark before all': () => Buffer.concat([Buffer.from([0xef, 0xbb, 0xbf]), file]),
  'a name twice': (choice) => changed(choice, (line) => line.replace('{', '{"at":"2020-01-01T00:00:00Z",')),
  'a space': (choice) => changed(choice, (line) => line.replace(':', ': ')),
  'nested too deep': (choice) =>
    changed(choice, (line) => line.replace('"schema":1', `"schema":${'['.repeat(31)}${']'.repeat(31)}`)),
  'no UTF-8': (choice) => changed(choice, (line) => Buffer.concat([Buffer.from(line), Buffer.from([0xc0, 0x80])])),
  'another value': (choice) => changed(choice, (line) => line.replace('"up_ms":', '"up_ms":1')),
};

describe(`a record of ${events} events`, () => {
  it(
    '[LOG-99] every kind of tampering is found by both verifiers, at the same place',
    async () => {
      expect(log.states[0]?.plant).toBe(plantId);
      for (const said of [await ours(file), await alone(file)]) expect(said.verdict).toBe('ok');
      let found = 0;
      for (const [name, tamper] of Object.entries(kinds))
        for (let n = 0; n < each; n++) {
          const copy = Uint8Array.from(await tamper(seeded(1_000_000 + n)));
          if (Buffer.from(copy).equals(Buffer.from(file))) continue;
          const said = await ours(copy);
          expect(said.verdict, name).not.toBe('ok');
          expect(await alone(copy), `${name}, case ${n}`).toEqual(said);
          found += 1;
        }
      expect(found).toBeGreaterThan(Object.keys(kinds).length * (each - 1));
      console.log(
        `verifiers: ${Object.keys(kinds).length} kinds of tampering with ${events} events, ${found} of ${found} found by both`,
      );
    },
    12 * 3_600_000,
  );
});
