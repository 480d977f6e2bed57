import { nobody, type RunStep, runChange } from '@loopwright/records/run';
import { describe, expect, it } from 'vitest';
import { type ActionCode, type RunAction, type RunState, whyNotNow } from '../../src/press-run/index.ts';
import { plant, World } from './run-world.ts';

const run = 'RUN00001';

/** A run whose current step is this one, come to by the main actions. */
function until(step: RunStep): World {
  const world = new World();
  while (world.view().current?.step !== step) if (!world.goOn()) throw new Error(`never came to ${step}`);
  return world;
}

function other(world: World, code: ActionCode): RunAction {
  const action = world.view().others.find((each) => each.code === code);
  if (action === undefined) throw new Error(`no way ${code}`);
  return action;
}

/** Taps the tile of an action, and the tile of its reason. */
function tile(world: World, action: RunAction | undefined, code: string, reason?: string): void {
  const choice = action?.choices?.find((each) => each.code === code);
  const because = reason === undefined ? choice : choice?.reasons?.find((each) => each.code === reason);
  if (because?.changes === undefined) throw new Error(`no tile ${code} ${reason}`);
  world.tap(because.changes);
}

const codes = ({ deviations }: RunState): readonly string[] => deviations.map(({ code }) => code);

function finish(world: World): void {
  while (!world.state.end) if (!world.goOn()) throw new Error('no way on');
}

describe('order', () => {
  it('[RUN-04] the knife waits for the lock-out, the release and a dry belt, and says so', () => {
    const world = new World();
    const cut = runChange('run.steps-done', { run, steps: ['cut'] });
    expect(whyNotNow(world.state, cut, 'b1')).toEqual([
      { code: 'needs-steps', steps: ['cause', 'gather', 'release', 'dry'] },
    ]);
    world.append(cut);
    expect(world.settled('cut')).toBe(false);
    expect(world.state.passedOver).toHaveLength(1);
  });

  it('[RUN-04] what keeps hands whole cannot be passed: stop, lock-out, release, guards, people, locks', () => {
    const world = until('stop');
    for (const step of [
      'stop',
      'lock-out',
      'release',
      'guards-on',
      'people-clear',
      'lock-off',
      'lock-on',
      'unlock',
    ] as const)
      expect(
        whyNotNow(world.state, runChange('run.step-passed', { run, step, reason: 'line-must-run' }), 'b1')[0]?.code,
      ).toBe('cannot-be-passed');
  });

  it('[RUN-05] what may be done in another order may: site before cause, mark before punch, the rest of the roll while it heats', () => {
    const world = new World();
    for (const steps of [['stop', 'lock-out', 'release'], ['site'], ['outlet-live'], ['gather'], ['cause']] as const)
      world.append(runChange('run.steps-done', { run, steps: [...steps] }));
    expect(world.state.passedOver).toEqual([]);
    const heating = until('open');
    expect(heating.view().alsoOpen.map(({ step }) => step)).toEqual(['remainder']);
  });

  it('[RUN-06] what is missing blocks nothing: it is passed with a reason, stays open and can be done later', () => {
    const world = until('gather');
    tile(world, other(world, 'pass'), 'none-here');
    expect(world.view().openPoints).toEqual(['gather']);
    expect(codes(world.state)).toEqual(['step-passed']);
    world.append(runChange('run.steps-done', { run, steps: ['gather'] }));
    expect(world.view().openPoints).toEqual([]);
    expect(codes(world.state)).toEqual(['step-passed']);
  });
});

