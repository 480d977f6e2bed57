import { utf8ToBytes } from '@noble/hashes/utils.js';
import { describe, expect, it } from 'vitest';
import { beginExport, continueExport, type ExportReading, verifyExport, verifyLog } from '../../src/log/index.ts';
import { checkpointAt, deviceKey, exportOf, happening, plantId, sampleLog, verify } from './sample-log.ts';

const events = 1000;
const log = await sampleLog(events);
const file = await exportOf([log]);
const soak = process.env['LW_SOAK'] === '1';
/** Changes judged at the same time. */
const atOnce = 64;
const soakTime_ms = 12 * 3_600_000;

/** Numbers from 0 to 1, the same in every run (32-bit xorshift). */
function* seeded(seed: number): Generator<number> {
  for (let state = seed; ; ) {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    yield (state >>> 0) / 2 ** 32;
  }
}

/** Where each line of the file starts, and how far the file is whole before it. */
async function readings(): Promise<{ starts: number[]; before: ExportReading[] }> {
  const begun = beginExport(file);
  if ('verdict' in begun) throw new Error(begun.verdict);
  const before = [begun.reading, begun.reading];
  const onEvent = (_event: unknown, _id: string, reading: ExportReading) => before.push(reading);
  const { failure } = await verifyExport(file, { verify, onEvent });
  expect(failure).toBeUndefined();
  const starts = [0];
  for (const [i, byte] of file.entries()) if (byte === 0x0a && i + 1 < file.length) starts.push(i + 1);
  return { starts, before };
}

/** Whether a part of the file with one bit changed fails; of a part that begins in the middle, at its first line. */
async function isSeen(
  part: Uint8Array,
  bit: number,
  { line, reading }: { readonly line: number; readonly reading: ExportReading | undefined },
): Promise<boolean> {
  const copy = Uint8Array.from(part);
  copy[bit >> 3] = (copy[bit >> 3] ?? 0) ^ (1 << (bit & 7));
  if (line === 0) return (await verifyExport(copy, { verify })).failure !== undefined;
  if (reading === undefined) throw new Error(`no reading before line ${line}`);
  return (await continueExport(reading, copy, { verify })).failure?.at === line;
}

describe('T6: bits', () => {
  it(
    '[LOG-80] an export of 1,000 events with one bit changed is refused at its line, whichever bit',
    async () => {
      const { starts, before } = await readings();
      const chosen = seeded(20261125);
      const share = soak ? 1 : 0.01;
      let [flips, unseen] = [0, 0];
      for (let line = 0; line < starts.length; line++) {
        const [from = 0, end = file.length] = [starts[line], starts[line + 1]];
        // A line is judged with the next one at hand, because a changed line end joins the two.
        const part = file.subarray(from, line === 0 ? file.length : starts[line + 2]);
        const bits = Array.from({ length: (end - from) * 8 }, (_, bit) => bit).filter(
          () => share === 1 || (chosen.next().value as number) < share,
        );
        for (let i = 0; i < bits.length; i += atOnce) {
          const some = bits.slice(i, i + atOnce);
          const seen = await Promise.all(some.map((bit) => isSeen(part, bit, { line, reading: before[line] })));
          flips += some.length;
          unseen += seen.filter((each) => !each).length;
        }
      }
      const of = `${flips.toLocaleString('en')} of ${(file.length * 8).toLocaleString('en')} bits`;
      console.log(`tamper, bits: ${of} of a ${events}-event export changed one by one, ${unseen} unseen`);
      expect(unseen).toBe(0);
      expect(flips).toBeGreaterThan(file.length * 8 * share * 0.9);
    },
    soak ? soakTime_ms : 300_000,
  );
});

