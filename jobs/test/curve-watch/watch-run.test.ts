import { runChange } from '@loopwright/records/run';
import { describe, expect, it } from 'vitest';
import { watchRun } from '../../src/curve-watch/index.ts';
import { judgeRun } from '../../src/inspection/index.ts';
import { World } from '../press-run/run-world.ts';

const run = 'RUN00001';

/** A run from its start until its heat is on. */
function heating(): World {
  const world = new World();
  for (let i = 0; i < 200 && world.state.moments.heat === undefined; i += 1) world.goOn();
  expect(world.state.moments.heat).toBeDefined();
  return world;
}

const cycleOf = (world: World) => {
  const cycle = world.state.predicted?.cycle;
  if (cycle?.status !== 'ok') throw new Error('no cycle');
  return cycle;
};

describe('a run', () => {
  it('[WATCH-15] says nothing before its heat is on and while it goes as predicted', () => {
    expect(watchRun(new World().state)).toEqual([]);
    const world = heating();
    const { curve } = cycleOf(world);
    const i = Math.round(curve.times_s.length / 5);
    world.device.pass(curve.times_s[i] ?? 0);
    const [top_degC = 0, bottom_degC = 0] = [curve.top_degC[i], curve.bottom_degC[i]];
    world.append(runChange('run.display-read', { run, mark: 'heating', top_degC, bottom_degC }));
    expect(world.state.readings).toHaveLength(1);
    expect(watchRun(world.state)).toEqual([]);
  });

  it('[WATCH-15] one display far behind the other is told by one reading', () => {
    const world = heating();
    world.device.pass(200);
    world.append(runChange('run.display-read', { run, mark: 'heating', top_degC: 60, bottom_degC: 108 }));
    expect(watchRun(world.state).map(({ code, side }) => [code, side])).toEqual([['side-slow', 'top']]);
  });

  it('[WATCH-15] a short hold is told by what the display said, and comes to the inspection', () => {
    const world = heating();
    world.device.pass(cycleOf(world).ready_s.value);
    world.append(runChange('run.display-said', { run, says: 'hold-began' }));
    world.device.pass(60);
    world.append(runChange('run.display-said', { run, says: 'cooling-began' }));
    const curveWarnings = watchRun(world.state);
    expect(curveWarnings.map(({ code }) => code)).toEqual(['hold-short']);
    expect(judgeRun(world.state, [], { curveWarnings })).toMatchObject({ verdict: 'run', level: 'look-closer' });
  });

  it('[WATCH-15] a logger comes before what was read off the displays', () => {
    const world = heating();
    const { curve } = cycleOf(world);
    const logged = curve.times_s.map((time_s, i) => ({ time_s, top_degC: curve.top_degC[i] ?? 0, bottom_degC: 20 }));
    expect(watchRun(world.state, { logged }).map(({ code, side }) => `${code} ${side}`)).toContain('side-slow bottom');
  });
});

describe('the splice of a run', () => {
  const lifted = (): World => {
    const world = heating();
    for (let i = 0; i < 200 && !world.settled('lift-out'); i += 1) world.goOn();
    return world;
  };

  it('[INSP-21] is judged with its measures', () => {
    const world = lifted();
    expect(judgeRun(world.state, []).verdict).toBe('run');
    world.append(runChange('run.measured', { run, measure: 'bow', value: 0.004 }));
    const found = judgeRun(world.state, []);
    expect(found.verdict).toBe('cut-out');
    expect(found.because[0]?.data['edge_share']).toBeGreaterThan(0);
  });

  it('[INSP-21] pressed once more, it is not pressed a third time', () => {
    const world = lifted();
    expect(judgeRun(world.state, [{ defect: 'cold-end' }]).verdict).toBe('press-again');
    world.append(runChange('run.inspected', { run, verdict: 'press-again', findings: [{ defect: 'cold-end' }] }));
    for (let i = 0; i < 200 && !world.settled('verdict') && !world.state.settled['lift-out']; i += 1) world.goOn();
    expect(world.state.pressedAgain).toBe(true);
    expect(judgeRun(world.state, [{ defect: 'cold-end' }]).verdict).toBe('cut-out');
  });
});
