import { bytesToHex } from '@noble/hashes/utils.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  appendEvent,
  canonicalText,
  compareLogs,
  emptyLog,
  extendLog,
  type LogEvent,
  logRoot,
  rootOfLeaves,
  solveLog,
  verifyLog,
} from '../../src/log/index.ts';
import { checkpointAt, deviceKey, happening, plantId, sampleLog, stateAt, verify } from './sample-log.ts';

const log = await sampleLog(12);
const { publicKey } = log.key;
const check = (lines: readonly string[], checkpoints: readonly unknown[] = []) =>
  verifyLog({ lines, publicKey, plant: plantId, checkpoints }, verify);

/** The lines with one replaced by what a change makes of its event, signed anew or not. */
async function withChange(at: number, change: (event: LogEvent) => object, signAnew = false): Promise<string[]> {
  const event = change(JSON.parse(log.lines[at] ?? '') as LogEvent);
  const { sig, ...said } = event as LogEvent;
  const text = signAnew ? canonicalText({ ...said, sig: await signed(said) }) : canonicalText({ ...said, sig });
  return log.lines.map((line, i) => (i === at ? text : line));
}

async function signed(said: object): Promise<string> {
  const message = Buffer.concat([Buffer.from('splice-record/event/1\0'), Buffer.from(canonicalText(said))]);
  return bytesToHex(await log.key.sign(message));
}

const linesAt = (at: number, line: string) => log.lines.map((each, i) => (i === at ? line : each));
const line5 = log.lines[5] ?? '';

describe('a log that is whole', () => {
  it('[LOG-30] has the verdict ok, the size, head and root of its events', async () => {
    const { failure, state, witnessed, warnings } = await check(log.lines);
    expect(failure).toBeUndefined();
    expect(state).toEqual(stateAt(log, 12));
    expect(state.head).toBe(log.ids[11]);
    expect(logRoot(state)).toBe(rootOfLeaves(log.ids));
    expect([witnessed, warnings]).toEqual([0, []]);
  });

  it('[LOG-30] an empty log is whole', async () => {
    expect(await check([])).toMatchObject({ state: { size: 0, head: '0'.repeat(64) }, witnessed: 0 });
  });

  it('[LOG-31] the signature covers the word of its kind, a zero byte and the canonical form', async () => {
    const { sig, ...said } = JSON.parse(line5) as LogEvent;
    expect(await signed(said)).toBe(sig);
  });

  it('[LOG-32] a check may stop anywhere and go on from what was kept', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(fc.nat({ max: 12 }), { maxLength: 4 }), async (cuts) => {
        let state = emptyLog(plantId, publicKey);
        for (const to of [...cuts.sort((a, b) => a - b), 12]) {
          const kept = JSON.parse(JSON.stringify(state)) as typeof state;
          ({ state } = await extendLog(kept, log.lines.slice(kept.size, to), { publicKey, verify }));
        }
        expect(state).toEqual(stateAt(log, 12));
      }),
      { seed: 42, numRuns: 50 },
    );
  });

  it('[LOG-33] a clock set back is a warning, order never rests on it', async () => {
    const back = await sampleLog(6, {
      change: (n) => happening(n, n === 3 ? { at: '2016-11-25T02:00:00.000Z' } : {}),
    });
    const { failure, warnings } = await check(back.lines);
    expect([failure, warnings]).toEqual([undefined, [{ code: 'clock-back', at: 3 }]]);
  });
});

