import { indexInRange, inRange } from '../in-range.ts';
import { Refusal } from '../refusal.ts';
import type { BeltPath, Tangent } from './path.ts';
import { unitVector } from './take-up-travel.ts';
import type { ForceTakeUp } from './tension-round-loop-form.ts';

/** Where a take-up pulley sits on the way round the loop, seen from the drive. */
export type TakeUpSide = 'slack' | 'tight' | 'drive';

export interface SlackFromForceInput {
  readonly takeUp: ForceTakeUp;
  readonly side: TakeUpSide;
  readonly pull_N: number;
}

// Below this, the force hardly pulls the belt at all and the tension it would need has no meaning.
const smallestGrip = 0.01;

/**
 * Tension of the slack side that a constant take-up force sets, by the balance of forces along its slide.
 *
 * Idle pulley: W = T e . (t_in - t_out), so T = W / (2 sin(w/2)) along the bisector. Drive on the slide:
 * W = (T2 + P) e . t_in - T2 e . t_out.
 *
 * @param path - a path from `beltPath` [m]
 * @param input.takeUp - pulley, force [N] 0 to 1e7, direction
 * @param input.side - side of the drive on which the take-up sits
 * @param input.pull_N - pull of the drive [N]
 * @returns tension of the slack side [N]; below 0 when the pull is more than the force can hold
 * @throws not-finite, out-of-range, no-direction, take-up-shortens-loop
 * @validity at rest or slow belts: the centrifugal tension is left out
 * @source derived: force balance
 * @verified T4.1 gravity take-up
 */
export function slackFromTakeUpForce(path: BeltPath, input: SlackFromForceInput): number {
  const { takeUp, side, pull_N } = input;
  inRange(takeUp.force_N, 'takeUp.force_N', { min: 0, max: 1e7, unit: 'N' });
  const index = indexInRange(takeUp.pulley, 'takeUp.pulley', path.tangents.length);
  const inwards = heading(path.tangents[(index + path.tangents.length - 1) % path.tangents.length]);
  const outwards = heading(path.tangents[index]);
  const e = unitVector(takeUp.direction ?? defaultDirection(takeUp.kind, inwards, outwards), 'takeUp.direction');
  const grip = dot(e, inwards) - dot(e, outwards);
  if (grip < smallestGrip) {
    throw new Refusal('take-up-shortens-loop', 'takeUp.direction', {
      value: grip,
      min: smallestGrip,
      max: 2,
      unit: '1',
    });
  }
  if (side === 'slack') return takeUp.force_N / grip;
  if (side === 'tight') return takeUp.force_N / grip - pull_N;
  return (takeUp.force_N - pull_N * dot(e, inwards)) / grip;
}

type Vector = readonly [number, number];

function defaultDirection(kind: ForceTakeUp['kind'], inwards: Vector, outwards: Vector): Vector {
  return kind === 'gravity' ? [0, -1] : [inwards[0] - outwards[0], inwards[1] - outwards[1]];
}

function heading(tangent: Tangent | undefined): Vector {
  if (tangent === undefined) return [0, 0];
  const dx = tangent.to[0] - tangent.from[0];
  const dy = tangent.to[1] - tangent.from[1];
  const span = Math.hypot(dx, dy);
  return [dx / span, dy / span];
}

function dot(a: Vector, b: Vector): number {
  return a[0] * b[0] + a[1] * b[1];
}
