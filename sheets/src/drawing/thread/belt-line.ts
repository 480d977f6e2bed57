import { at, type Point, rounded } from '../shapes.ts';
import type { DrawnPulley } from './layout.ts';

/** The belt as drawn: straight strands from pulley i to i + 1, and the whole line as one path. */
export interface BeltLine {
  readonly strands: readonly (readonly [Point, Point])[];
  readonly d: string;
}

/** The belt stands off the pulley's ring by this much, so that both can be seen. */
export const beltOffset = 1.3;

/**
 * The straight strand between two pulleys of the drawing. With radii signed by the side on which the belt
 * passes, the strand's direction differs from that of the centres by asin((r2 - r1) / distance).
 */
function strand(from: DrawnPulley, to: DrawnPulley): readonly [Point, Point] {
  const signed = (pulley: DrawnPulley): number => (pulley.turn === 'left' ? 1 : -1) * (pulley.r + beltOffset);
  const [dx, dy] = [to.centre.x - from.centre.x, -(to.centre.y - from.centre.y)];
  const distance = Math.hypot(dx, dy);
  const sine = (signed(to) - signed(from)) / distance;
  if (!(Math.abs(sine) < 1)) return [from.centre, to.centre];
  const angle = Math.atan2(dy, dx) - Math.asin(sine);
  const touch = (pulley: DrawnPulley): Point => ({
    x: pulley.centre.x + signed(pulley) * Math.sin(angle),
    y: pulley.centre.y + signed(pulley) * Math.cos(angle),
  });
  return [touch(from), touch(to)];
}

function arc(pulley: DrawnPulley, from: Point, to: Point): string {
  const angle = (point: Point): number => Math.atan2(-(point.y - pulley.centre.y), point.x - pulley.centre.x);
  const turned = (angle(to) - angle(from)) * (pulley.turn === 'left' ? 1 : -1);
  const wrap = ((turned % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI);
  const r = rounded(pulley.r + beltOffset);
  return `A${r} ${r} 0 ${wrap > Math.PI && wrap < 6.2 ? 1 : 0} ${pulley.turn === 'left' ? 0 : 1} ${at(to)}`;
}

/** The closed line of the belt round its pulleys, in travel order. */
export function beltLine(pulleys: readonly DrawnPulley[]): BeltLine {
  const strands = pulleys.map((pulley, i) => strand(pulley, pulleys[(i + 1) % pulleys.length] ?? pulley));
  const parts = strands.map(([start, end], i) => {
    const next = (i + 1) % pulleys.length;
    const [pulley, leave] = [pulleys[next], strands[next]?.[0]];
    const line = `${i === 0 ? `M${at(start)} ` : ''}L${at(end)}`;
    return pulley && leave ? `${line} ${arc(pulley, end, leave)}` : line;
  });
  return { strands, d: `${parts.join(' ')} Z` };
}
