import type { Plant } from '../plant.ts';
import type { Pulley } from '../things/line.ts';
import { each, type Fault, type Finding, type PlantCheck } from './plant-check.ts';

/** Whether pulleys fit their line, whatever way the belt goes round them. */
export const pulleyChecks: readonly PlantCheck[] = [
  {
    code: 'belt-wider-than-pulley',
    level: 'care',
    reads: ['pulleys', 'lines'],
    find: each('pulleys', ({ line, faceWidth_m: value }: Pulley, { lines }): Fault => {
      const min = lines[line]?.width_m;
      if (value === undefined || min === undefined || value >= min) return undefined;
      return { field: 'faceWidth_m', data: { kind: 'length', value, min, other: line } };
    }),
  },
  { code: 'duplicate-order', level: 'error', reads: ['pulleys'], find: duplicateOrders },
];

function duplicateOrders({ pulleys }: Plant): readonly Finding[] {
  const first = new Map<string, string>();
  return Object.values(pulleys).flatMap(({ id, line, order }) => {
    const other = first.get(`${line} ${order}`);
    if (other === undefined) first.set(`${line} ${order}`, id);
    return other === undefined
      ? []
      : [{ kind: 'pulleys' as const, id, field: 'order', data: { value: order, other, line } }];
  });
}
