import {
  elongationForTensionRow,
  elongationWithToleranceRow,
  pullOnLiveRollersRow,
  retensionDaysRow,
  shaftLoadRow,
  slipLimitedPullRow,
  slipReserveRow,
  type TensionRoundLoop,
  tensionRoundLoop,
} from '@loopwright/engine/loop';
import { work } from '@loopwright/engine/worked';
import type { Belt, Line, Position } from '@loopwright/plant';
import type { Loop } from '../loop/loop.ts';
import { computed, example, given, type Quantity } from '../quantity.ts';
import type { CardMarks, CardTension } from './card.ts';

/** Share of its first pull at which a belt is tightened again: common practice, no source. */
const retensionShare = 0.8;
/** First re-tension visit when nobody has said: 24 to 72 h after fitting, common practice, no source. */
const usualRetension_days = 3;

/** Friction belt on drive pulley: measured on the line, else the belt's own, wet or dry. */
export function driveFriction(belt: Belt, line: Line): number {
  return line.friction ?? (line.wet ? belt.frictionWet : belt.friction);
}

/** Tension, pull and grip of the line at its set elongation: slip on the relaxed tension, bearings on the fresh one. */
export function cardTension(
  position: Position,
  belt: Belt,
  line: Line,
  loop: Loop | undefined,
  marks: CardMarks,
): CardTension {
  const pull = linePull(belt, line);
  return {
    strand: marks.strandTension,
    fresh: marks.freshTension,
    elongationByTakeUp: elongationByTakeUp(belt, line),
    pull,
    ...(loop && loop.drive >= 0 && grip(belt, line, loop, marks, pull)),
    retensionAfter: retensionAfter(position, belt),
  };
}

function beltMass_kg_m(belt: Belt, line: Line): number {
  return belt.areaMass_kg_m2 * line.width_m;
}

function linePull(belt: Belt, line: Line): Quantity {
  const worked = work(pullOnLiveRollersRow, {
    f: line.lumpedFriction,
    ml: line.load_kg_m,
    mr: line.rollers_kg_m,
    mb: beltMass_kg_m(belt, line),
    l: line.bed_m,
  });
  return computed('force', worked);
}

/** Without marks the cut's tolerance decides how far the belt is really stretched. */
function elongationByTakeUp(belt: Belt, line: Line): Quantity {
  const at = (t: number): number => work(elongationWithToleranceRow, { e0: line.setElongation, t }).value;
  const worked = work(elongationWithToleranceRow, { e0: line.setElongation, t: 0 });
  return computed('percent', worked, [at(belt.lengthTolerance), at(-belt.lengthTolerance)]);
}

type Grip = Pick<
  CardTension,
  'slipReserve' | 'pullAtSlip' | 'driveShaftLoad' | 'freshDriveShaftLoad' | 'elongationForNoSlip'
>;

function grip(belt: Belt, line: Line, loop: Loop, marks: CardMarks, pull: Quantity): Grip {
  const relaxed = solved(belt, line, loop, marks.strandTension.value, pull.value);
  const fresh = solved(belt, line, loop, marks.freshTension.value, pull.value);
  const shafts = { driveShaftLoad: driveShaftLoad(relaxed), freshDriveShaftLoad: driveShaftLoad(fresh) };
  if (relaxed.slipReserve === null) return shafts;
  // Fixed centres: as the load grows the slack side falls, so slip starts earlier than this load's slack side says.
  const atSlip_N = relaxed.pullAtSlip_N ?? relaxed.slipReserve * pull.value;
  return {
    ...shafts,
    slipReserve: computed('ratio', work(slipReserveRow, { Ps: atSlip_N, P: pull.value })),
    pullAtSlip: pullAtSlip(belt, line, relaxed, marks.strandTension.value, atSlip_N, pull.value),
    ...(line.takeUpKind === 'screw' && elongationForNoSlip(belt, line, marks, atSlip_N, pull.value)),
  };
}

