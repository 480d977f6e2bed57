import { isDeepStrictEqual } from 'node:util';
import { type RunChange, runChange, runMeasures, runSteps, runTypes, verdicts } from '@loopwright/records/run';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  deviationCodes,
  foldRun,
  type RunAction,
  type RunState,
  resumeRun,
  stepRules,
  viewRun,
  whyNotNow,
} from '../../src/press-run/index.ts';
import { stepsBefore } from '../../src/press-run/order.ts';
import { changesOf, Device, World } from './run-world.ts';

const runs = { seed: 42, numRuns: Number(process.env['LW_RUNS'] ?? 20_000) };
/** The way to the end is gone from each case in a soak, from one in four where somebody waits for the tests. */
const everyWay = process.env['LW_RUNS'] === undefined ? 4 : 1;
const minutes = Number(process.env['LW_TEST_TIMEOUT_MS'] ?? 600_000);

/** One thing that people, devices and chance do; `a` and `b` choose among what there is. */
interface Move {
  readonly what: keyof typeof moves;
  readonly a: number;
  readonly b: number;
}

const moves = {
  main: (world: World) => void world.goOn(),
  fast: (world: World) => void world.goOn(({ fast }) => fast),
  other: (world: World, { a, b }: Move) => {
    const others = world.view().others.filter(({ code }) => code !== 'stop' || a % 7 === 0);
    const changes = chosen(others[a % Math.max(1, others.length)], b);
    if (changes) world.tap(changes);
  },
  mainChoice: (world: World, { b }: Move) => {
    const changes = chosen(world.view().main, b);
    if (changes) world.tap(changes);
  },
  takeBack: (world: World) => {
    const changes = world.view().takeBack?.changes;
    if (changes) world.tap(changes);
  },
  /** Nobody comes before the alarm rings. */
  heard: (world: World) => {
    world.device.pass(1200);
    const heard = world.view().alarm?.heard;
    if (heard) world.tap([heard]);
  },
  /** Whatever the screen shows: an old page, another version, a thumb too quick. */
  blindSteps: (world: World, { a, b }: Move) => {
    const from = a % runSteps.length;
    world.append(runChange('run.steps-done', { run: world.state.id, steps: runSteps.slice(from, from + 1 + (b % 4)) }));
  },
  blindPass: (world: World, { a }: Move) => {
    const step = runSteps[a % runSteps.length] ?? 'cut';
    world.append(runChange('run.step-passed', { run: world.state.id, step, reason: 'asked-lead' }));
  },
  blindVerdict: (world: World, { a }: Move) => {
    const verdict = verdicts[a % verdicts.length] ?? 'run';
    world.append(runChange('run.inspected', { run: world.state.id, verdict, findings: [] }));
  },
  measure: (world: World, { a, b }: Move) => {
    const measure = runMeasures[a % runMeasures.length] ?? 'bow';
    world.append(runChange('run.measured', { run: world.state.id, measure, value: b / 100 }));
  },
  read: (world: World, { a, b }: Move) => {
    const reading = { top_degC: (a * 7) % 340, bottom_degC: (b * 7) % 300 };
    world.append(runChange('run.display-read', { run: world.state.id, mark: 'hold', ...reading }));
  },
  logger: (world: World, { a, b }: Move) => {
    const file = { sha256: 'c3'.repeat(32), bytes: 1000, rows: 3, gaps: a % 2 };
    const curve = { times_s: [0, 300 + a, 700], top_degC: [20, b, null], bottom_degC: [20, null, b] };
    world.append(runChange('run.curve-read', { run: world.state.id, ...file, curve }));
  },
  wait: (world: World, { a }: Move) => world.device.pass(a * 7),
  setClock: (world: World, { a }: Move) => world.device.setWall(a % 2 === 0 ? 10_800 : -10_800),
  restart: (world: World, { a }: Move) => world.device.restart(a * 3),
  handOver: (world: World, { a }: Move) => {
    world.device = a % 2 === 0 ? phone : tablet;
    world.device.wall_ms = Math.max(phone.wall_ms, tablet.wall_ms);
  },
  badge: (world: World, { a }: Move) => {
    world.device.by = ['b1', 'b2', 'b3', 'no-badge'][a % 4] ?? 'b1';
  },
  twice: (world: World, { a }: Move) => {
    const event = world.events[a % world.events.length];
    const before = world.state;
    if (event && foldRun([event], before) !== before) throw new Error('an event was taken twice');
  },
} as const;

let phone = new Device('phone');
let tablet = new Device('tablet');

function chosen(action: RunAction | undefined, b: number): readonly RunChange[] | undefined {
  const choices = action?.choices ?? [];
  const choice = choices[b % Math.max(1, choices.length)];
  const reasons = choice?.reasons ?? [];
  const because = b % 3 === 0 ? undefined : reasons[b % Math.max(1, reasons.length)];
  return because?.changes ?? choice?.changes ?? changesOf(action);
}

const names = Object.keys(moves) as Move['what'][];
const usual: Move['what'][] = ['main', 'fast', 'main', 'fast', 'main', 'fast', 'main', 'wait', 'other', 'mainChoice'];
const move = fc.record({
  what: fc.oneof(
    { arbitrary: fc.constantFrom(...usual), weight: 3 },
    { arbitrary: fc.constantFrom(...names), weight: 2 },
  ),
  a: fc.nat(200),
  b: fc.nat(200),
});