describe('ways out', () => {
  it('[RUN-07] not dry leads on: to another roll, to a dried belt, or to a named person', () => {
    const world = until('dry');
    tile(world, world.view().main, 'not-dry');
    expect(world.settled('dry')).toBe(false);
    expect(other(world, 'roll').choices?.map(({ code }) => code)).toEqual(['roll-F30-2']);
    const accepts = until('dry');
    tile(accepts, accepts.view().main, 'not-dry', 'line-must-run');
    expect(accepts.state.deviations[0]).toMatchObject({ code: 'not-dry', level: 'major', reason: 'line-must-run' });
    finish(accepts);
    tile(world, other(world, 'roll'), 'roll-F30-2');
    expect(world.state.roll?.id).toBe('roll-F30-2');
    tile(world, world.view().main, 'dried');
    finish(world);
  });

  it('[RUN-07] a roll of another belt is refused, and none is changed once it is cut', () => {
    const world = until('dry');
    const roll = plant.rolls['roll-A24-1'];
    const own = plant.rolls['roll-F30-2'];
    if (!roll || !own) throw new Error('no roll');
    expect(whyNotNow(world.state, runChange('run.roll-changed', { run, roll }), 'b1')[0]?.code).toBe('other-belt');
    const cut = until('punch');
    expect(whyNotNow(cut.state, runChange('run.roll-changed', { run, roll: own }), 'b1')[0]?.code).toBe('too-late');
  });

  it('[RUN-08] another recipe on the display leads back to the press, or on under a name', () => {
    const world = until('match');
    tile(world, world.view().main, 'differs');
    expect(world.settled('match')).toBe(false);
    tile(world, world.view().main, 'set-to-card');
    expect(world.settled('match')).toBe(true);
    expect(codes(world.state)).toEqual([]);
    const goesOn = until('match');
    tile(goesOn, goesOn.view().main, 'differs', 'maker-says');
    expect(codes(goesOn.state)).toEqual(['recipe-differs']);
    finish(goesOn);
  });

  it('[RUN-09] heat waits for a minute of pressure; on sooner, the record says how soon', () => {
    const world = until('heat');
    expect(world.view().main).toBeUndefined();
    world.device.pass(20);
    world.tap(other(world, 'heat-on').changes ?? []);
    expect(world.state.deviations).toMatchObject([
      { code: 'heat-before-steady', data: { waited_s: 20, wanted_s: 60 } },
    ]);
    const waits = until('heat');
    waits.device.pass(60);
    expect(waits.view().main?.code).toBe('heat-on');
  });

  it('[RUN-10] while the press works no button invites a tap, and the display decides', () => {
    const world = until('open');
    const view = world.view();
    expect(view.main).toBeUndefined();
    expect(view.fast).toBeUndefined();
    expect(view.keepClosed).toBe(true);
    tile(world, other(world, 'display-says'), 'cool');
    expect(world.view().main?.code).toBe('open');
    expect(world.state.deviations).toMatchObject([{ code: 'display-disagrees', data: { says: 'cool' } }]);
  });

  it('[RUN-11] opened early is said, stays in the record and leads on', () => {
    const world = until('open');
    world.device.pass(700);
    world.tap(other(world, 'opened-early').changes ?? []);
    expect(world.state.deviations).toMatchObject([{ code: 'opened-early', level: 'major' }]);
    finish(world);
  });

  it('[RUN-12] what the display says moves what follows: a hold begun 90 s late ends 90 s late', () => {
    const world = until('open');
    const before = world.view().timers;
    const ready_s = before.find(({ code }) => code === 'ready')?.left_s ?? 0;
    const holdEnd_s = before.find(({ code }) => code === 'hold-end')?.left_s ?? 0;
    world.device.pass(ready_s + 90);
    tile(world, other(world, 'display-says'), 'hold-began');
    const view = world.view();
    expect(view.phase).toBe('holding');
    expect(view.timers.map(({ code }) => code)).toEqual(['hold-end', 'open']);
    expect(view.timers[0]?.left_s).toBeCloseTo(holdEnd_s - ready_s, 6);
  });

  it('[RUN-13] no photo possible: a reason per face, else the verdict notes the bare face', () => {
    const world = until('faces');
    tile(world, other(world, 'no-photo'), 'roller', 'no-camera');
    const photo = {
      run,
      face: 'pulley',
      sha256: 'a'.repeat(64),
      bytes: 300_000,
      width_px: 1600,
      height_px: 1200,
    } as const;
    world.append(runChange('run.photo-taken', photo));
    expect(world.view().others.some(({ code }) => code === 'no-photo')).toBe(false);
    finish(world);
    expect(codes(world.state)).toEqual(['no-photo']);
    const bare = until('verdict');
    finish(bare);
    expect(bare.state.deviations.map(({ data }) => data)).toEqual([{ face: 'roller' }, { face: 'pulley' }]);
  });

  it('[RUN-13] while the splice lies flat for its ten minutes the other looks come first; sooner takes a reason', () => {
    const world = until('flat');
    expect(world.view().main).toBeUndefined();
    expect(world.settled('faces')).toBe(true);
    expect(other(world, 'pass').steps).toEqual(['flat']);
    finish(world);
    expect(codes(world.state)).not.toContain('flat-too-short');
  });

  it('[RUN-14] a press that stops leads back to recipe, pressure and heat; the cycle stays in the record', () => {
    const world = until('open');
    world.device.pass(200);
    tile(world, other(world, 'cycle-stopped'), 'breaker');
    expect(world.view().current?.step).toBe('match');
    expect(world.state).toMatchObject({ attempt: 2, past: [{ attempt: 1 }] });
    finish(world);
  });
});

