import { fusionParameters, type Grade, type GradeReason } from '@loopwright/engine/fusion';
import { burnThreshold_degC, type Cycle } from '@loopwright/engine/press';
import { computed, example, type Quantity } from '../quantity.ts';
import { type CycleCurve, cycleCurve, reachedAt_s } from './cycle-curve.ts';
import { type CycleGround, type CycleThings, cycleGround } from './cycle-ground.ts';
import type { CycleNumber } from './cycle-number.ts';
import { cycleRange } from './cycle-range.ts';
import { type Fed, fedBy } from './outlet.ts';
import { type NoCycle, runCycle } from './run-cycle.ts';

/** What became of the splice at one place of the platens. */
export interface CycleGrade {
  readonly grade: Grade;
  readonly reasons: readonly GradeReason[];
}

/** The belt at its three places: the least of them, or the most where more is worse. */
export interface CycleBelt {
  readonly peak: Quantity;
  readonly atOpen: Quantity;
  readonly bond: Quantity;
  /** How deep the melt runs into the gap, and how deep it must. */
  readonly fill: Quantity;
  readonly fillMost: Quantity;
  readonly fillNeeded: Quantity;
  readonly damage: Quantity;
  /** When all of the belt is half molten, and when all of it is bonded; absent when that never is. */
  readonly flowStart?: Quantity;
  readonly bonded?: Quantity;
}

/** A press cycle as expected: when it is ready, when it opens, what it takes, what becomes of the splice. */
export interface PressCycle {
  readonly status: 'ok';
  readonly ready: Quantity;
  readonly dwellEnd: Quantity;
  readonly open: Quantity;
  /** By how much the outlet and its lead delay the ramp, against nominal voltage without a lead. */
  readonly delay: Quantity;
  readonly energy: Quantity;
  /** Most that flows, with the control unit. */
  readonly current: Quantity;
  readonly fed: Fed;
  readonly volts: Quantity;
  readonly lead: Quantity;
  readonly air: Quantity;
  readonly middle: CycleGrade;
  /** At the right edge, where somebody has measured that it differs. */
  readonly edge?: CycleGrade & { readonly off: Quantity };
  readonly belt: CycleBelt;
  /** Platens at opening, and what a bare metal of that surface may have for a touch of ten seconds. */
  readonly platensAtOpen: Quantity;
  readonly touchLimit: Quantity;
  readonly curve: CycleCurve;
  readonly numbers: readonly CycleNumber[];
  /** True when somebody knows how much water the belt holds: else bubbles are not judged. */
  readonly moistureKnown: boolean;
  /** True when all of what may differ still gives a cycle. */
  readonly wholeRange: boolean;
}

/** What somebody touches an open press for. */
const touch_s = 10;

/**
 * The press cycle of a belt in a press at an outlet: the time line with its range, energy and current, the grade.
 *
 * @param things - line, belt, press, recipe; template, roll and today where they are known
 * @param withRange - false while somebody moves a slider: the same numbers without their ranges, in a third of the time
 * @returns the cycle, or why there is none
 */
export function pressCycle(things: CycleThings, withRange = true): PressCycle | NoCycle {
  const ground = cycleGround(things);
  const middle = runCycle(ground.input);
  if (middle.status !== 'ok') return middle;
  const curve = cycleCurve(ground.input, middle);
  if (curve === undefined) return { status: 'none', code: 'no-result', path: '', data: { formula: 'cycle' } };
  const { whole, ...marks } = cycleRange(ground, middle, withRange);
  const edge = edgeGrade(ground);
  return {
    status: 'ok',
    ...marks,
    delay: delayOf(ground, middle),
    ...electricity(ground, middle),
    air: ground.outlet.air,
    middle: { grade: middle.grade, reasons: middle.reasons },
    ...(edge && { edge }),
    belt: beltOf(ground, middle, curve),
    platensAtOpen: uncalibrated(
      'temperature',
      Math.max(middle.platens.top.atOpen_degC, middle.platens.bottom.atOpen_degC),
    ),
    touchLimit: example('temperature', burnThreshold_degC('metal', touch_s)),
    curve,
    numbers: ground.numbers,
    moistureKnown: ground.input.fusion?.moisture_share !== undefined,
    wholeRange: whole,
  };
}

const uncalibrated = (kind: Quantity['kind'], value: number): Quantity => ({
  ...computed(kind, value),
  uncalibrated: true,
});

/** Against the same press with its nominal voltage at the heaters. */
function delayOf({ input, platens }: CycleGround, { marks }: Cycle): Quantity {
  const supply = { ...input.supply, volts_V: platens.platen.nominal_V, leadResistance_ohm: 0 };
  const nominal = runCycle({ ...input, probes: [], supply });
  return computed('time', nominal.status === 'ok' ? marks.ready_s - nominal.marks.ready_s : 0);
}

function electricity(ground: CycleGround, cycle: Cycle): Pick<PressCycle, 'current' | 'fed' | 'volts' | 'lead'> {
  const { outlet, platens } = ground;
  const { heater_W, nominal_V } = platens.platen;
  return {
    current: computed('current', cycle.peakCurrent_A + platens.control_W / outlet.volts.value),
    fed: fedBy(outlet, { power_W: 2 * heater_W, nominal_V }),
    volts: outlet.volts,
    lead: outlet.lead,
  };
}

/** The same cycle with the column at the right edge, where the platens are off by what was measured. */
function edgeGrade({ things, input }: CycleGround): PressCycle['edge'] {
  const { rightEdge_K } = things.press;
  if (rightEdge_K === undefined || rightEdge_K === 0) return undefined;
  const run = runCycle({ ...input, columns: { left_K: 0, right_K: rightEdge_K } });
  if (run.status !== 'ok' || run.columns === undefined) return undefined;
  const { grade, reasons } = run.columns.right;
  return { grade, reasons, off: computed('temperatureDifference', rightEdge_K) };
}

function beltOf(ground: CycleGround, { belt, marks }: Cycle, curve: CycleCurve): CycleBelt {
  const { fillNeeded_m } = fusionParameters(ground.input.fusion);
  const lines = [curve.beltTop, curve.beltMiddle, curve.beltBottom];
  const flow = reachedAt_s(curve, lines, ground.stack.meltPeak.value);
  return {
    peak: uncalibrated('temperature', belt.max_degC),
    atOpen: uncalibrated('temperature', belt.atOpenMax_degC),
    bond: uncalibrated('ratio', belt.bondMin),
    fill: uncalibrated('shortLength', belt.fillMin_m),
    fillMost: uncalibrated('shortLength', belt.fillMax_m),
    fillNeeded: example('shortLength', fillNeeded_m),
    damage: uncalibrated('percent', 1 - belt.molarMassShareMin),
    ...(flow !== undefined && { flowStart: uncalibrated('time', flow) }),
    ...(marks.bonded_s !== null && { bonded: uncalibrated('time', marks.bonded_s) }),
  };
}
