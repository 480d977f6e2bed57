import type { Plant } from '../plant.ts';
import type { Line } from '../things/line.ts';
import type { Position } from '../things/position.ts';
import { type LedLines, pulleysOf } from './led-lines.ts';
import { each, type Fault, type PlantCheck } from './plant-check.ts';

/** Whether a line's take-up is described without contradiction. A stroke of 0 means that nobody has said it. */
export const takeUpChecks: readonly PlantCheck[] = [
  {
    code: 'take-up-reference-over-stroke',
    level: 'error',
    reads: ['lines'],
    find: each('lines', ({ takeUpStroke_m: max, takeUpReference_m: value }) =>
      max > 0 && value > max ? { field: 'takeUpReference_m', data: { kind: 'length', value, max } } : undefined,
    ),
  },
  {
    code: 'take-up-over-stroke',
    level: 'error',
    reads: ['positions', 'lines'],
    find: each('positions', overStroke),
  },
  {
    code: 'take-up-stroke-missing',
    level: 'care',
    reads: ['lines'],
    find: each('lines', ({ takeUpKind, takeUpStroke_m }) =>
      takeUpKind !== 'none' && takeUpStroke_m === 0 ? { field: 'takeUpStroke_m', data: {} } : undefined,
    ),
  },
  {
    code: 'take-up-direction-missing',
    level: 'error',
    reads: ['lines'],
    find: each('lines', ({ takeUpKind, takeUpX, takeUpY }) =>
      takeUpKind !== 'none' && takeUpX === 0 && takeUpY === 0 ? { field: 'takeUpX', data: {} } : undefined,
    ),
  },
  {
    code: 'take-up-force-missing',
    level: 'care',
    reads: ['lines'],
    find: each('lines', ({ takeUpKind: value, takeUpForce_N }) =>
      (value === 'spring' || value === 'gravity') && takeUpForce_N === undefined
        ? { field: 'takeUpForce_N', data: { value } }
        : undefined,
    ),
  },
  { code: 'take-ups-not-one', level: 'error', reads: ['lines', 'pulleys', 'surveys'], find: each('lines', takeUps) },
  {
    code: 'take-up-not-expected',
    level: 'care',
    reads: ['lines', 'pulleys', 'surveys'],
    find: each('lines', notExpected),
  },
];

function overStroke({ line, takeUp_m: value }: Position, { lines }: Plant): Fault {
  const max = lines[line]?.takeUpStroke_m ?? 0;
  if (value === undefined || max === 0 || value <= max) return undefined;
  return { field: 'takeUp_m', data: { kind: 'length', value, max, other: line } };
}

function takeUps({ id, takeUpKind }: Line, _: Plant, led: LedLines): Fault {
  const all = pulleysOf(led, id);
  const value = all.filter(({ role }) => role === 'take-up').length;
  return all.length === 0 || takeUpKind === 'none' || value === 1 ? undefined : { data: { value } };
}

function notExpected({ id, takeUpKind }: Line, _: Plant, led: LedLines): Fault {
  if (takeUpKind !== 'none') return undefined;
  const other = pulleysOf(led, id).find(({ role }) => role === 'take-up')?.id;
  return other === undefined ? undefined : { field: 'takeUpKind', data: { value: takeUpKind, other } };
}
