import type { RunChange, RunEvent, RunStep } from '@loopwright/records/run';
import {
  applyRunEvent,
  foldRun,
  type RunAction,
  type RunNow,
  type RunState,
  type RunView,
  startRun,
  viewRun,
} from '../../src/press-run/index.ts';
import { spliceCard } from '../../src/splice-card/splice-card.ts';
import { demoPlant } from '../demo-plant.ts';

export const plant = demoPlant();
const begun = '2026-11-25T02:10:00.000Z';

/** The card of the torn belt: cut from a sealed roll, on the press in date. */
export const tornCard = spliceCard(plant, 'QM-04-3', { now: begun, press: 'P1', people: 1 });

const options = { badges: Object.values(plant.badges), rolls: Object.values(plant.rolls) };

/** A device with two clocks, as a shell has it. */
export class Device {
  boot = 'boot-1';
  up_ms = 60_000;
  wall_ms: number;
  readonly name: string;
  by: string;

  constructor(name: string, start = begun, by = 'b1') {
    this.name = name;
    this.by = by;
    this.wall_ms = Date.parse(start);
  }

  pass(seconds: number): void {
    this.up_ms += seconds * 1000;
    this.wall_ms += seconds * 1000;
  }

  /** Somebody sets the wall clock. */
  setWall(bySeconds: number): void {
    this.wall_ms += bySeconds * 1000;
  }

  /** Flat battery, charged again. */
  restart(offFor_s: number): void {
    this.boot = `boot-${Number(this.boot.slice(5)) + 1}`;
    this.wall_ms += offFor_s * 1000;
    this.up_ms = 500;
  }

  now(): RunNow {
    const { boot, up_ms, by, name } = this;
    return { at: new Date(this.wall_ms).toISOString(), boot, up_ms, by, device: name };
  }
}

let written = 0;

/** An event as a log gives it: no event has the id of another. */
export function logged(change: RunChange, device: Device): RunEvent {
  written += 1;
  return { ...change, ...device.now(), id: written.toString(16).padStart(64, '0') } as RunEvent;
}

interface Begun {
  readonly events: readonly RunEvent[];
  readonly state: RunState;
}

function begin(device: Device, card: typeof tornCard, run: string): Begun {
  const events = startRun(card, { run, people: 1, slot: 0 }).map((change) => logged(change, device));
  const state = foldRun(events);
  if (state === undefined) throw new Error('the run did not start');
  return { events, state };
}

const firstRun = 'RUN00001';
const begunRuns = new Map<string, Begun>();

/** The usual run begins the same each time, so it is begun once. */
function begunRun(device: Device): Begun {
  const { at, boot, up_ms, by, device: name } = device.now();
  const key = [at, boot, up_ms, by, name].join(' ');
  const begun = begunRuns.get(key) ?? begin(device, tornCard, firstRun);
  begunRuns.set(key, begun);
  return begun;
}

/** A run on a device: what it appends, and the state that comes of it. */
export class World {
  readonly events: RunEvent[] = [];
  state: RunState;
  taps = 0;
  device: Device;

  constructor(device = new Device('phone'), card = tornCard, run = firstRun) {
    this.device = device;
    const { events, state } = card === tornCard && run === firstRun ? begunRun(device) : begin(device, card, run);
    this.events.push(...events);
    this.state = state;
    this.taps = 1;
  }

  /** The same run, to go on from here in another way. */
  copy(): World {
    const { name, boot, up_ms, wall_ms, by } = this.device;
    const device = Object.assign(new Device(name), { boot, up_ms, wall_ms, by });
    return Object.assign(Object.create(World.prototype) as World, {
      events: [...this.events],
      state: this.state,
      taps: this.taps,
      device,
    });
  }

  /** One tap: all of its changes in one append. */
  tap(changes: readonly RunChange[]): void {
    this.taps += 1;
    for (const change of changes) this.append(change);
  }

  append(change: RunChange): RunEvent {
    const event = logged(change, this.device);
    this.events.push(event);
    this.state = applyRunEvent(this.state, event) ?? this.state;
    return event;
  }

  view(): RunView {
    return viewRun(this.state, this.device.now(), options);
  }

  settled(step: RunStep): boolean {
    return this.state.settled[step] !== undefined;
  }

  /** Waits for what the run waits for, else does what stands on the big button; false where neither is there. */
  goOn(pick: (view: RunView) => RunAction | undefined = ({ main }) => main): boolean {
    const view = this.view();
    const changes = changesOf(pick(view) ?? view.main);
    if (changes !== undefined) {
      this.tap(changes);
      return true;
    }
    const moments = view.timers.flatMap(({ left_s, earliest }) => [
      left_s,
      ...(earliest ? [(Date.parse(earliest) - this.device.wall_ms) / 1000] : []),
    ]);
    const next_s = Math.min(...moments.filter((left_s) => left_s > 0));
    if (!Number.isFinite(next_s)) return false;
    this.device.pass(next_s + 0.001);
    return true;
  }
}

/** What a tap on an action appends: its changes, else those of its first tile. */
export function changesOf(action: RunAction | undefined): readonly RunChange[] | undefined {
  if (action === undefined) return undefined;
  const [first] = action.choices ?? [];
  return action.changes ?? first?.changes ?? first?.reasons?.[0]?.changes;
}
