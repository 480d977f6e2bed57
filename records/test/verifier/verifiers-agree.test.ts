import { describe, expect, it } from 'vitest';
import { archiveEntries } from '../../src/archive/archive-entries.ts';
import { type ArchiveVerdict, readArchive } from '../../src/archive/index.ts';
import { alone, ours, type Said } from './both-verifiers.ts';
import { fileOf, packed, record, whole } from './sample-record.ts';
import { seeded } from './seeded.ts';
import { tamperings } from './tampering.ts';

const soak = process.env['LW_SOAK'] === '1';
const cases = soak ? Number(process.env['LW_RUNS'] ?? 200_000) : 2000;
const time_ms = soak ? 12 * 3_600_000 : 300_000;

/**
 * Whether a record says nothing but what the devices wrote. The events of another device that no checkpoint covers yet
 * may be missing at their end: that is said as a warning, and cannot be seen.
 */
function isHonest({ logs, warnings }: Said): boolean {
  const [ofPhone, ofIdle, ofTablet] = logs as readonly { readonly size: number; readonly head: string }[];
  const { size = 0, head } = ofTablet ?? {};
  const isTold = size === 4 || JSON.stringify(warnings).includes('not-witnessed');
  return ofPhone?.size === 9 && ofIdle?.size === 0 && size >= 4 && head === record.ids[2]?.[size - 1] && isTold;
}

describe('two verifiers', () => {
  it('[LOG-99] a whole record is whole to both, with the same logs and warnings', async () => {
    for (const file of [fileOf(whole.lines), packed(whole), packed(whole, 0)]) {
      const said = await ours(file);
      expect(said.verdict).toBe('ok');
      expect(await alone(file)).toEqual(said);
    }
    const { logs, warnings } = await alone(packed(whole));
    expect(logs).toMatchObject([
      { size: 9, witnessed: 9, seenBy: 3, seenTo: 9 },
      { size: 0, witnessed: 0, seenBy: 0, seenTo: 0 },
      { size: 6, witnessed: 4, seenBy: 1, seenTo: 4 },
    ]);
    expect(warnings).toEqual([
      { code: 'not-witnessed', at: 14 },
      { code: 'witness-elsewhere', at: 4 },
    ]);
  });

  it(
    '[LOG-99] a tampered record has the same verdict and place from both, whatever was done to it',
    async () => {
      const verdicts = new Map<string, number>();
      const unseen: string[] = [];
      for (let n = 0; n < cases; n++) {
        const tampering = tamperings[n % tamperings.length];
        if (tampering === undefined) throw new Error('no tampering');
        const file = await tampering.change(seeded(20261125 + n));
        const said = await ours(file);
        expect(await alone(file), `${tampering.name}, case ${n}`).toEqual(said);
        verdicts.set(said.verdict, (verdicts.get(said.verdict) ?? 0) + 1);
        if (tampering.seen && said.verdict === 'ok' && !isHonest(said)) unseen.push(`${tampering.name}, case ${n}`);
      }
      const counts = [...verdicts].toSorted(([a], [b]) => (a < b ? -1 : 1)).map(([name, count]) => `${name} ${count}`);
      console.log(`verifiers: ${cases} tampered records, the same verdict and place each time (${counts.join(', ')})`);
      expect(unseen).toEqual([]);
      // Every verdict that an exported file can have came up; nothing was compared that never happens.
      const possible: readonly (NonNullable<ArchiveVerdict['failure']>['verdict'] | 'ok' | 'refused')[] = [
        ...(['not-canonical', 'bad-envelope', 'wrong-plant', 'wrong-device', 'bad-signature', 'sequence-gap'] as const),
        ...([
          'broken-link',
          'bad-checkpoint',
          'truncated',
          'history-rewritten',
          'blob-changed',
          'bad-witness',
        ] as const),
        ...(['ok', 'refused'] as const),
      ];
      expect([...verdicts.keys()].toSorted()).toEqual(possible.toSorted());
    },
    time_ms,
  );

  it('[LOG-99] a packing damaged in any bit of its end has the same verdict from both', async () => {
    const file = packed(whole);
    const verdicts = new Set<string>();
    for (const { start, packed_bytes } of archiveEntries(file))
      for (let back = 1; back <= 6; back++)
        for (let bit = 0; bit < 8; bit++) {
          const damaged = Uint8Array.from(file);
          const at = start + packed_bytes - back;
          damaged[at] = (damaged[at] ?? 0) ^ (1 << bit);
          const said = await ours(damaged);
          verdicts.add(said.verdict);
          expect(await alone(damaged), `byte ${at}, bit ${bit}`).toEqual(said);
        }
    // Behind the last byte of the content there is room for damage that changes nothing, and before it none.
    expect([...verdicts].toSorted()).toEqual(['ok', 'refused']);
  });

  it('[LOG-99] what is no archive is refused by both', async () => {
    for (const file of [new Uint8Array(), Uint8Array.of(1, 2, 3), new Uint8Array(100), Buffer.from('PK\u0005\u0006')])
      expect((await alone(file)).place).toEqual((await ours(file)).place);
    expect(() => readArchive(new Uint8Array())).toThrow();
  });
});
