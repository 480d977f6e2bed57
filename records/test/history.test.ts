import { deflateSync } from 'node:zlib';
import { emptyPlant, type Plant } from '@loopwright/plant';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { adler32 } from '../src/adler32.ts';
import { correctionOf } from '../src/correction.ts';
import { type AnyEvent, removal } from '../src/event.ts';
import { fold } from '../src/fold.ts';
import { history, type LoggedEvent } from '../src/history.ts';
import { plantOfSnapshot, takeSnapshot } from '../src/snapshot.ts';

const runs = { seed: 42, numRuns: Number(process.env['LW_RUNS'] ?? 2000) };
const badge = (id: string, word: string) => ({ id, source: 'person', shape: 'star', word });
const defined = (id: string, word: string): AnyEvent => ({
  type: 'badge.defined',
  body: { schema: 1, thing: badge(id, word) },
});

/** Events as a log holds them: read back from their text. */
const logged = (events: readonly AnyEvent[]): LoggedEvent[] =>
  events.map((event, i) => ({
    ...(JSON.parse(JSON.stringify(event)) as AnyEvent),
    id: `e${i}`,
    at: `2026-11-25T02:00:0${i % 10}Z`,
    by: 'a3f1',
    device: 'd1',
  }));

const id = fc.constantFrom('a', 'b', 'constructor', '__proto__');
const anyEvent: fc.Arbitrary<AnyEvent> = fc.oneof(
  fc.tuple(id, fc.constantFrom('Otter', 'Heron')).map(([i, word]) => defined(i, word)),
  id.map((i) => removal('badges', i)),
  id.map((name) => ({ type: 'plant.defined', body: { schema: 1, thing: { id: 'p', name } } })),
  fc.constantFrom({ type: 'press.run', body: null }, { type: 'badge.defined', body: { schema: 2, thing: {} } }),
  id.map((i) => ({ type: 'badge.defined', body: { schema: 2, thing: badge(i, 'Newt') } })),
  id.map((i) => ({ type: 'badge.defined', body: { schema: 1, thing: { id: i } } })),
);
const textOf = (plant: Plant | undefined) => JSON.stringify(plant);

describe('history', () => {
  const events = logged([defined('a', 'Otter'), defined('b', 'Wren'), defined('a', 'Heron'), removal('badges', 'a')]);

  it('[REC-10] of a thing: who, when, from what to what; also when it is no longer there', () => {
    expect(fold(events).badges).toEqual({ b: badge('b', 'Wren') });
    const entries = history(events, 'badges', 'a');
    const changes = entries.map(({ id: event, before, after }) => [event, before, after]);
    const [otter, heron] = [badge('a', 'Otter'), badge('a', 'Heron')];
    expect(changes).toEqual([
      ['e0', undefined, otter],
      ['e2', otter, heron],
      ['e3', heron, undefined],
    ]);
    expect(entries[1]).toMatchObject({ at: '2026-11-25T02:00:02Z', by: 'a3f1', device: 'd1' });
    expect(history(events, 'badges', 'constructor')).toEqual([]);
    expect(history(events, 'rolls', 'a')).toEqual([]);
  });

  it('[REC-10] what the fold passes over has changed nothing', () => {
    const odd = [
      { type: 'badge.defined', body: { schema: 2, thing: badge('a', 'Newt') } },
      { type: 'badge.defined', body: { schema: 1, thing: { id: 'a' } } },
    ];
    expect(history([...events.slice(0, 1), ...logged(odd)], 'badges', 'a')).toHaveLength(1);
  });

  it('[REC-11] a correction names the event it takes back, and both stay in the history', () => {
    const correction = correctionOf(events, 'e3');
    expect(correction).toEqual({
      type: 'badge.defined',
      body: { schema: 1, thing: badge('a', 'Heron'), corrects: 'e3' },
    });
    const after = logged([...events, correction]);
    expect(fold(after).badges['a']).toEqual(badge('a', 'Heron'));
    expect(history(after, 'badges', 'a').map(({ id: event, corrects }) => [event, corrects])).toEqual([
      ['e0', undefined],
      ['e2', undefined],
      ['e3', undefined],
      ['e4', 'e3'],
    ]);
  });

  it('[REC-11] taking back a first definition takes the thing away; a correction can be taken back', () => {
    const first = logged([defined('a', 'Otter')]);
    const undone = [...first, ...logged([correctionOf(first, 'e0')]).map((event) => ({ ...event, id: 'e1' }))];
    expect(fold(undone).badges).toEqual({});
    const redone = correctionOf(undone, 'e1');
    expect(fold([...undone, redone]).badges).toEqual({ a: badge('a', 'Otter') });
  });

  it('[REC-12] what cannot be taken back is said', () => {
    const named = logged([
      { type: 'plant.defined', body: { schema: 1, thing: { id: 'p', name: 'Quillmoor' } } },
      { type: 'press.run', body: null },
      defined('a', 'Otter'),
      defined('a', 'Otter'),
    ]);
    const code = (event: string) => {
      try {
        return correctionOf(named, event);
      } catch (cause) {
        return (cause as { code?: unknown }).code;
      }
    };
    expect(['e9', 'e0', 'e1', 'e3'].map(code)).toEqual([
      'no-such-event',
      'nothing-to-undo',
      'nothing-to-undo',
      'nothing-to-undo',
    ]);
  });

  it('[REC-11] after any history, a correction makes the thing what it was before the event', () => {
    fc.assert(
      fc.property(fc.array(anyEvent, { minLength: 1, maxLength: 12 }), fc.nat(), (given, at) => {
        const all = logged(given);
        const place = at % all.length;
        const before = fold(all.slice(0, place));
        let correction: AnyEvent;
        try {
          correction = correctionOf(all, `e${place}`);
        } catch {
          return;
        }
        const after = fold([...all, correction]);
        const thing = (correction.body as { thing: { id: string } }).thing;
        if (correction.type === 'plant.defined') expect(after.name).toBe(before.name);
        else expect(after.badges[thing.id]).toEqual(before.badges[thing.id]);
      }),
      runs,
    );
  });
});