describe('verdicts, in their order', () => {
  const parsed = JSON.parse(line5) as Record<string, unknown>;
  const notCanonical: readonly (readonly [string, string])[] = [
    ['a space', `${line5} `],
    ['another order of names', JSON.stringify({ v: 1, ...parsed })],
    ['a name twice', line5.replace('"seq":5', '"seq":5,"seq":5')],
    ['2.0 for 2', line5.replace('"seq":5', '"seq":5.0')],
    ['a needless escape', line5.replace('quillmoor', '\\u0071uillmoor')],
    ['a number beyond a double', line5.replace('1005.5', '1e999')],
    ['33 levels', line5.replace('"marks":[', `"marks":[${'['.repeat(33)}${']'.repeat(33)},`)],
    ['no JSON', 'hello'],
    ['nothing', ''],
    ['more than 64 KiB', line5.replace('geprüft', 'x'.repeat(66_000))],
  ];
  it.each(notCanonical)('[LOG-34] not-canonical: %s', async (_, line) => {
    expect((await check(linesAt(5, line))).failure).toEqual({ verdict: 'not-canonical', at: 5 });
  });

  const { blobs: _, ...withoutBlobs } = parsed;
  const { at: __, by: ___, ...withoutTwo } = parsed;
  const badEnvelopes: readonly (readonly [string, unknown, string?])[] = [
    ['a field missing', withoutBlobs, 'blobs'],
    ['a field more', { ...parsed, extra: 1 }, 'extra'],
    ['another name', { ...withoutBlobs, blob: [] }, 'blob'],
    ['two names in one', { ...withoutTwo, 'at,by': 1 }, 'at'],
    ['v 2', { ...parsed, v: 2 }, 'v'],
    ['v as text', { ...parsed, v: '1' }, 'v'],
    ['no object', [1]],
    ['null', null],
  ];
  it.each(badEnvelopes)('[LOG-34] [LOG-35] bad-envelope: %s', async (_, value, field) => {
    const lines = linesAt(5, canonicalText(value));
    const place = field === undefined ? {} : { field };
    expect((await check(lines)).failure).toEqual({ verdict: 'bad-envelope', at: 5, ...place });
  });

  it('[LOG-34] a line is measured in bytes: letters of two bytes count twice', async () => {
    const withNote = (note: string) => ({ ...parsed, body: { note } });
    const [most, tooMuch] = ['é'.repeat(32_000), 'é'.repeat(33_000)];
    expect((await check(linesAt(5, canonicalText(withNote(most))))).failure?.verdict).toBe('bad-signature');
    expect((await check(linesAt(5, canonicalText(withNote(tooMuch))))).failure?.verdict).toBe('not-canonical');
  });

  it('[LOG-34] wrong-plant and wrong-device come before the signature', async () => {
    const plant = await withChange(5, (event) => ({ ...event, plant: 'elsewhere', device: '0'.repeat(64) }));
    expect((await check(plant)).failure).toEqual({ verdict: 'wrong-plant', at: 5 });
    const device = await withChange(5, (event) => ({ ...event, device: '0'.repeat(64), sig: 'x' }));
    expect((await check(device)).failure).toEqual({ verdict: 'wrong-device', at: 5 });
  });

  it.each([
    ['another value', (event: LogEvent) => ({ ...event, body: { schema: 1, thing: {} } })],
    ['upper-case digits', (event: LogEvent) => ({ ...event, sig: event.sig.toUpperCase() })],
    ['a shorter one', (event: LogEvent) => ({ ...event, sig: event.sig.slice(2) })],
    ['none', (event: LogEvent) => ({ ...event, sig: null })],
    ['another number of seq too', (event: LogEvent) => ({ ...event, seq: 9 })],
  ])('[LOG-34] bad-signature: %s', async (_, change) => {
    expect((await check(await withChange(5, change))).failure).toEqual({ verdict: 'bad-signature', at: 5 });
  });

  it('[LOG-34] sequence-gap comes before broken-link', async () => {
    const gap = await withChange(5, (event) => ({ ...event, seq: 6, prev: '0'.repeat(64) }), true);
    expect((await check(gap)).failure).toEqual({ verdict: 'sequence-gap', at: 5 });
    const link = await withChange(5, (event) => ({ ...event, prev: '0'.repeat(64) }), true);
    expect((await check(link)).failure).toEqual({ verdict: 'broken-link', at: 5 });
    const inside = await withChange(5, (event) => ({ ...event, body: 1 }), true);
    expect((await check(inside)).failure).toEqual({ verdict: 'broken-link', at: 6 });
  });

  it('[LOG-34] the first failing line is the verdict, whatever comes after', async () => {
    const lines = linesAt(7, 'x');
    lines[4] = `${lines[4]} `;
    expect(await check(lines)).toMatchObject({ failure: { verdict: 'not-canonical', at: 4 }, state: { size: 4 } });
  });
});

