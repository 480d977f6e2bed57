import type { Cycle, CycleInput, Platen } from '@loopwright/engine/press';
import type { Quantity } from '../quantity.ts';
import type { CycleGround } from './cycle-ground.ts';
import { runCycle } from './run-cycle.ts';

/** EN 50160: nominal voltage within a tenth, for 95 % of the ten-minute means; from memory. */
const mainsSwing = 0.1;

/** One thing that may be otherwise than taken: the input with it low, and with it high. */
type Swing = readonly [low: CycleInput, high: CycleInput];

/**
 * What may differ from the numbers of a cycle: mains, air, and what of fan and platens is an example or estimated.
 *
 * @param ground - input and where its numbers came from
 */
function swingsOf({ input, outlet, numbers }: CycleGround): readonly Swing[] {
  const volts = (share: number): CycleInput => ({
    ...input,
    supply: { ...input.supply, volts_V: input.supply.volts_V * share },
  });
  const air = (ambient_degC: number | undefined): CycleInput => ({
    ...input,
    ambient_degC: ambient_degC ?? input.ambient_degC,
  });
  const platen = (of: Partial<Platen>): CycleInput => ({
    ...input,
    top: { ...input.top, ...of },
    bottom: { ...input.bottom, ...of },
  });
  const either = (field: string, of: (value: number) => Partial<Platen>): Swing[] => {
    const quantity = numbers.find((number) => number.field === field)?.quantity;
    if (quantity?.low === undefined || quantity.high === undefined) return [];
    return [[platen(of(quantity.low)), platen(of(quantity.high))]];
  };
  return [
    [volts(1 - mainsSwing), volts(1 + mainsSwing)],
    [air(outlet.air.low), air(outlet.air.high)],
    ...either('presses.fanCooling', (fan_W_m2K) => ({ fan_W_m2K })),
    ...either('presses.platenCapacity', (capacity_J_m2K) => ({ capacity_J_m2K })),
  ];
}

/** Numbers of a cycle that are shown with a range. */
interface Ranged {
  readonly ready: Quantity;
  readonly dwellEnd: Quantity;
  readonly open: Quantity;
  readonly energy: Quantity;
}

export interface CycleRange extends Ranged {
  /** False when some of what may differ gives no cycle at all: sagging mains that never get the platens hot. */
  readonly whole: boolean;
}

const joule_Wh = 3600;

const picks: Readonly<Record<keyof Ranged, (cycle: Cycle) => number>> = {
  ready: ({ marks }) => marks.ready_s,
  dwellEnd: ({ marks }) => marks.dwellEnd_s,
  open: ({ marks }) => marks.open_s,
  energy: ({ energy_Wh }) => energy_Wh * joule_Wh,
};

/**
 * Ready, end of the hold, opening and energy, each with its range: the differences that each swing makes, both ways,
 * added as squares.
 *
 * @param ground - input and where its numbers came from
 * @param middle - the cycle as computed
 * @param withRange - false for the numbers alone, which cost no further cycle
 */
export function cycleRange(ground: CycleGround, middle: Cycle, withRange = true): CycleRange {
  const swings = (withRange ? swingsOf(ground) : []).map((swing) =>
    swing.map((input) => runCycle({ ...input, probes: [] })),
  );
  const runs = swings.map((swing) => swing.filter((run) => run.status === 'ok'));
  const ranged = (kind: Quantity['kind'], pick: (cycle: Cycle) => number): Quantity => {
    const value = pick(middle);
    const off = runs.map((swing) => swing.map((run) => pick(run) - value));
    const reach = (sign: 1 | -1): number => Math.hypot(...off.map((each) => Math.max(0, ...each.map((d) => sign * d))));
    return { value, kind, source: 'computed', low: value - reach(-1), high: value + reach(1), uncalibrated: true };
  };
  return {
    ready: ranged('time', picks.ready),
    dwellEnd: ranged('time', picks.dwellEnd),
    open: ranged('time', picks.open),
    energy: ranged('energy', picks.energy),
    whole: swings.every((swing) => swing.every((run) => run.status === 'ok')),
  };
}
