import { engineVersion } from '@loopwright/engine/version';
import { type RunChange, type RunThing, runChange, runSteps } from '@loopwright/records/run';
import type { PressCycle } from '../press-cycle/press-cycle.ts';
import type { NoCycle } from '../press-cycle/run-cycle.ts';
import type { SpliceCard } from '../splice-card/card.ts';
import { revisionOf } from '../splice-card/revision.ts';
import { cardNumbers, runNumber } from './run-numbers.ts';
import type { RunNow } from './run-view.ts';

export interface StartOptions {
  /** Id of the run, as `runIdOf` makes it. */
  readonly run: string;
  /** Hands on the job; asked once. */
  readonly people: 1 | 2;
  /** A place that no open run of this device has, from 0. */
  readonly slot: number;
}

/**
 * The first events of a run: what it is made from, and what the press cycle is expected to be.
 *
 * @param card - of the position
 * @param options - id, hands and place
 * @returns changes to append together
 */
export function startRun(card: SpliceCard, { run, people, slot }: StartOptions): readonly RunChange[] {
  const { press } = card;
  const started = runChange('run.started', {
    run,
    people,
    slot,
    engine: card.engine,
    card: card.revision,
    things: thingsOf(card),
    steps: runSteps.filter((step) => step !== 'resistance' || card.inspect.includes('antistatic-resistance')),
    numbers: [...cardNumbers(card)],
    missing: [...card.missing],
  });
  return press.cycle ? [started, predictRun(run, press.cycle)] : [started];
}

function thingsOf({ position, line, belt, die, press, roll }: SpliceCard): RunThing<'run.started'>['things'] {
  return {
    position,
    line,
    belt,
    ...(die && { die }),
    ...(press.template && { template: press.template }),
    ...(press.press && { press: press.press }),
    ...(press.recipe && { recipe: press.recipe }),
    ...(roll && { roll }),
  };
}

/** Points of the kept curve: a step of about twenty seconds in a cycle of a quarter of an hour. */
const points = 61;

/**
 * What the cycle is expected to be, with what somebody has meanwhile said of outlet and air.
 *
 * @param run - id
 * @param cycle - as computed for the press of the run at its outlet
 */
export function predictRun(run: string, cycle: PressCycle | NoCycle): RunChange {
  const numbers = cycle.status === 'ok' ? cycle.numbers.map(({ field, quantity }) => runNumber(field, quantity)) : [];
  const revision = revisionOf({ numbers: numbers.map(({ name, value }) => [name, value]), engine: engineVersion });
  return runChange('run.predicted', { run, engine: engineVersion, revision, numbers, cycle: expected(cycle) });
}

function expected(cycle: PressCycle | NoCycle): RunThing<'run.predicted'>['cycle'] {
  if (cycle.status !== 'ok') return { status: 'none', code: cycle.code };
  const { ready, dwellEnd, open, curve } = cycle;
  const kept = keptPoints(curve.times_s);
  const line = (values: readonly number[]): number[] => kept.map((i) => rounded(values[i] ?? 0, 100));
  return {
    status: 'ok',
    ready_s: ranged(ready),
    holdEnd_s: ranged(dwellEnd),
    open_s: ranged(open),
    curve: {
      times_s: kept.map((i) => rounded(curve.times_s[i] ?? 0, 10)),
      top_degC: line(curve.topSensor),
      bottom_degC: line(curve.bottomSensor),
      belt_degC: line(curve.beltMiddle),
    },
  };
}

function keptPoints(times_s: readonly number[]): readonly number[] {
  const last = times_s.length - 1;
  if (last < points) return times_s.map((_, i) => i);
  return Array.from({ length: points }, (_, i) => Math.round((i * last) / (points - 1)));
}

const rounded = (value: number, per: number): number => Math.round(value * per) / per;

interface Ranged {
  readonly value: number;
  readonly low?: number;
  readonly high?: number;
}

function ranged({ value, low = value, high = value }: Ranged): { value: number; low: number; high: number } {
  return { value, low: Math.max(0, low), high };
}

/**
 * The id of a run: what no other run has, as eight characters that can be read out.
 *
 * @param position - where the belt runs
 * @param now - the moment of starting
 */
export function runIdOf(position: string, { at, boot, up_ms, device }: RunNow): string {
  return revisionOf({ position, at, boot, up_ms, device });
}