describe('checkpoints', () => {
  it('[LOG-40] vouch for as much as the largest covers', async () => {
    const checkpoints = [await checkpointAt(log, 7), await checkpointAt(log, 0), await checkpointAt(log, 3)];
    expect(await check(log.lines, checkpoints)).toMatchObject({ witnessed: 7, state: { size: 12 } });
    expect((await check(log.lines, checkpoints)).failure).toBeUndefined();
  });

  it('[LOG-41] bad-checkpoint: another field, plant, device, signature or form', async () => {
    const right = await checkpointAt(log, 7);
    const wrong: readonly (readonly [string, unknown])[] = [
      ['extra', { ...right, extra: 1 }],
      ['v', { ...right, v: 2 }],
      ['plant', { ...right, plant: 'elsewhere' }],
      ['device', { ...right, device: '0'.repeat(64) }],
      ['sig', { ...right, sig: right.sig.replace(/^./, right.sig.startsWith('0') ? '1' : '0') }],
      ['root', { ...right, root: right.root.toUpperCase() }],
      ['sig', { ...right, at: '2026-11-27T00:00:00Z' }],
    ];
    for (const [field, each] of wrong)
      expect((await check(log.lines, [each])).failure).toEqual({ verdict: 'bad-checkpoint', at: 7, field });
    for (const each of [null, 'x', []])
      expect((await check(log.lines, [each])).failure).toEqual({ verdict: 'bad-checkpoint' });
    const inText = (await check(log.lines, [{ ...right, size: '7' }])).failure;
    expect(inText).toEqual({ verdict: 'bad-checkpoint', field: 'size' });
  });

  it('[LOG-41] a signature of another kind does not pass for that of a checkpoint', async () => {
    const { sig: _, ...said } = await checkpointAt(log, 7);
    const asEvent = { ...said, sig: await signed(said) };
    expect((await check(log.lines, [asEvent])).failure).toEqual({ verdict: 'bad-checkpoint', at: 7, field: 'sig' });
  });

  it('[LOG-42] truncated: the log is shorter than a checkpoint says', async () => {
    const witness = await checkpointAt(log, 12);
    for (let size = 0; size < 12; size++) {
      const expected = { verdict: 'truncated', at: size, witnessed: 12 };
      expect((await check(log.lines.slice(0, size), [witness])).failure).toEqual(expected);
    }
  });

  it('[LOG-43] history-rewritten: whoever has the key wrote the past anew', async () => {
    const other = await sampleLog(12, { change: (n) => happening(n, n >= 5 ? { by: 'b7' } : {}) });
    expect((await check(other.lines)).failure).toBeUndefined();
    expect((await check(other.lines, [await checkpointAt(log, 5)])).failure).toBeUndefined();
    for (const size of [6, 9, 12])
      expect((await check(other.lines, [await checkpointAt(log, size)])).failure).toEqual({
        verdict: 'history-rewritten',
        at: size,
      });
  });

  it('[LOG-41] are looked at in the order given', async () => {
    const [good, long] = [await checkpointAt(log, 3), await checkpointAt(log, 12)];
    const lines = log.lines.slice(0, 10);
    expect((await check(lines, [good, long, null])).failure).toMatchObject({ verdict: 'truncated' });
    expect((await check(lines, [good, null, long])).failure).toMatchObject({ verdict: 'bad-checkpoint' });
  });
});

describe('two copies of one log', async () => {
  const compare = (a: readonly string[], b: readonly string[]) =>
    compareLogs({ a, b, publicKey, plant: plantId }, verify);
  const branch = await sampleLog(14, { change: (n) => happening(n, n >= 8 ? { by: 'b7' } : {}) });

  it('[LOG-50] fork at the first place where one device wrote two things', async () => {
    expect(await compare(log.lines, branch.lines)).toEqual({ verdict: 'fork', at: 8 });
    expect(await compare(branch.lines, log.lines)).toEqual({ verdict: 'fork', at: 8 });
  });

  it('[LOG-50] prefix and ok give the shorter length', async () => {
    expect(await compare(log.lines, log.lines.slice(0, 4))).toEqual({ verdict: 'prefix', at: 4 });
    expect(await compare([], log.lines)).toEqual({ verdict: 'prefix', at: 0 });
    expect(await compare(log.lines, log.lines)).toEqual({ verdict: 'ok', at: 12 });
    expect(await compare([], [])).toEqual({ verdict: 'ok', at: 0 });
  });

  it('[LOG-51] a copy that is not whole in itself is said first', async () => {
    expect(await compare(log.lines, linesAt(5, 'x'))).toEqual({ verdict: 'not-canonical', at: 5, log: 'b' });
  });
});