/** The round trip through the engine: screw take-ups hold the mean tension, spring and weight their force. */
function solved(belt: Belt, line: Line, loop: Loop, strand_N: number, pull_N: number): TensionRoundLoop {
  const span_m = loop.path.spans_m[loop.carryingSpan] ?? line.bed_m;
  const bed_m = Math.min(line.bed_m, span_m);
  const from_m = (span_m - bed_m) / 2;
  return tensionRoundLoop({
    ...loop.input,
    drive: loop.drive,
    strand: loop.carryingSpan,
    loads: [{ from_m, to_m: from_m + bed_m, pull_N_m: pull_N / bed_m }],
    takeUp: takeUpOf(line, loop, strand_N),
    friction: driveFriction(belt, line),
    beltMass_kg_m: beltMass_kg_m(belt, line),
    speed_m_s: line.speed_m_s,
  });
}

function takeUpOf(line: Line, loop: Loop, strand_N: number): Parameters<typeof tensionRoundLoop>[0]['takeUp'] {
  const { takeUpKind: kind, takeUpX, takeUpY } = line;
  if ((kind !== 'spring' && kind !== 'gravity') || loop.takeUp < 0) return { kind: 'screw', tension_N: strand_N };
  const force_N = line.takeUpForce_N ?? 2 * strand_N * Math.sin(loop.takeUpWrap_rad / 2);
  return { kind, pulley: loop.takeUp, force_N, direction: [takeUpX, takeUpY] };
}

function pullAtSlip(
  belt: Belt,
  line: Line,
  round: TensionRoundLoop,
  mean_N: number,
  atSlip_N: number,
  pull_N: number,
): Quantity {
  if (round.pullAtSlip_N === null) return computed('force', atSlip_N);
  const row = {
    F0: mean_N,
    Fc: beltMass_kg_m(belt, line) * line.speed_m_s ** 2,
    E: Math.exp(driveFriction(belt, line) * round.driveWrap_rad),
    k: (mean_N - round.slack_N) / pull_N,
  };
  return computed('force', work(slipLimitedPullRow, row));
}

function driveShaftLoad(round: TensionRoundLoop): Quantity {
  const { tight_N, slack_N, driveWrap_rad } = round;
  return computed('force', work(shaftLoadRow, { T1: tight_N, T2: slack_N, w: driveWrap_rad }));
}

/** The pull at slip grows in proportion to the tension above the centrifugal one, so one division gives the answer. */
function elongationForNoSlip(
  belt: Belt,
  line: Line,
  marks: CardMarks,
  atSlip_N: number,
  pull_N: number,
): Pick<CardTension, 'elongationForNoSlip'> {
  const centrifugal_N = beltMass_kg_m(belt, line) * line.speed_m_s ** 2;
  const above_N = marks.strandTension.value - centrifugal_N;
  if (atSlip_N <= 0 || above_N <= 0) return {};
  const F = centrifugal_N + (above_N * pull_N) / atSlip_N;
  return {
    elongationForNoSlip: computed(
      'percent',
      work(elongationForTensionRow, { F, k1: belt.k1_N_mm_pct, b: line.width_m }),
    ),
  };
}

/** When to tighten again: from the two relaxation readings, else as the position says, else the usual visit. */
function retensionAfter(position: Position, belt: Belt): Quantity {
  const { relaxationAt100s: r1, relaxationAt500s: r2 } = belt;
  if (r1 !== undefined && r2 !== undefined && r2 < r1 && retensionShare < r2) {
    return computed('days', work(retensionDaysRow, { r1, r2, t1: 100, t2: 500, r: retensionShare }));
  }
  const { retensionAfter_days } = position;
  if (retensionAfter_days === undefined) return example('days', usualRetension_days, [1, usualRetension_days]);
  return given('days', retensionAfter_days, position, 'retensionAfter_days');
}