describe('verdict', () => {
  it('[RUN-15] pressed again once: from the stack on; a second time only cut out or run', () => {
    const world = until('verdict');
    tile(world, world.view().main, 'press-again');
    expect(world.view().current?.step).toBe('stack');
    while (world.view().current?.step !== 'verdict') world.goOn();
    expect(world.view().main?.choices?.map(({ code }) => code)).toEqual(['run', 'cut-out']);
    tile(world, world.view().main, 'cut-out');
    expect(world.view().current?.step).toBe('cut');
    finish(world);
    expect(world.state.past).toHaveLength(2);
  });

  it('[RUN-15] a verdict milder than proposed asks for its reason', () => {
    const world = until('verdict');
    const findings = [{ defect: 'voids', face: 'roller' } as const];
    const milder = { run, verdict: 'run', proposed: 'cut-out', findings } as const;
    const change = runChange('run.inspected', { ...milder, findings: [...findings] });
    expect(whyNotNow(world.state, change, 'b1')[0]?.code).toBe('verdict-needs-reason');
    world.append(runChange('run.inspected', { ...milder, findings: [...findings], reason: 'asked-lead' }));
    expect(codes(world.state)).toContain('verdict-milder');
    expect(world.settled('verdict')).toBe(true);
  });

  it('[RUN-16] a deviation is accepted by another badge, also after the run; without one the line runs all the same', () => {
    const world = until('open');
    world.tap(other(world, 'opened-early').changes ?? []);
    const deviation = world.state.deviations[0]?.id ?? '';
    const accept = runChange('run.deviation-accepted', { run, deviation });
    expect(whyNotNow(world.state, accept, 'b1')[0]?.code).toBe('needs-other-badge');
    expect(whyNotNow(world.state, accept, nobody)[0]?.code).toBe('needs-badge');
    finish(world);
    expect(world.state.deviations[0]?.accepted).toBeUndefined();
    world.device.by = 'b2';
    tile(world, other(world, 'accept'), deviation);
    expect(world.state.deviations[0]?.accepted?.by).toBe('b2');
  });
});

describe('hands', () => {
  it('[RUN-17] the last tap can be taken back, one after the other; both stay', () => {
    const world = until('punch');
    const before = world.state.settled;
    world.goOn();
    world.tap(world.view().takeBack?.changes ?? []);
    expect(world.state.settled).toEqual(before);
    world.tap(world.view().takeBack?.changes ?? []);
    expect(world.view().current?.step).toBe('cut');
    expect(world.state.takenBack).toHaveLength(2);
    const first = world.state.entries.find(({ type }) => type === 'run.steps-done')?.id ?? '';
    expect(whyNotNow(world.state, runChange('run.taken-back', { run, event: first }), 'b1')[0]?.code).toBe(
      'nothing-to-take-back',
    );
    finish(world);
  });

  it('[RUN-18] handed over in mid-cycle: the badge changes, the timers go on', () => {
    const world = until('open');
    const before = world.view().timers;
    tile(world, other(world, 'hand-over'), 'b2');
    expect(world.view().holder).toBe('b2');
    expect(world.view().timers).toEqual(before);
  });

  it('[RUN-19] two runs differ by shape, word and place', () => {
    const one = new World();
    const signs = [0, 1, 2, 3, 4, 5].map((slot) => {
      const started = { ...one.state.started, slot };
      return Object.assign(one.copy(), { state: { ...one.state, started } }).view().sign;
    });
    for (const part of ['shape', 'word', 'slot'] as const)
      expect(new Set(signs.map((sign) => sign[part])).size).toBe(signs.length);
  });
});