describe('appending', () => {
  const start = emptyLog(plantId, publicKey);
  const refused = async (changes: Parameters<typeof happening>[1]) => {
    const error = await appendEvent(start, happening(0, changes), log.key.sign).catch((cause: unknown) => cause);
    const { code, path } = error as { code?: string; path?: string };
    return [code, path];
  };

  it('[LOG-60] what cannot be said rightly is refused before it is signed', async () => {
    expect(await refused({ at: '25.11.2026' })).toEqual(['not-a-moment', 'at']);
    expect(await refused({ at: '2026-11-25T02:00:00+01:00' })).toEqual(['not-a-moment', 'at']);
    expect(await refused({ up_ms: -1 })).toEqual(['out-of-range', 'up_ms']);
    expect(await refused({ up_ms: 0.5 })).toEqual(['out-of-range', 'up_ms']);
    expect(await refused({ by: '' })).toEqual(['empty', 'by']);
    expect(await refused({ body: { a: [2 ** 53] } })).toEqual(['unsafe-integer', 'body.a[0]']);
    expect(await refused({ body: { a: Number.NaN } })).toEqual(['number-not-finite', 'body.a']);
    expect(await refused({ body: { a: '\ud800' } })).toEqual(['lone-surrogate', 'body.a']);
    expect(await refused({ body: undefined })).toEqual(['not-plain-data', 'body']);
    expect(await refused({ body: 'ü'.repeat(33_000) })).toEqual(['event-too-large', 'body']);
    expect(await refused({ blobs: [{ sha256: 'x', bytes: 1, kind: 'photo' }] })).toEqual([
      'not-a-hash',
      'blobs[0].sha256',
    ]);
  });

  it('[LOG-60] whatever plain data is appended reads back, and the log stays whole', async () => {
    const body = fc.jsonValue({ maxDepth: 5, stringUnit: 'grapheme' }).filter((each) => !holdsUnsafeInteger(each));
    await fc.assert(
      fc.asyncProperty(fc.array(body, { maxLength: 6 }), async (bodies) => {
        const made = await sampleLog(bodies.length, { change: (n) => happening(n, { body: bodies[n] ?? null }) });
        const read: unknown[] = [];
        const onEvent = (event: LogEvent) => read.push(event.body);
        const { state, failure } = await extendLog(start, made.lines, { publicKey, verify, onEvent });
        expect([failure, state.size]).toEqual([undefined, bodies.length]);
        expect(read).toEqual(JSON.parse(JSON.stringify(bodies.map((each) => each ?? null))));
      }),
      { seed: 42, numRuns: 100 },
    );
  });

  it('[LOG-61] another device, plant or time changes every id', async () => {
    const base = await appendEvent(start, happening(0), log.key.sign);
    const tablet = deviceKey('tablet');
    const elsewhere = await appendEvent(emptyLog('other', publicKey), happening(0), log.key.sign);
    const other = await appendEvent(emptyLog(plantId, tablet.publicKey), happening(0), tablet.sign);
    expect(new Set([base.id, elsewhere.id, other.id]).size).toBe(3);
  });

  it('[LOG-30] the answer for scripts has verdict, place, size, head and root', async () => {
    const question = { lines: log.lines, publicKey_hex: bytesToHex(publicKey), plant: plantId, checkpoints: [] };
    const { head } = stateAt(log, 12);
    const whole = { verdict: 'ok', size: 12, head, root: rootOfLeaves(log.ids), witnessed: 0, warnings: [] };
    expect(await solveLog(question, verify)).toEqual(whole);
    const broken = await solveLog({ ...question, lines: linesAt(5, 'x') }, verify);
    expect(broken).toMatchObject({ verdict: 'not-canonical', at: 5, size: 5, head: log.ids[4] });
  });
});

function holdsUnsafeInteger(value: unknown): boolean {
  if (typeof value === 'number') return Number.isInteger(value) && Math.abs(value) >= 2 ** 53;
  return typeof value === 'object' && value !== null && Object.values(value).some(holdsUnsafeInteger);
}
