import { byId, definitionsOf, emptyPlant, kinds, type Plant, readPlantFolder } from '@loopwright/plant';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type AnyEvent, definitions, removal, thingNames } from '../src/event.ts';
import { fold, foldAndReport } from '../src/fold.ts';

const runs = { seed: 42, numRuns: Number(process.env['LW_RUNS'] ?? 2000) };

const badge = (id: string, word: string) => ({ id, source: 'person', shape: 'star', word });
const defined = (type: string, thing: unknown, schema = 1): AnyEvent => ({ type, body: { schema, thing } });

const id = fc.constantFrom('a', 'b', '7', 'constructor', '__proto__', 'no id!');
const anyEvent: fc.Arbitrary<AnyEvent> = fc.oneof(
  fc.tuple(id, fc.constantFrom('Otter', 'Heron')).map(([i, word]) => defined('badge.defined', badge(i, word))),
  id.map((i) => defined('badge.removed', { id: i })),
  id.map((i) =>
    defined('template.defined', {
      id: i,
      source: 'person',
      die: 'd',
      pocketWidth_m: 0.03,
      pocketDepth_m: 0.002,
      mat_m: 0,
    }),
  ),
  id.map((name) => defined('plant.defined', { id: 'p', name })),
  fc.constantFrom('press.run', 'constructor', '', 'badge.defined').map((type) => ({ type, body: null })),
  id.map((i) => defined('badge.defined', badge(i, 'x'), 2)),
  fc.jsonValue().map((thing) => defined('line.defined', thing)),
);

const sum = (maps: readonly ReadonlyMap<string, number>[]) => {
  const total: Record<string, number> = {};
  for (const [type, count] of maps.flatMap((map) => [...map])) total[`=${type}`] = (total[`=${type}`] ?? 0) + count;
  return total;
};

