import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { kinds } from '@loopwright/plant';
import { describe, expect, it } from 'vitest';
import { thingNames } from '../src/event.ts';
import { foldAndReport } from '../src/fold.ts';
import { history, type LoggedEvent } from '../src/history.ts';
import { verifyExport } from '../src/log/index.ts';
import { verify } from './log/sample-log.ts';

const folder = join(import.meta.dirname, 'fixtures/schema-1');
const bytes = readFileSync(join(folder, 'quillmoor.jsonl'));
const events: LoggedEvent[] = [];
const verdict = await verifyExport(bytes, { verify, onEvent: (event, id) => events.push({ ...event, id }) });

describe('log of schema 1', () => {
  it('[REC-14] is the file that was committed', () => {
    expect(createHash('sha256').update(bytes).digest('hex')).toBe(
      '7abfa00a42cdef4b1e30a2d3016a77c85f0dfd9af9fffa319162a57f09b0fd4e',
    );
  });

  it('[REC-14] is whole', () => {
    expect(verdict.failure).toBeUndefined();
    expect(verdict.logs.map(({ state, witnessed }) => [state.size, witnessed])).toEqual([
      [150, 150],
      [37, 37],
    ]);
    expect(verdict.warnings).toEqual([]);
  });

  it('[REC-14] has every kind of event', () => {
    const types = new Set(events.map(({ type }) => type));
    for (const kind of kinds)
      for (const effect of ['defined', 'removed']) expect(types).toContain(`${thingNames[kind]}.${effect}`);
  });

  it('[REC-14] makes the plant that another program made of it', () => {
    const { plant, unknownTypes, refused } = foldAndReport(events);
    expect(plant).toEqual(JSON.parse(readFileSync(join(folder, 'quillmoor.plant.json'), 'utf8')));
    expect(refused).toEqual([]);
    expect([...unknownTypes]).toEqual([
      ['device.met', 1],
      ['press.run', 1],
      ['belt.defined/2', 1],
    ]);
  });

  it('[REC-14] [REC-11] its correction stands beside what it corrects', () => {
    const corrections = events.filter(({ body }) => typeof (body as { corrects?: unknown }).corrects === 'string');
    expect(corrections).toHaveLength(2);
    for (const { id, body } of corrections) {
      const { thing, corrects } = body as { thing: { id: string }; corrects: string };
      const kind = kinds.find((each) => history(events, each, thing.id).some((entry) => entry.id === id));
      const entries = kind === undefined ? [] : history(events, kind, thing.id);
      const at = entries.findIndex((entry) => entry.id === corrects);
      expect(entries[at + 1]).toMatchObject({ id, corrects, after: entries[at]?.before });
    }
  });
});
