import { indexInRange, inRange } from '../in-range.ts';
import { Refusal } from '../refusal.ts';
import type { BeltPath, Tangent } from './path.ts';

/**
 * How fast the path grows as one pulley is moved along a direction, all others fixed.
 *
 * dL/dd = e . (t_in - t_out); e = unit direction, t = headings of the spans before and after the pulley.
 * Along the bisector of the wrap this is 2*sin(w/2): 2 for half a turn. The same figure times the belt tension is
 * the force that holds the pulley.
 *
 * @param path - a path from `beltPath` [m]
 * @param index - the pulley, counted from 0 [1]
 * @param direction - x and y of the displacement [1], any length but 0
 * @returns growth of the path per displacement [m/m], -2 to 2
 * @throws not-finite, out-of-range, no-direction
 * @validity at the given position: first derivative
 * @source derived: differentiation of the path length
 * @verified T2 G take-up derivative
 */
export function lengthPerDisplacement(path: BeltPath, index: number, direction: readonly [number, number]): number {
  const count = path.tangents.length;
  indexInRange(index, 'index', count);
  const limits = { min: -Number.MAX_VALUE, max: Number.MAX_VALUE, unit: '1' };
  const [x, y] = direction.map((value, i) => inRange(value, `direction[${i}]`, limits)) as [number, number];
  const size = Math.hypot(x, y);
  if (size === 0) throw new Refusal('no-direction', 'direction', { value: 0 });
  const [inX, inY] = heading(path.tangents[(index + count - 1) % count] as Tangent);
  const [outX, outY] = heading(path.tangents[index] as Tangent);
  return (x / size) * (inX - outX) + (y / size) * (inY - outY);
}

function heading({ from, to }: Tangent): [number, number] {
  const dx = to[0] - from[0];
  const dy = to[1] - from[1];
  const span = Math.hypot(dx, dy);
  return [dx / span, dy / span];
}