describe('the fold over plant events', () => {
  it('[REC-01] in how many batches events come makes no difference', () => {
    fc.assert(
      fc.property(fc.array(anyEvent, { maxLength: 30 }), fc.array(fc.nat(30), { maxLength: 4 }), (events, cuts) => {
        const whole = foldAndReport(events);
        const ends = [0, ...cuts.map((cut) => Math.min(cut, events.length)).sort((a, b) => a - b), events.length];
        const parts = ends.slice(1).map((end, i) => events.slice(ends[i], end));
        let plant: Plant | undefined;
        const reports = parts.map((part) => {
          const report = foldAndReport(part, plant);
          plant = report.plant;
          return report;
        });
        expect(JSON.stringify(plant)).toBe(JSON.stringify(whole.plant));
        expect(sum(reports.map(({ unknownTypes }) => unknownTypes))).toEqual(sum([whole.unknownTypes]));
        expect(reports.flatMap(({ refused }) => refused)).toHaveLength(whole.refused.length);
        expect(reports.at(-1)?.dangling).toEqual(whole.dangling);
      }),
      runs,
    );
  });

  it('[REC-02] what is folded into is not changed, and neither are the events', () => {
    const before = fold([defined('badge.defined', badge('a', 'Otter'))]);
    const event = Object.freeze(defined('badge.defined', Object.freeze(badge('a', 'Heron'))));
    const copy = structuredClone(before);
    const after = fold([event, removal('badges', 'b')], before);
    expect(JSON.stringify(before)).toBe(JSON.stringify(copy));
    expect(after.badges['a']?.word).toBe('Heron');
  });

  it('[REC-03] a later definition of an id replaces the earlier one whole', () => {
    const plant = fold([
      defined('badge.defined', { ...badge('a', 'Otter'), note: 'left hand' }),
      defined('badge.defined', badge('a', 'Heron')),
      defined('plant.defined', { id: 'p', name: 'Old', note: 'x' }),
      defined('plant.defined', { id: 'p', name: 'New' }),
    ]);
    expect({ ...plant.badges }).toEqual({ a: badge('a', 'Heron') });
    expect(plant.name).toBe('New');
    expect('note' in plant).toBe(false);
  });

  it('[REC-04] types and forms of later versions are passed over and counted', () => {
    const { plant, unknownTypes, refused } = foldAndReport([
      defined('press.run', {}),
      defined('press.run', {}),
      defined('badge.defined', badge('a', 'Otter'), 2),
      defined('toString', {}),
    ]);
    expect(unknownTypes).toEqual(
      new Map([
        ['press.run', 2],
        ['badge.defined/2', 1],
        ['toString', 1],
      ]),
    );
    expect(refused).toEqual([]);
    expect(plant).toEqual(emptyPlant('plant', ''));
  });

  it('[REC-05] a known event whose thing does not meet its schema changes nothing and is named', () => {
    const good = defined('badge.defined', badge('a', 'Otter'));
    const bad: AnyEvent[] = [
      defined('badge.defined', { ...badge('a', 'x'), shape: 'blob' }),
      defined('badge.defined', { ...badge('a', 'x'), extra: 1 }),
      defined('die.defined', {
        id: 'd',
        source: 'person',
        pitch_m: Number.NaN,
        fingerLength_m: 0.08,
        maxWidth_m: 0.06,
      }),
      defined('die.defined', { id: 'd', source: 'person', pitch_m: '0.01', fingerLength_m: 0.08, maxWidth_m: 0.06 }),
      defined('badge.removed', 'a'),
      { type: 'badge.defined', body: undefined },
      { type: 'plant.defined', body: { schema: 1, thing: { id: '', name: 7 } } },
    ];
    const { plant, refused } = foldAndReport([good, ...bad]);
    expect(plant).toEqual(fold([good]));
    expect(refused.map(({ at }) => at)).toEqual(bad.map((_, i) => i + 1));
  });

  it('[REC-06] what refers to a removed thing stays and is told', () => {
    const events = [
      defined('die.defined', { id: 'd', source: 'person', pitch_m: 0.01, fingerLength_m: 0.08, maxWidth_m: 0.06 }),
      defined('template.defined', {
        id: 't',
        source: 'person',
        die: 'd',
        pocketWidth_m: 0.03,
        pocketDepth_m: 0.002,
        mat_m: 0,
      }),
    ];
    expect(foldAndReport(events).dangling).toEqual([]);
    const { plant, dangling } = foldAndReport([...events, removal('dies', 'd')]);
    expect(dangling).toEqual([{ kind: 'templates', field: 'die', to: 'dies', id: 't', missing: 'd' }]);
    expect(Object.keys(plant.templates)).toEqual(['t']);
    expect(foldAndReport([removal('dies', 'd')], plant).dangling).toEqual(dangling);
  });

  it('[REC-07] no id and no field name reaches what all objects share', () => {
    const hostile = JSON.parse(
      '[{"type":"badge.defined","body":{"schema":1,"thing":{"id":"__proto__","source":"person","shape":"star","word":"x"}}},' +
        '{"type":"badge.removed","body":{"schema":1,"thing":{"id":"__proto__"}}},' +
        '{"type":"badge.defined","body":{"schema":1,"thing":{"__proto__":{"polluted":1},"id":"a","source":"person","shape":"star","word":"x"}}},' +
        '{"type":"badge.defined","body":{"schema":1,"thing":{"id":"b","source":"person","sources":{"__proto__":"measured","word":"measured"},"shape":"star","word":"x"}}},' +
        '{"type":"__proto__","body":{"schema":1,"thing":{"id":"a"}}}]',
    ) as AnyEvent[];
    const { plant } = foldAndReport(hostile);
    expect(Reflect.get({}, 'polluted')).toBeUndefined();
    expect(Object.keys(Object.prototype)).toEqual([]);
    expect(Object.keys(plant.badges)).not.toContain('__proto__');
    for (const thing of Object.values(plant.badges)) expect(Object.getPrototypeOf(thing)).toBe(Object.prototype);
    const { badges } = fold([defined('badge.defined', badge('constructor', 'Otter'))]);
    expect(badges['constructor']?.word).toBe('Otter');
    expect(badges['toString']).toBeUndefined();
  });

  it('[REC-08] the definitions of a folder fold to the plant the folder says, by way of JSON too', () => {
    const encode = (text: string) => new TextEncoder().encode(text);
    const { plant, definitions: found } = readPlantFolder(
      new Map([
        ['plant.csv', encode('id,name\np,Plant')],
        ['dies.csv', encode('id,source,pitch_mm,fingerLength_mm,maxWidth_mm,source:pitch\nd,person,10,80,60,measured')],
        ['badges.csv', encode('id,source,shape,word\nb1,person,circle,Otter')],
      ]),
    );
    const events = definitions(found);
    expect(events.map(({ type }) => type)).toEqual(['plant.defined', 'die.defined', 'badge.defined']);
    expect(fold(events)).toEqual(plant);
    expect(fold(JSON.parse(JSON.stringify(events)))).toEqual(plant);
  });

  it('[REC-08] a plant is the fold of its own definitions', () => {
    fc.assert(
      fc.property(fc.array(anyEvent, { maxLength: 30 }), (events) => {
        const plant = fold(events);
        if (plant.name === '') return;
        expect(fold(definitions(definitionsOf(plant)))).toEqual(plant);
      }),
      runs,
    );
  });

  it('[REC-09] every kind of thing has a name of its own in events, and a removal', () => {
    expect(Object.keys(thingNames).sort()).toEqual([...kinds].sort());
    expect(new Set(Object.values(thingNames)).size).toBe(kinds.length);
    for (const kind of kinds) {
      const full = { ...emptyPlant('p', 'P'), [kind]: byId([{ id: 'x' }]) } as Plant;
      const { plant, refused, unknownTypes } = foldAndReport([removal(kind, 'x')], full);
      expect([Object.keys(plant[kind]), refused, unknownTypes.size]).toEqual([[], [], 0]);
    }
  });
});
