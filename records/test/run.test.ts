import { describe, expect, it } from 'vitest';
import { emptyPlant, fold, foldAndReport } from '../src/index.ts';
import { isRunType, readRunEvent, runChange, runOf, runSchemas, runSigns, runTypes } from '../src/run/index.ts';

const envelope = {
  id: 'a'.repeat(64),
  device: 'd',
  by: 'b1',
  at: '2026-11-25T02:10:00.000Z',
  boot: 'b',
  up_ms: 1,
};
const done = runChange('run.steps-done', { run: 'RUN00001', steps: ['cut', 'punch'] });

describe('events of a run', () => {
  it('[REC-15] every kind has a form, and says which run it is about', () => {
    expect(Object.keys(runSchemas).sort()).toEqual([...runTypes].sort());
    expect(runTypes.every(isRunType)).toBe(true);
    expect(runOf(done)).toBe('RUN00001');
    expect(runOf({ type: 'belt.defined', body: done.body })).toBeUndefined();
    expect(runOf({ type: 'run.noted', body: { schema: 1 } })).toBeUndefined();
    expect(isRunType('toString')).toBe(false);
  });

  it('[REC-15] what reads back is what was said; another form, another field, another range is none', () => {
    expect(readRunEvent({ ...envelope, ...done })?.body).toEqual(done.body);
    const thing = { run: 'RUN00001', mark: 'hold', top_degC: 180, bottom_degC: 181 };
    const read = (body: unknown) => readRunEvent({ ...envelope, type: 'run.display-read', body });
    expect(read({ schema: 1, thing })?.body.thing).toEqual(thing);
    expect(read({ schema: 2, thing })).toBeUndefined();
    expect(read({ schema: 1, thing: { ...thing, top_degC: 301 } })).toBeUndefined();
    expect(read({ schema: 1, thing: { ...thing, top_degC: '180' } })).toBeUndefined();
    expect(read({ schema: 1, thing: { ...thing, more: 1 } })).toBeUndefined();
    expect(read(null)).toBeUndefined();
  });

  it('[REC-16] they change nothing that exists; a newer form is counted, none at all is refused', () => {
    const plant = fold([], emptyPlant('quillmoor', 'Quillmoor Crate Works'));
    const { plant: after, refused, unknownTypes } = foldAndReport([done], plant);
    expect(after).toEqual(plant);
    expect([refused.length, unknownTypes.size]).toEqual([0, 0]);
    expect(foldAndReport([{ type: done.type, body: 7 }], plant).refused).toHaveLength(1);
    const newer = { type: done.type, body: { ...done.body, schema: 2 } };
    expect([...foldAndReport([newer], plant).unknownTypes]).toEqual([['run.steps-done/2', 1]]);
  });

  it('[REC-17] signs differ in shape and word', () => {
    expect(new Set(runSigns.map(({ shape }) => shape)).size).toBe(runSigns.length);
    expect(new Set(runSigns.map(({ word }) => word)).size).toBe(runSigns.length);
  });
});
