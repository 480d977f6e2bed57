import { Refusal } from '../refusal.ts';
import { type BeltThread, facesOfLoop, threadBelt } from './belt-thread.ts';
import { checkClearance, crossesAtPulley } from './path-clearance.ts';
import { checkPathInput, type PathInput, type PathPulley, pulleyName } from './path-input.ts';

export type { BeltFace, BeltSection, PathInput, PathPulley } from './path-input.ts';

/** A span's touch points: where the belt leaves one pulley and reaches the next [m]. */
export interface Tangent {
  readonly from: readonly [x: number, y: number];
  readonly to: readonly [x: number, y: number];
}

/** A belt's closed path; element i belongs to pulley i, or to the span from it to the next. */
export interface BeltPath {
  /** Length of the neutral line. */
  readonly length_m: number;
  readonly spans_m: readonly number[];
  readonly wraps_rad: readonly number[];
  readonly neutralRadii_m: readonly number[];
  readonly dLength_dRadius: readonly number[];
  /** Revolutions: 1 counter-clockwise, -1 clockwise, 0 for a figure eight. */
  readonly turning: number;
  readonly tangents: readonly Tangent[];
}

// A belt on the wrong side of a pulley that it bends by less than a quarter turn shows as a wrap above this. A real
// pulley could only be wrapped so far if a neighbour stopped both spans at once, before they meet.
const missedWrap_rad = 1.5 * Math.PI;

/**
 * Path of a closed belt round circular pulleys: inextensible, in one plane, bending freely about its neutral line.
 *
 * L = sum(l_i) + sum(r_i * w_i), with l = span between touch points, r = radius to the neutral line, w = wrap.
 * Without `face` the running face is inside the loop; in a crossed belt, which is twisted between two pulleys that
 * turn opposite ways, it touches every pulley.
 *
 * @param input - pulleys in travel order and belt section [m]; coordinates within 1e6 m, radii up to 1e4 m, 2 to 20,000 pulleys
 * @returns length, spans, neutral radii, touch points [m], wraps [rad], turning number [1]
 * @throws too-few-pulleys, not-finite, out-of-range, no-tangent, pulley-not-touched, pulleys-overlap, belt-hits-pulley, belt-crosses-itself, belt-not-crossed, face-contradicts-turn
 * @validity pulleys with parallel axes; no sag, no bending stiffness
 * @source derived: common tangents of two circles; turning number of a simple closed curve
 * @verified T2 A two equal, T2 G live-roller loop, T2 H with t 2.0, y 0.6, T2 X missed idler
 */
export function beltPath(input: PathInput): BeltPath {
  checkPathInput(input);
  const thread = input.crossed ? threadCrossed(input) : threadLoop(input);
  checkContact(thread, input);
  checkCrossing(thread, input);
  checkFaces(thread, input);
  return pathOf(thread);
}

/** The sense of a loop follows from its radii, which follow from the sense: the one that closes on itself is right. */
function threadLoop(input: PathInput): BeltThread {
  const { pulleys } = input;
  const likely = likelySense(pulleys);
  const first = threadBelt(input, facesOfLoop(pulleys, likely));
  if (first.turning === likely) return first;
  const second = threadBelt(input, facesOfLoop(pulleys, -likely));
  const thread = second.turning === -likely ? second : first;
  checkTangents(thread, pulleys);
  return thread;
}

function threadCrossed(input: PathInput): BeltThread {
  const thread = threadBelt(
    input,
    input.pulleys.map((pulley) => pulley.face ?? 'running'),
  );
  checkTangents(thread, input.pulleys);
  return thread;
}

/** Sign of the area within the centres; where they lie in line, the turn of most pulleys. */
function likelySense(pulleys: readonly PathPulley[]): 1 | -1 {
  let area = 0;
  let lefts = 0;
  let before = pulleys[pulleys.length - 1];
  for (const pulley of pulleys) {
    if (before) area += before.x_m * pulley.y_m - pulley.x_m * before.y_m;
    lefts += pulley.turn === 'left' ? 1 : -1;
    before = pulley;
  }
  return (area === 0 ? lefts : area) < 0 ? -1 : 1;
}

