import { runChange } from '@loopwright/records/run';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { foldRun, type RunTimer, resumeRun, viewRun } from '../../src/press-run/index.ts';
import { elapsedBetween } from '../../src/press-run/run-clock.ts';
import { Device, World } from './run-world.ts';

const runs = { seed: 42, numRuns: Number(process.env['LW_RUNS'] ?? 2000) };
const threeHours_s = 10_800;

/** A run that has just been switched on. */
function heating(): World {
  return started.copy();
}

const started = new World();
while (started.view().current?.step !== 'open') started.goOn();

const left = (timers: readonly RunTimer[]) => timers.map(({ code, left_s }) => [code, Math.round(left_s * 1000)]);

describe('clocks', () => {
  it('[RUN-22] a clock set by three hours, forth or back, moves no timer while the device stays on', () => {
    fc.assert(
      fc.property(fc.integer({ min: -threeHours_s, max: threeHours_s }), fc.nat(900), (set_s, waited_s) => {
        const set = heating();
        const plain = set.copy();
        set.device.setWall(set_s);
        for (const world of [set, plain]) world.device.pass(waited_s);
        expect(left(set.view().timers)).toEqual(left(plain.view().timers));
        expect(set.view().timers.every(({ sure }) => sure === 'steady')).toBe(true);
      }),
      { ...runs, numRuns: Math.min(runs.numRuns, 20_000) },
    );
  });

  it('[RUN-22] the instant shown follows the clock of the device that shows it', () => {
    const world = heating();
    const before = world.view().timers.find(({ code }) => code === 'open');
    world.device.setWall(threeHours_s);
    const after = world.view().timers.find(({ code }) => code === 'open');
    expect(Date.parse(after?.at ?? '') - Date.parse(before?.at ?? '')).toBe(threeHours_s * 1000);
    expect(after?.left_s).toBe(before?.left_s);
  });

  it('[RUN-23] over a flat battery and on another device the time of day counts, and the timer says so', () => {
    const world = heating();
    const open_s = world.view().timers.find(({ code }) => code === 'open')?.left_s ?? 0;
    world.device.pass(100);
    world.device.restart(300);
    const timer = world.view().timers.find(({ code }) => code === 'open');
    expect(timer?.left_s).toBeCloseTo(open_s - 400, 6);
    expect(timer?.sure).toBe('wall');
    const tablet = new Device('tablet', new Date(world.device.wall_ms).toISOString(), 'b2');
    tablet.pass(60);
    const elsewhere = viewRun(world.state, tablet.now()).timers.find(({ code }) => code === 'open');
    expect(elsewhere?.left_s).toBeCloseTo(open_s - 460, 6);
    expect(elsewhere?.sure).toBe('wall');
  });

  it('[RUN-23] a clock set before the battery went flat counts only for the gap', () => {
    const world = heating();
    const open_s = world.view().timers.find(({ code }) => code === 'open')?.left_s ?? 0;
    world.device.setWall(threeHours_s);
    world.device.pass(100);
    world.append(runChange('run.noted', { run: world.state.id, note: 'still heating' }));
    world.device.restart(60);
    expect(world.view().timers.find(({ code }) => code === 'open')?.left_s).toBeCloseTo(open_s - 160, 6);
  });

  it('[RUN-23] clocks that contradict each other are doubtful: the press display is asked, nothing is held up', () => {
    const world = heating();
    world.device.restart(30);
    world.device.setWall(-threeHours_s);
    const view = world.view();
    expect(view.timers.every(({ sure }) => sure === 'doubtful')).toBe(true);
    expect(view.main?.code).toBe('open');
  });

  it('[RUN-23] time never runs backwards, and passes alike in one step or in two', () => {
    const clock = fc.record({
      up: fc.nat(1e6),
      wall: fc.integer({ min: -1e7, max: 1e7 }),
      boot: fc.constantFrom('a', 'b'),
    });
    const reading = ({ up, wall, boot }: { up: number; wall: number; boot: string }) => ({
      device: 'phone',
      boot,
      up_ms: up,
      at: new Date(1_800_000_000_000 + wall).toISOString(),
    });
    fc.assert(
      fc.property(clock, clock, fc.array(clock, { maxLength: 4 }), (from, to, known) => {
        const { elapsed_s } = elapsedBetween(reading(from), reading(to), known.map(reading));
        expect(elapsed_s).toBeGreaterThanOrEqual(0);
      }),
      runs,
    );
    fc.assert(
      fc.property(fc.nat(1e6), fc.nat(1e6), (first, second) => {
        const device = new Device('phone');
        const start = device.now();
        device.pass(first);
        const middle = device.now();
        device.pass(second);
        const parts = elapsedBetween(start, middle).elapsed_s + elapsedBetween(middle, device.now()).elapsed_s;
        expect(elapsedBetween(start, device.now()).elapsed_s).toBeCloseTo(parts, 6);
      }),
      runs,
    );
  });
});

describe('resume', () => {
  it('[RUN-24] after sleep: the cycle ended so long ago, and the alarm rings until somebody has heard it', () => {
    const world = heating();
    const last = { ...world.device.now(), entries: world.state.entries.length };
    const open_s = world.view().timers.find(({ code }) => code === 'open')?.left_s ?? 0;
    world.device.pass(open_s + 360);
    const { view, meanwhile } = resumeRun(world.state, world.device.now(), last);
    expect(meanwhile).toHaveLength(1);
    expect(meanwhile[0]).toMatchObject({ code: 'cycle-ended', sure: 'steady', data: { open_degC: 50 } });
    expect(meanwhile[0]?.ago_s).toBeCloseTo(360, 6);
    expect(view.alarm?.code).toBe('open');
    if (view.alarm) world.append(view.alarm.heard);
    expect(world.view().alarm).toBeUndefined();
  });

  it('[RUN-24] after a flat battery: the same by the time of day, and that the device was off', () => {
    const world = heating();
    const last = { ...world.device.now(), entries: world.state.entries.length };
    const open_s = world.view().timers.find(({ code }) => code === 'open')?.left_s ?? 0;
    world.device.restart(open_s + 360);
    const again = foldRun(JSON.parse(JSON.stringify(world.events)) as typeof world.events);
    if (again === undefined) throw new Error('no run');
    const { meanwhile } = resumeRun(again, world.device.now(), last);
    expect(meanwhile.map(({ code }) => code)).toEqual(['cycle-ended', 'restarted']);
    expect(meanwhile[0]).toMatchObject({ sure: 'wall' });
  });

  it('[RUN-24] another device and another badge that went on are told; so is a clock that was set', () => {
    const world = heating();
    const last = { ...world.device.now(), entries: world.state.entries.length };
    const phone = world.device;
    world.device = new Device('tablet', new Date(phone.wall_ms + 60_000).toISOString(), 'b2');
    world.append(runChange('run.display-said', { run: world.state.id, says: 'hold-began' }));
    world.device = phone;
    phone.pass(120);
    phone.setWall(-threeHours_s);
    const { meanwhile } = resumeRun(world.state, phone.now(), last);
    expect(meanwhile.map(({ code }) => code).sort()).toEqual(['clock-set', 'other-badge', 'other-device']);
    expect(meanwhile.find(({ code }) => code === 'clock-set')?.data).toEqual({ set_s: -threeHours_s });
  });

  it('[RUN-24] a look and a look again: nothing happened', () => {
    const world = heating();
    const last = { ...world.device.now(), entries: world.state.entries.length };
    world.device.pass(5);
    expect(resumeRun(world.state, world.device.now(), last).meanwhile.map(({ code }) => code)).toEqual(['nothing']);
  });
});