describe('snapshot', () => {
  it('[REC-13] from any snapshot on, the fold is the fold of everything', () => {
    fc.assert(
      fc.property(fc.array(anyEvent, { maxLength: 20 }), fc.array(fc.nat(), { maxLength: 4 }), (given, cuts) => {
        const events = logged(given);
        const ends = cuts.map((cut) => cut % (events.length + 1)).sort((a, b) => a - b);
        let [plant, from] = [emptyPlant('plant', ''), 0];
        for (const end of ends) {
          plant = fold(events.slice(from, end), plant);
          const place = { size: end, head: `e${end - 1}` };
          const kept = structuredClone(takeSnapshot(plant, place));
          plant = plantOfSnapshot(kept, place) ?? emptyPlant('lost', '');
          from = end;
        }
        const whole = fold(events);
        expect(textOf(fold(events.slice(from), plant))).toBe(textOf(whole));
        expect(fold(events.slice(from), plant)).toEqual(whole);
      }),
      runs,
    );
  });

  it('[REC-13] of another history, place, version or with a letter changed it is passed over', () => {
    const plant = fold([defined('a', 'Otter')]);
    const place = { size: 1, head: 'e0' };
    const snapshot = takeSnapshot(plant, place);
    expect(plantOfSnapshot(snapshot, place)).toEqual(plant);
    expect(plantOfSnapshot(snapshot, { size: 1, head: 'e9' })).toBeUndefined();
    expect(plantOfSnapshot(snapshot, { size: 2, head: 'e0' })).toBeUndefined();
    expect(plantOfSnapshot({ ...snapshot, form: 0 }, place)).toBeUndefined();
    const text = new TextDecoder().decode(snapshot.bytes).replace('Otter', 'Ottar');
    expect(plantOfSnapshot({ ...snapshot, bytes: new TextEncoder().encode(text) }, place)).toBeUndefined();
  });

  it('[REC-13] its checksum is the Adler-32 that zlib writes, and sees every single bit', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 9000, size: 'max' }), (bytes) => {
        expect(adler32(bytes)).toBe(deflateSync(bytes).readUInt32BE(deflateSync(bytes).length - 4));
      }),
      { seed: 42, numRuns: 200 },
    );
    const { bytes, checksum } = takeSnapshot(fold([defined('a', 'Otter')]), { size: 1, head: 'e0' });
    for (let bit = 0; bit < bytes.length * 8; bit += 1) {
      const damaged = bytes.map((byte, i) => (i === bit >> 3 ? byte ^ (1 << (bit & 7)) : byte));
      expect(adler32(damaged)).not.toBe(checksum);
    }
  });

  it('[REC-07] no id of a snapshot reaches what all objects share', () => {
    const place = { size: 1, head: 'e0' };
    const read = plantOfSnapshot(takeSnapshot(fold([defined('__proto__', 'Otter')]), place), place);
    expect(Object.keys(read?.badges ?? {})).toEqual([]);
    expect(read?.badges['constructor']).toBeUndefined();
  });
});
