import { thingSchemas } from '@loopwright/plant';
import { fold } from '@loopwright/records';
import { largestEvent_bytes } from '@loopwright/records/log';
import { readRunEvent, runChange } from '@loopwright/records/run';
import { describe, expect, it } from 'vitest';
import { checkAgainst } from '../../../tools/validation/check.ts';
import { pressCycleReport } from '../../src/press-cycle/press-cycle-report.ts';
import { afterRun, foldRun, predictRun, runFacts, runRecord, whyNotNow } from '../../src/press-run/index.ts';
import { spliceCard } from '../../src/splice-card/splice-card.ts';
import { Device, plant, World } from './run-world.ts';

const run = 'RUN00001';

function until(step: string, world = new World()): World {
  while (world.view().current?.step !== step) if (!world.goOn()) throw new Error(`never came to ${step}`);
  return world;
}

function finished(world = new World()): World {
  while (!world.state.end) if (!world.goOn()) throw new Error('no way on');
  return world;
}

describe('readings', () => {
  const reading = (mark: 'heating' | 'hold' | 'cooling', top_degC: number, bottom_degC = top_degC) =>
    runChange('run.display-read', { run, mark, top_degC, bottom_degC });
  const hints = (mark: 'heating' | 'hold' | 'cooling', top: number, bottom?: number) =>
    whyNotNow(until('open').state, reading(mark, top, bottom), 'b1').map(
      ({ code, data }) => `${code} ${data?.['hint']}`,
    );

  it('[RUN-25] a reading that cannot be is refused with what can: 300 degC, 5 degC in the hold, a display in degF', () => {
    expect(hints('heating', 300)).toEqual(['reading-impossible fahrenheit', 'reading-impossible fahrenheit']);
    expect(hints('heating', 480)).toEqual(['reading-impossible hot', 'reading-impossible hot']);
    expect(hints('hold', 5)).toEqual(['reading-impossible cold', 'reading-impossible cold']);
    expect(hints('hold', 356)).toEqual(['reading-impossible fahrenheit', 'reading-impossible fahrenheit']);
    expect(hints('hold', 181, 12)).toEqual(['reading-impossible cold']);
    expect(hints('hold', 181, 186)).toEqual([]);
    expect(hints('heating', Number.NaN)).toEqual(['reading-impossible cold', 'reading-impossible cold']);
  });

  it('[RUN-25] what cannot be in the log changes nothing, and without heat there is nothing to read', () => {
    const world = until('open');
    world.append(reading('heating', 299));
    expect(world.state.readings).toEqual([]);
    expect(whyNotNow(until('match').state, reading('heating', 60), 'b1')[0]?.code).toBe('not-heating');
  });

  it('[RUN-25] steppers start where the card expects it, and what is read stands at once', () => {
    const world = until('cut');
    const { main } = world.view();
    expect(main?.measures).toMatchObject([{ measure: 'square-length', start: 64.352, step: 0.001 }]);
    world.append(runChange('run.measured', { run, measure: 'square-length', value: 64.36 }));
    expect(world.state.measures).toMatchObject([{ measure: 'square-length', value: 64.36 }]);
    expect(world.state.deviations).toMatchObject([{ code: 'measure-off', data: { measure: 'square-length' } }]);
    expect(whyNotNow(world.state, runChange('run.measured', { run, measure: 'bow', value: 3 }), 'b1')[0]?.code).toBe(
      'reading-impossible',
    );
  });

  it('[RUN-25] both displays are asked around what is predicted', () => {
    const world = until('open');
    world.device.pass(240);
    const { reading: asked, curve } = world.view();
    expect(asked?.mark).toBe('heating');
    expect(asked?.top_degC).toBe(Math.round(curve?.expectedTop_degC ?? 0));
    expect(asked?.top_degC).toBeGreaterThan(80);
  });
});

describe('start', () => {
  it('[RUN-26] the first events hold things, numbers, formulas and inputs, in far less than an event may weigh', () => {
    const { events } = new World();
    const [started, predicted] = events;
    expect(new TextEncoder().encode(JSON.stringify(started)).length).toBeLessThan(largestEvent_bytes / 4);
    expect(new TextEncoder().encode(JSON.stringify(predicted)).length).toBeLessThan(largestEvent_bytes / 4);
    if (started?.type !== 'run.started') throw new Error('not started');
    const tipToTip = started.body.thing.numbers.find(({ name }) => name === 'tip-to-tip');
    expect(tipToTip).toMatchObject({ source: 'computed', formula: 'strip-tip-to-tip' });
    expect(tipToTip?.inputs).toBeDefined();
    expect(tipToTip?.value).toBeCloseTo(64.302, 3);
  });

  it('[RUN-26] a position about which little is known starts all the same', () => {
    const bare = { ...plant, dies: {}, templates: {}, presses: {}, recipes: {}, rolls: {}, pulleys: {} };
    const card = spliceCard(bare, 'QM-04-3', { now: '2026-11-25T02:10:00.000Z', people: 1 });
    const world = finished(new World(new Device('phone'), card, 'RUN00002'));
    expect(world.state.started.missing).toContain('recipe');
    expect(world.state.end?.how).toBe('finished');
  });

  it('[RUN-26] what somebody says of today gives another prediction, until the heat is on', () => {
    const world = until('match');
    const options = { now: '2026-11-25T02:40:00Z', press: 'P1', today: { volts_V: 207 } };
    const { cycle } = pressCycleReport(plant, 'QM-04-3', options);
    if (cycle === undefined) throw new Error('no cycle');
    const before = world.state.predicted?.cycle;
    world.append(predictRun(run, cycle));
    const after = world.state.predicted?.cycle;
    if (before?.status !== 'ok' || after?.status !== 'ok') throw new Error('no cycle');
    expect(after.ready_s.value).toBeGreaterThan(before.ready_s.value + 60);
    expect(whyNotNow(until('open').state, predictRun(run, cycle), 'b1')[0]?.code).toBe('too-late');
  });
});