function checkTangents({ kernel, xs, ys, signedRadii_m }: BeltThread, pulleys: readonly PathPulley[]): void {
  const from = kernel.spans_m.findIndex((span) => !(span > 0));
  if (from < 0) return;
  const to = (from + 1) % pulleys.length;
  const [named, other] = from < to ? [to, from] : [from, to];
  throw new Refusal('no-tangent', `pulleys[${named}]`, {
    pulley: pulleyName(pulleys, named),
    other: pulleyName(pulleys, other),
    value: Math.hypot((xs[to] as number) - (xs[from] as number), (ys[to] as number) - (ys[from] as number)),
    min: Math.abs((signedRadii_m[from] as number) - (signedRadii_m[to] as number)),
    above: true,
    unit: 'm',
  });
}

/** Refuses pulleys that the belt would have to go round nearly fully to touch them on the side given. */
function checkContact(thread: BeltThread, { pulleys, crossed }: PathInput): void {
  const closes = Math.abs(thread.turning) === (crossed ? 0 : 1);
  const wraps = thread.kernel.wraps_rad;
  const missed: number[] = [];
  wraps.forEach((wrap, i) => {
    if (wrap > missedWrap_rad && (!closes || crossesAtPulley(thread, i))) missed.push(i);
  });
  missed.sort((a, b) => (wraps[b] as number) - (wraps[a] as number));
  const [worst, ...others] = missed;
  if (worst === undefined) return;
  throw new Refusal('pulley-not-touched', `pulleys[${worst}]`, {
    pulley: pulleyName(pulleys, worst),
    value: wraps[worst] as number,
    max: missedWrap_rad,
    unit: 'rad',
    ...(others.length > 0 && {
      missed: missed.length,
      others: others
        .slice(0, 5)
        .map((i) => pulleyName(pulleys, i))
        .join(', '),
    }),
  });
}

function checkCrossing(thread: BeltThread, { pulleys, crossed }: PathInput): void {
  const crossings = checkClearance(thread, pulleys, crossed ? 1 : 0);
  if (crossed && crossings === 0) throw new Refusal('belt-not-crossed', 'crossed', { turning: thread.turning });
  if (Math.abs(thread.turning) !== (crossed ? 0 : 1)) throw tangledRefusal(thread, pulleys);
}

/** A curve with the wrong turning number crosses itself somewhere: at the largest wrap when no two spans show it. */
function tangledRefusal({ kernel, turning }: BeltThread, pulleys: readonly PathPulley[]): Refusal {
  const most = kernel.wraps_rad.reduce((best, wrap, i, all) => (wrap > (all[best] as number) ? i : best), 0);
  return new Refusal('belt-crosses-itself', `pulleys[${most}]`, { pulley: pulleyName(pulleys, most), turning });
}

function checkFaces({ faces }: BeltThread, { pulleys, crossed }: PathInput): void {
  if (crossed) return;
  pulleys.forEach(({ face, turn }, i) => {
    const expected = faces[i] as string;
    if (face === undefined || face === expected) return;
    const data = { pulley: pulleyName(pulleys, i), value: face, expected, turn };
    throw new Refusal('face-contradicts-turn', `pulleys[${i}].face`, data);
  });
}

function pathOf(thread: BeltThread): BeltPath {
  const { kernel, length_m, turning } = thread;
  const { fromX, fromY, toX, toY } = thread.spans;
  const wraps_rad = Array.from(kernel.wraps_rad);
  return {
    length_m,
    spans_m: Array.from(kernel.spans_m),
    wraps_rad,
    neutralRadii_m: Array.from(thread.signedRadii_m, Math.abs),
    dLength_dRadius: [...wraps_rad],
    turning,
    tangents: wraps_rad.map((_, i) => ({
      from: [fromX[i] as number, fromY[i] as number],
      to: [toX[i] as number, toY[i] as number],
    })),
  };
}
