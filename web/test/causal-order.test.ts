import { causalOrder } from '@loopwright/records/log';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { met } from '../src/store/device-events.ts';

interface Written {
  readonly type: string;
  readonly body: unknown;
  readonly device: string;
  readonly seq: number;
}

const names = ['c', 'a', 'b'];

/** Devices that write, and now and then look at another's log, in the order in which it really happened. */
const happenings = fc.array(
  fc.record({ device: fc.nat({ max: names.length - 1 }), looksAt: fc.option(fc.nat({ max: names.length - 1 })) }),
  { maxLength: 60 },
);

function happened(steps: readonly { device: number; looksAt: number | null }[]): readonly Written[] {
  const sizes = new Map(names.map((name) => [name, 0]));
  return steps.map(({ device, looksAt }) => {
    const name = names[device] ?? '';
    const seq = sizes.get(name) ?? 0;
    sizes.set(name, seq + 1);
    const seen = looksAt === null ? undefined : names[looksAt];
    const change =
      seen === undefined || seen === name
        ? { type: 'roll.defined', body: {} }
        : met([{ device: seen, size: sizes.get(seen) ?? 0, head: '' }]);
    return { ...change, device: name, seq };
  });
}

function logsOf(events: readonly Written[], order: readonly string[]): ReadonlyMap<string, readonly Written[]> {
  return new Map(order.map((name) => [name, events.filter((event) => event.device === name)]));
}

test('[STORE-16] every log keeps its order, and nothing comes before what its device had seen', () => {
  fc.assert(
    fc.property(happenings, (steps) => {
      const events = happened(steps);
      const ordered = causalOrder(logsOf(events, names));
      expect(ordered).toHaveLength(events.length);
      const done = new Map(names.map((name) => [name, 0]));
      for (const event of ordered) {
        expect(event.seq).toBe(done.get(event.device));
        done.set(event.device, event.seq + 1);
        const logs = (event.body as { thing?: { logs: { device: string; size: number }[] } }).thing?.logs ?? [];
        for (const { device, size } of logs) expect(done.get(device)).toBeGreaterThanOrEqual(size);
      }
    }),
    { seed: 42, numRuns: Number(process.env['LW_RUNS'] ?? 2000) },
  );
});

test('[STORE-16] the order is the same in whatever order the logs come', () => {
  fc.assert(
    fc.property(happenings, fc.shuffledSubarray(names, { minLength: 3 }), (steps, shuffled) => {
      const events = happened(steps);
      expect(causalOrder(logsOf(events, shuffled))).toEqual(causalOrder(logsOf(events, names)));
    }),
    { seed: 42, numRuns: Number(process.env['LW_RUNS'] ?? 2000) },
  );
});

test('[STORE-16] logs that claim to have met in a circle come to an end, each event once', () => {
  const circle = (device: string, other: string): Written => ({
    ...met([{ device: other, size: 9, head: '' }]),
    device,
    seq: 0,
  });
  const ordered = causalOrder(
    new Map([
      ['a', [circle('a', 'b')]],
      ['b', [circle('b', 'a')]],
    ]),
  );
  expect(ordered.map((event) => event.device).toSorted()).toEqual(['a', 'b']);
});
