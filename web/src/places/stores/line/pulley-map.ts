import type { Pulley } from '@loopwright/plant';
import type { Drawing, Shape } from '@loopwright/sheets';
import { circle, line, type Spot } from './sketch-shapes.ts';

const width = 260;
const tallest = 160;
const side = 18;
const leastRadius = 4;

/**
 * Pulleys where they stand, to one scale, without a belt; one may be marked as the one at fault. Very small ones are
 * drawn larger, so that they can be seen.
 *
 * @param pulleys - in travel order
 * @param marked - index of the one at fault
 * @param alt - words for whoever cannot see it
 */
export function pulleyMap(pulleys: readonly Pulley[], marked: number | undefined, alt: string): Drawing {
  const { scale, place, height } = fitted(pulleys);
  const shapes = pulleys.flatMap((pulley, i) => {
    const centre = place(pulley);
    const r = Math.max(leastRadius, (pulley.diameter_m / 2) * scale);
    return [...pulleyShapes(centre, r, i === marked), numberShape(centre, r, i + 1)];
  });
  return { id: 'pulley-map', alt, width, height, shapes };
}

function fitted(pulleys: readonly Pulley[]) {
  const reach = (pick: 'x_m' | 'y_m') => {
    const low = Math.min(...pulleys.map((pulley) => pulley[pick] - pulley.diameter_m / 2));
    const high = Math.max(...pulleys.map((pulley) => pulley[pick] + pulley.diameter_m / 2));
    return { low, size: Math.max(high - low, 1e-3), high };
  };
  const [x, y] = [reach('x_m'), reach('y_m')];
  const scale = Math.min((width - 2 * side) / x.size, tallest / y.size);
  const left = (width - x.size * scale) / 2;
  const place = ({ x_m, y_m }: Pulley): Spot => ({ x: left + (x_m - x.low) * scale, y: side + (y.high - y_m) * scale });
  return { scale, place, height: Math.round(2 * side + y.size * scale) };
}

function pulleyShapes(centre: Spot, r: number, isMarked: boolean): readonly Shape[] {
  if (!isMarked) return [circle(centre, r, 'ink', 'paper')];
  const far = r + 8;
  return [
    { ...circle(centre, r, 'stop', 'paper'), width: 2.4 },
    line(
      [
        { x: centre.x - far, y: centre.y - far },
        { x: centre.x + far, y: centre.y + far },
      ],
      'stop',
    ),
    line(
      [
        { x: centre.x - far, y: centre.y + far },
        { x: centre.x + far, y: centre.y - far },
      ],
      'stop',
    ),
  ];
}

function numberShape({ x, y }: Spot, r: number, number: number): Shape {
  return { shape: 'text', x, y: y - r - 5, text: String(number), size: 9, anchor: 'middle', bold: true, ink: 'ink' };
}
