import { runChange } from '@loopwright/records/run';
import { describe, expect, it } from 'vitest';
import { watchRun } from '../../src/curve-watch/index.ts';
import { foldRun, runRecord, tapWrites } from '../../src/press-run/index.ts';
import { plant, World } from './run-world.ts';

const file = { sha256: 'c3'.repeat(32), bytes: 4096, rows: 3, gaps: 0 };

function curveRead(world: World, curve: { times_s: number[]; top_degC: number[]; bottom_degC: number[] }) {
  return runChange('run.curve-read', { run: world.state.id, ...file, curve });
}

function toStep(step: string): World {
  const world = new World();
  while (!world.state.end && world.view().current?.step !== step && world.goOn(({ main }) => main));
  return world;
}

describe('a logger', () => {
  it('[RUN-30] its curve is passed over before the heat, taken after it, watched, and stands in the record', () => {
    const cold = { times_s: [0, 600, 700], top_degC: [20, 100, 100], bottom_degC: [20, 100, 100] };
    const early = toStep('match');
    early.append(curveRead(early, cold));
    expect(early.state.logged).toEqual([]);
    expect(early.state.passedOver.at(-1)?.why.code).toBe('needs-steps');

    const world = toStep('open');
    expect(watchRun(world.state)).toEqual([]);
    world.append(curveRead(world, cold));
    expect(watchRun(world.state).map(({ code }) => code)).toContain('set-not-reached');
    expect(runRecord(world.state).cycles.at(-1)?.logged).toMatchObject(file);
  });

  it('[RUN-30] a curve is read after the run is over', () => {
    const world = new World();
    while (!world.state.end && world.goOn(({ main }) => main));
    expect(world.state.end?.how).toBe('finished');
    world.append(curveRead(world, { times_s: [0, 300], top_degC: [20, 180], bottom_degC: [20, 180] }));
    expect(runRecord(world.state).cycles.at(-1)?.logged?.curve.times_s).toEqual([0, 300]);
  });
});

describe('what a tap writes', () => {
  it('[RUN-31] a lower voltage at the outlet comes with another prediction', () => {
    const world = toStep('outlet-live');
    const { id: run } = world.state;
    const writes = (value: number) =>
      tapWrites(world.state, [runChange('run.measured', { run, measure: 'mains', value })], world.device.now(), plant);
    expect(writes(207).map(({ type }) => type)).toEqual(['run.measured', 'run.predicted']);
    const ready = [230, 207].map((value) => {
      const [, predicted] = writes(value);
      const { cycle } = (predicted as ReturnType<typeof runChange<'run.predicted'>>).body.thing as {
        cycle: { ready_s: { value: number } };
      };
      return cycle.ready_s.value;
    });
    // Power goes with voltage squared: 0.9 of 230 V heats with 81 %. A ramp at full power takes 1/0.81 and more for losses;
    // the last stretch, where the control holds back, takes the same.
    expect((ready[1] ?? 0) / (ready[0] ?? 1)).toBeGreaterThan(1.1);
    expect((ready[1] ?? 0) / (ready[0] ?? 1)).toBeLessThan(1.45);
  });

  it('[RUN-31] the last tap brings the new belt into the plant, no tap before it does', () => {
    const world = new World();
    for (;;) {
      const { state } = world;
      const before = world.events.length;
      if (!world.goOn(({ main }) => main)) break;
      const changes = world.events.slice(before);
      if (changes.length === 0) continue;
      const written = tapWrites(state, changes, world.device.now(), plant).map(({ type }) => type);
      const isLast = foldRun(changes, state)?.end !== undefined;
      expect(written.includes('position.defined')).toBe(isLast);
      if (isLast) return;
    }
    throw new Error('the run never ended');
  });
});
