import { cardCode, seenOf } from '@loopwright/records/log';
import { runChange } from '@loopwright/records/run';
import { describe, expect, it } from 'vitest';
import { checkAgainst } from '../../../tools/validation/check.ts';
import { type AuditOptions, auditReport, type LogOfRun } from '../../src/audit-report/index.ts';
import { foldRun } from '../../src/press-run/index.ts';
import { spliceCard } from '../../src/splice-card/splice-card.ts';
import { Device, plant, World } from '../press-run/run-world.ts';
import { signedRun } from '../press-run/signed-run.ts';
import { goTo, wholeRun } from '../press-run/whole-run.ts';

const options = (logs: readonly LogOfRun[]): AuditOptions => ({
  plant: { id: 'quillmoor', name: 'Quillmoor Crate Works' },
  logs,
  checked: true,
  now: '2026-11-25T07:00:00.000Z',
  engine: '0.1.0',
});
const whole = await signedRun(wholeRun().events, { seenTo: 20 });
const report = auditReport(whole.state, options([whole.log]));

describe('report of a run', () => {
  it('[AUDIT-01] it gathers who, where, what, deviations with who accepted them, what is open, handed over and taken back', () => {
    const { record, handOvers, openPoints } = report;
    expect(record).toMatchObject({
      position: { id: 'QM-04-3' },
      line: 'QM-04',
      belt: { lot: 'F30-2610' },
      verdict: 'run',
    });
    expect(handOvers.map(({ by, to }) => [by, to])).toEqual([['b1', 'b2']]);
    expect(openPoints).toMatchObject([{ step: 'gather', how: 'passed', reason: 'none-here' }]);
    expect(record.deviations.map(({ code, accepted }) => [code, accepted?.by])).toEqual([
      ['step-passed', 'b2'],
      ['measure-off', undefined],
    ]);
    expect(record.takenBack).toMatchObject([{ type: 'run.steps-done' }]);
    expect(record.passedOver).toMatchObject([{ why: { code: 'needs-steps' } }]);
    expect(record.photos.map(({ face }) => face)).toEqual(['roller', 'pulley']);
  });

  it('[AUDIT-02] each moment stands beside its computed range, each reading beside the curve at its time', () => {
    const [cycle] = report.cycles;
    expect(report.cycles).toHaveLength(1);
    expect(cycle?.marks.map(({ mark, real }) => [mark, real?.value_s])).toEqual([
      ['holdBegan', 360],
      ['coolingBegan', undefined],
      ['cool', undefined],
      ['opened', 960],
    ]);
    const predicted = report.record.predicted?.cycle;
    if (predicted?.status !== 'ok') throw new Error('no cycle');
    expect(cycle?.marks[0]?.expected).toEqual(predicted.ready_s);
    expect(cycle?.marks[3]?.expected).toBeUndefined();
    const reading = cycle?.readings.find(({ time_s }) => time_s === 240);
    const after = predicted.curve.times_s.findIndex((time_s) => time_s > 240);
    const [t0 = 0, t1 = 0] = predicted.curve.times_s.slice(after - 1);
    const [v0 = 0, v1 = 0] = predicted.curve.top_degC.slice(after - 1);
    checkAgainst({
      id: 'VAL-AUDIT-BETWEEN',
      topic: 'press',
      inputs: 'kept points of the computed curve before and after 240 s',
      published: (v0 * (t1 - 240) + v1 * (240 - t0)) / (t1 - t0),
      ours: reading?.expectedTop_degC ?? 0,
      tolerance: 1e-9,
      unit: 'degC',
      evidence: 'derived',
      source: 'straight line between two points, as weights of both ends',
      why: 'rounding of doubles',
    });
  });

  it('[AUDIT-02] a reading after the computed curve ends has nothing beside it', () => {
    const world = goTo('open', new World());
    world.device.pass(3 * 3600);
    world.append(runChange('run.display-read', { run: 'RUN00001', mark: 'opening', top_degC: 30, bottom_degC: 30 }));
    const [cycle] = auditReport(world.state, options([])).cycles;
    expect(cycle?.readings).toMatchObject([{ top_degC: 30, time_s: 3 * 3600 }]);
    expect(cycle?.readings[0]).not.toHaveProperty('expectedTop_degC');
  });

  it('[AUDIT-03] each event has its place; the head code is that of the checkpoint; what nobody else has seen is counted', () => {
    const [log] = report.logs;
    const { events } = report.record;
    const { length } = whole.log.places;
    expect(log).toMatchObject({
      letter: 'A',
      code: cardCode(whole.checkpoint),
      events: length,
      covered: length,
      seenBy: 0,
    });
    // A witness of 20 events has seen numbers 0 to 19.
    expect(report.unseen).toBe(length - 20);
    expect(report.places[events[0] ?? '']).toEqual({ log: 'A', seq: 0 });
    expect(report.places[report.record.head.event]).toEqual({ log: 'A', seq: length - 1 });
    expect(report.notCovered).toBe(0);
  });

  it('[AUDIT-03] of several devices the one that wrote last comes first, logs without the run are left out, and what no checkpoint covers is counted', () => {
    const { checkpoint: _checkpoint, ...bare } = whole.log;
    const half = bare.places.length / 2;
    const early: LogOfRun = { ...bare, device: 'a'.repeat(64), places: bare.places.filter(({ seq }) => seq < half) };
    const late: LogOfRun = {
      ...whole.log,
      device: 'b'.repeat(64),
      places: bare.places.filter(({ seq }) => seq >= half),
      seen: seenOf([{ device: 'b'.repeat(64), size: 1000, witness: 'c'.repeat(64) }], 'b'.repeat(64)),
    };
    const none: LogOfRun = { ...bare, device: 'd'.repeat(64), places: [] };
    const { logs, notCovered } = auditReport(whole.state, options([early, none, late]));
    expect(logs.map(({ letter, device }) => letter + device.slice(0, 1))).toEqual(['Ab', 'Ba']);
    expect(logs[0]).toMatchObject({ seenBy: 1, unseen: 0 });
    expect(notCovered).toBe(early.places.length);
    expect(logs[1]).not.toHaveProperty('code');
  });

  it('[AUDIT-04] the check of the press has its day, and is late once that day is over', () => {
    // Checked on 13 Nov 2026, every 365 days; 2027 is no leap year.
    expect(report.pressCheck).toEqual({ dueOn: '2027-11-13', isLate: false });
    const on = (checkedOn: string) => {
      const { P1: press } = plant.presses;
      if (!press) throw new Error('no press P1');
      const older = { ...plant, presses: { P1: { ...press, checkedOn } } };
      const card = spliceCard(older, 'QM-04-3', { now: '2026-11-25T02:10:00.000Z', press: 'P1', people: 1 });
      return auditReport(new World(new Device('phone'), card, 'RUN00003').state, options([])).pressCheck;
    };
    expect(on('2025-11-25')).toEqual({ dueOn: '2026-11-25', isLate: false });
    expect(on('2025-11-24')).toEqual({ dueOn: '2026-11-24', isLate: true });
  });

  it('[AUDIT-05] it is plain data, and the same from the same events in any batches', () => {
    expect(JSON.parse(JSON.stringify(report))).toEqual(report);
    const again = foldRun([...whole.state.entries.slice(3)], foldRun(whole.state.entries.slice(0, 3)));
    expect(again?.deviations).toEqual(whole.state.deviations);
  });

  it('[AUDIT-06] a run just begun, one stopped, and one about which the plant knows little have a report', () => {
    const begun = auditReport(new World().state, options([]));
    expect(begun).toMatchObject({ cycles: [], logs: [], unseen: 0 });
    expect(begun.openPoints.length).toBe(begun.record.steps.length);
    const stopped = goTo('cut', new World());
    stopped.append(runChange('run.stopped', { run: 'RUN00001', reason: 'belt-spoilt' }));
    expect(auditReport(stopped.state, options([])).record.ended).toMatchObject({
      how: 'stopped',
      reason: 'belt-spoilt',
    });
    const bare = { ...plant, dies: {}, templates: {}, presses: {}, recipes: {}, rolls: {}, pulleys: {} };
    const card = spliceCard(bare, 'QM-04-3', { now: '2026-11-25T02:10:00.000Z', people: 1 });
    const little = auditReport(new World(new Device('phone'), card, 'RUN00002').state, {
      ...options([]),
      plant: { id: 'q' },
    });
    expect(little.plant).toEqual({ id: 'q', name: 'q' });
    expect(little).not.toHaveProperty('pressCheck');
  });
});