describe('record', () => {
  it('[RUN-27] the record holds who, where, what, when, predicted and read, and names every event', () => {
    const world = until('final-tension');
    const { main } = world.view();
    if (!main) throw new Error('no action');
    world.device.by = 'b2';
    world.append(runChange('run.measured', { run, measure: 'marks-after', value: 2.018 }));
    world.tap(main.changes ?? []);
    world.append(runChange('run.noted', { run, note: 'snub roller changed', step: 'cause' }));
    const record = runRecord(finished(world).state);
    expect(record.who.map(({ badge }) => badge)).toEqual(['b1', 'b2']);
    expect(record).toMatchObject({
      position: { id: 'QM-04-3' },
      line: 'QM-04',
      belt: { id: 'Flint-30', roll: 'roll-F30-1', lot: 'F30-2610' },
      die: 'die-10x80',
      press: { id: 'P1', checkedOn: '2026-11-13' },
      verdict: 'run',
      notes: [{ note: 'snub roller changed', step: 'cause', by: 'b2' }],
    });
    expect(record.cycles).toHaveLength(1);
    expect(record.cycles[0]?.times.opened?.sure).toBe('steady');
    expect(record.events).toEqual(world.events.map(({ id }) => id));
    expect(record.steps.every(({ how }) => how === 'done')).toBe(true);
    // 2000 mm apart slack, 2018 mm tight: 0.9 %, the set elongation of the line. Derived: (2018 - 2000) / 2000.
    checkAgainst({
      id: 'VAL-RUN-TENSION',
      topic: 'loop',
      inputs: 'marks 2000 mm apart slack, 2018 mm tight',
      published: 0.009,
      ours: record.tension?.elongation.value ?? 0,
      tolerance: 1e-12,
      unit: '1',
      evidence: 'derived',
      source: '(2018 - 2000) / 2000',
      why: 'rounding of doubles',
    });
    expect(JSON.parse(JSON.stringify(record))).toEqual(record);
  });

  it('[RUN-28] after the run the position runs with a new belt of known length, and the roll is shorter', () => {
    const { state } = finished();
    const after = fold(afterRun(state, plant), plant);
    const position = after.positions['QM-04-3'];
    expect(position).toMatchObject({ status: 'running', fittedOn: '2026-11-25', lot: 'F30-2610' });
    expect(position?.recordedLength_m).toBeCloseTo(64.222, 3);
    expect(position && thingSchemas.positions.safeParse(position).success).toBe(true);
    expect(after.rolls['roll-F30-1']).toMatchObject({ sealed: false });
    expect(after.rolls['roll-F30-1']?.left_m).toBeCloseTo(118 - 64.352, 3);
    expect(afterRun(until('open').state, plant)).toEqual([]);
  });

  it('[RUN-28] the date of the next visit counts from the final tension', () => {
    const world = finished();
    const days = world.state.started.numbers.find(({ name }) => name === 'retension-after')?.value ?? 0;
    const tensioned = Date.parse(world.state.settled['final-tension']?.at ?? '');
    expect(world.view().retensionOn).toBe(new Date(tensioned + days * 86_400_000).toISOString().slice(0, 10));
    expect(runFacts(world.state).retensionOn).toBe(world.view().retensionOn);
  });

  it('[RUN-29] events of another run, of no run, of a newer form and of a broken one change nothing; of this run they are named', () => {
    const world = until('cut');
    const envelope = { ...world.device.now(), id: 'e'.repeat(64) };
    const others = [
      { ...envelope, type: 'belt.removed', body: { schema: 1, thing: { id: 'Flint-30' } } },
      { ...envelope, ...runChange('run.steps-done', { run: 'OTHER001', steps: ['cut'] }) },
    ];
    expect(foldRun(others, world.state)).toBe(world.state);
    const newer = { ...envelope, type: 'run.steps-done', body: { schema: 2, thing: { run, steps: ['cut'] } } };
    const broken = { ...envelope, type: 'run.steps-done', body: { schema: 1, thing: { run, steps: ['fly'] } } };
    for (const event of [newer, broken]) {
      expect(readRunEvent(event)).toBeUndefined();
      const after = foldRun([event], world.state);
      expect(after?.settled).toBe(world.state.settled);
      expect(after?.passedOver).toMatchObject([{ event: envelope.id, why: { code: 'not-readable' } }]);
    }
  });
});