/** A usual run up to some point of it: from there chance goes on. Played once, then copied. */
const stages: World[] = [];

function begunAt(stage: number): World {
  while (stages.length <= stage) {
    phone = new Device('phone');
    const world = stages.at(-1)?.copy() ?? new World(phone);
    if (stages.length > 0) world.goOn(({ fast, main }) => (stages.length % 3 === 0 ? main : (fast ?? main)));
    stages.push(world);
  }
  const world = stages[stage]?.copy() ?? new World(phone);
  phone = world.device;
  tablet = new Device('tablet');
  tablet.wall_ms = phone.wall_ms;
  return world;
}

const stage = fc.nat(24);

/** Steps settled before what they need, or passed though nobody may go on without them; none is right. */
function outOfOrder({ state }: World): readonly string[] {
  const { settled } = state;
  return runSteps.filter((step) => {
    const how = settled[step];
    if (how === undefined) return false;
    const { pass = [], asks } = stepRules[step];
    const isPassed = how.how === 'passed' && !asks;
    return stepsBefore(state, step, settled).length > 0 || (isPassed && !pass.includes(how.reason ?? 'no-time'));
  });
}

/** Taps and waiting from here to the end; undefined where there is no way. */
function wayToEnd(world: World): number | undefined {
  const before = world.taps;
  while (!world.state.end)
    if (!world.goOn(({ fast, main }) => fast ?? main) || world.taps - before > 60) return undefined;
  return world.taps - before;
}

/** The same events in three batches; now and then they, and the state between, come through JSON as from a disk. */
function foldedAgain({ events }: World, cut: number, other: number): RunState | undefined {
  const [first, second] = [cut % (events.length + 1), other % (events.length + 1)].sort((a, b) => a - b);
  const kept = <T>(what: T): T => (cut % everyWay > 0 ? what : (JSON.parse(JSON.stringify(what)) as T));
  const again = kept(events);
  let folded = foldRun(again.slice(0, first));
  folded = foldRun(again.slice(first, second), folded && kept(folded));
  return foldRun(again.slice(second), folded);
}

test('[RUN-20] whatever happens: no step comes before what it needs, any fold gives the same state, there is a way to the end', {
  timeout: minutes,
}, () => {
  const ends = { finished: 0, stopped: 0 };
  const seen = new Set<string>();
  fc.assert(
    fc.property(stage, fc.array(move, { maxLength: 12 }), fc.nat(), fc.nat(), (from, given, cut, other) => {
      const world = begunAt(from);
      for (const each of given) {
        moves[each.what](world, each);
        const wrong = outOfOrder(world);
        if (wrong.length > 0) throw new Error(`settled too early: ${wrong.join()}`);
      }
      const { state } = world;
      const folded = foldedAgain(world, cut, other);
      if (!isDeepStrictEqual(folded, state)) expect(folded).toEqual(state);
      const resumed = folded && resumeRun(folded, world.device.now()).view;
      const shown = viewRun(state, world.device.now());
      if (!isDeepStrictEqual(resumed, shown)) expect(resumed).toEqual(shown);
      if (cut % everyWay > 0) return;
      if (wayToEnd(world) === undefined) throw new Error('no way to the end');
      for (const { type } of world.state.entries) seen.add(type);
      for (const { code } of world.state.deviations) seen.add(code);
      ends[world.state.end?.how ?? 'stopped'] += 1;
      const open = world.state.started.steps.filter((step) => !world.settled(step));
      if (world.state.end?.how === 'finished' && open.length > 0) throw new Error(`finished without ${open.join()}`);
    }),
    runs,
  );
  expect(ends.finished).toBeGreaterThan(ends.stopped);
  // So much of what can happen did happen that the test is worth its name.
  const rare: readonly string[] = ['run.predicted', 'run.photo-taken', 'run.noted', 'opened-warm', 'verdict-milder'];
  const never = [...runTypes, ...deviationCodes].filter((each) => !seen.has(each) && !rare.includes(each));
  if (runs.numRuns >= 5000) expect(never).toEqual([]);
});

test('[RUN-21] what may be appended is taken, what may not be is passed over, and the run says which', {
  timeout: minutes,
}, () => {
  fc.assert(
    fc.property(stage, fc.array(move, { maxLength: 8 }), move, (begin, given, last) => {
      const world = begunAt(begin);
      for (const each of given) moves[each.what](world, each);
      const from = last.a % runSteps.length;
      const steps = runSteps.slice(from, from + 1 + (last.b % 3));
      const change = runChange('run.steps-done', { run: world.state.id, steps });
      const why = whyNotNow(world.state, change, world.device.by);
      const { id } = world.append(change);
      const isPassedOver = world.state.passedOver.some(({ event }) => event === id);
      const isTaken = world.state.entries.some((each) => each.id === id);
      if (isPassedOver !== why.length > 0 || isTaken !== (why.length === 0)) throw new Error(JSON.stringify(why));
    }),
    runs,
  );
});