describe('T7: structure', () => {
  const lines = Buffer.from(file).toString('utf8').split('\n').slice(0, -1);
  const { publicKey } = log.key;
  const refused = async (changed: readonly string[]) =>
    (await verifyExport(utf8ToBytes(`${changed.join('\n')}\n`), { verify })).failure !== undefined;
  const verdictOf = (changed: readonly string[], checkpoints: readonly unknown[] = []) =>
    verifyLog({ lines: changed, publicKey, plant: plantId, checkpoints }, verify);

  it('[LOG-81] an export cut at any line, or at any byte of the last two, is refused', async () => {
    const { starts, before } = await readings();
    let [cuts, accepted] = [0, 0];
    for (let line = 1; line < starts.length; line++) {
      // What stands before the cut is known to be whole up to the line before it.
      const reading = before[line - 1];
      const part = file.subarray(starts[line - 1], starts[line]);
      const { failure } =
        line === 1 || reading === undefined
          ? await verifyExport(part, { verify })
          : await continueExport(reading, part, { verify });
      cuts += 1;
      if (failure === undefined) accepted += 1;
    }
    for (let end = starts.at(-2) ?? 0; end < file.length; end++) {
      const reading = before.at(-2);
      if (reading === undefined) throw new Error('no reading');
      const { failure } = await continueExport(reading, file.subarray(starts.at(-2), end), { verify });
      cuts += 1;
      if (failure === undefined) accepted += 1;
    }
    console.log(`tamper, cuts: ${cuts} cuts of a ${events}-event export, ${accepted} accepted`);
    expect(accepted).toBe(0);
  });

  it('[LOG-82] two lines swapped, one repeated, one dropped: an export of 24 events is refused each time', async () => {
    const small = await sampleLog(24);
    const given = Buffer.from(await exportOf([small]))
      .toString('utf8')
      .split('\n')
      .slice(0, -1);
    let [changes, accepted] = [0, 0];
    const count = async (changed: readonly string[]) => {
      changes += 1;
      if (!(await refused(changed))) accepted += 1;
    };
    for (let i = 0; i < given.length; i++) {
      const [before, line, after] = [given.slice(0, i), given[i] ?? '', given.slice(i + 1)];
      await count([...before, ...after]);
      for (let j = 0; j <= given.length; j++) await count([...given.slice(0, j), line, ...given.slice(j)]);
      for (let j = i + 1; j < given.length; j++)
        await count([...before, given[j] ?? '', ...given.slice(i + 1, j), line, ...given.slice(j + 1)]);
    }
    console.log(`tamper, lines: ${changes} swaps, repeats and drops, ${accepted} accepted`);
    expect(accepted).toBe(0);
  });

  it('[LOG-83] lines of another device, plant or branch grafted in are refused, wherever', async () => {
    const size = 40;
    const [small, branch] = [
      await sampleLog(size),
      await sampleLog(size, { change: (n) => happening(n, { by: 'x' }) }),
    ];
    const strangers = [
      branch,
      await sampleLog(size, { key: deviceKey('stranger') }),
      await sampleLog(size, { plant: 'elsewhere' }),
    ];
    const given = Buffer.from(await exportOf([small]))
      .toString('utf8')
      .split('\n')
      .slice(0, -1);
    let [grafts, accepted] = [0, 0];
    for (const stranger of strangers)
      for (let at = 0; at < size; at++)
        for (const changed of [
          given.with(at + 1, stranger.lines[at] ?? ''),
          given.toSpliced(at + 1, 0, stranger.lines[at] ?? ''),
          [...given.slice(0, at + 1), ...stranger.lines.slice(at), given.at(-1) ?? ''],
        ]) {
          grafts += 1;
          if (!(await refused(changed))) accepted += 1;
        }
    console.log(`tamper, grafts: ${grafts} grafts, ${accepted} accepted`);
    expect(accepted).toBe(0);
    expect(await refused(lines)).toBe(false);
  });

  it('[LOG-84] a bare log cut at its end is whole in itself; only a checkpoint shows the cut', async () => {
    const small = await sampleLog(40);
    const checkpoint = await checkpointAt(small, 40);
    let [seen, unseen] = [0, 0];
    for (let size = 0; size < 40; size++) {
      const cut = small.lines.slice(0, size);
      const alone = await verdictOf(cut);
      expect([alone.failure, alone.witnessed]).toEqual([undefined, 0]);
      unseen += 1;
      expect((await verdictOf(cut, [checkpoint])).failure?.verdict).toBe('truncated');
      seen += 1;
    }
    console.log(`tamper, cut bare logs: ${unseen} unseen without a checkpoint, ${seen} of ${unseen} seen with one`);
  });
});
