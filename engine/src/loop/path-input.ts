import { inRange } from '../in-range.ts';
import { Refusal } from '../refusal.ts';

/** The side of the belt that touches a pulley: the running face (pulley side), or the back. */
export type BeltFace = 'running' | 'back';

/** A pulley, snub or take-up in the belt's way. x to the right, y up. */
export interface PathPulley {
  readonly id?: string | undefined;
  readonly x_m: number;
  readonly y_m: number;
  /** Radius of the bare surface, not of the neutral line. */
  readonly surfaceRadius_m: number;
  /** `left`: the belt turns counter-clockwise round it. */
  readonly turn: 'left' | 'right';
  readonly face?: BeltFace | undefined;
}

/** A belt's cross-section, as far as its path depends on it. */
export interface BeltSection {
  readonly thickness_m: number;
  readonly neutralLineFromRunningFace_m: number;
}

/** A layout: the pulleys in travel order and the belt. */
export interface PathInput {
  readonly pulleys: readonly PathPulley[];
  readonly belt: BeltSection;
  /** True for a belt that crosses itself once, as a figure eight. */
  readonly crossed?: boolean | undefined;
}

// Far beyond any conveyor: the limits keep sums and squares exact enough, they are not advice.
const coordinate = { min: -1e6, max: 1e6, unit: 'm' } as const;
const radius = { min: 0, max: 1e4, unit: 'm', above: true } as const;
const thickness = { min: 0, max: 10, unit: 'm' } as const;
const pulleyCount = { min: 2, max: 20_000, unit: '1' } as const;

/**
 * How a refusal names a pulley: by its id, or by its index when it has none.
 *
 * @param pulleys - pulleys in travel order
 * @param index - which one, counted from 0 [1]
 * @returns id or index [1]
 * @source derived: plain look-up
 */
export function pulleyName(pulleys: readonly PathPulley[], index: number): string | number {
  return pulleys[index]?.id ?? index;
}

/**
 * Lets a layout through whose numbers are all finite and inside their limits; says nothing of its geometry.
 *
 * @param input - pulleys and belt [m]
 * @returns nothing
 * @throws too-few-pulleys, not-finite, out-of-range
 * @source derived: plain comparison
 */
export function checkPathInput({ pulleys, belt }: PathInput): void {
  if (pulleys.length < pulleyCount.min) {
    throw new Refusal('too-few-pulleys', 'pulleys', { value: pulleys.length, ...pulleyCount });
  }
  inRange(pulleys.length, 'pulleys', pulleyCount);
  inRange(belt.thickness_m, 'belt.thickness_m', thickness);
  const neutral = { min: 0, max: belt.thickness_m, unit: 'm' };
  inRange(belt.neutralLineFromRunningFace_m, 'belt.neutralLineFromRunningFace_m', neutral);
  pulleys.forEach((pulley, index) => {
    checkPulley(pulley, index, pulleyName(pulleys, index));
  });
}

function checkPulley(pulley: PathPulley, index: number, name: string | number): void {
  try {
    inRange(pulley.x_m, `pulleys[${index}].x_m`, coordinate);
    inRange(pulley.y_m, `pulleys[${index}].y_m`, coordinate);
    inRange(pulley.surfaceRadius_m, `pulleys[${index}].surfaceRadius_m`, radius);
  } catch (error) {
    throw error instanceof Refusal ? new Refusal(error.code, error.path, { ...error.data, pulley: name }) : error;
  }
}
