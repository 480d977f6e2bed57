import { example, type Quantity } from '../quantity.ts';
import type { PressCycle } from './press-cycle.ts';
import type { NoCycle } from './run-cycle.ts';

/** What a cycle warns of; the grade has its own words. */
export const cycleWarningCodes = [
  'no-cycle',
  'press-late',
  'outlet-overloaded',
  'outlet-unknown',
  'splice-not-good',
  'edge-not-good',
  'mains-too-low',
  'moisture-not-known',
] as const;
export type CycleWarningCode = (typeof cycleWarningCodes)[number];

export interface CycleWarning {
  readonly code: CycleWarningCode;
  readonly level: 'stop' | 'care' | 'note';
  readonly data: Readonly<Record<string, Quantity | string | number>>;
}

/** A ramp this much longer is worth a word, and a better lead. Common practice, no source. */
const late_s = 30;

type Data = CycleWarning['data'];
const warn = (code: CycleWarningCode, level: CycleWarning['level'], data: Data = {}): CycleWarning[] => [
  { code, level, data },
];

/**
 * What a person must know of a press cycle beside its numbers.
 *
 * @param cycle - the cycle, or why there is none
 * @param press - name of the press
 */
export function cycleWarnings(cycle: PressCycle | NoCycle, press: string): readonly CycleWarning[] {
  if (cycle.status === 'none') return warn('no-cycle', 'care', { press });
  return [...outlet(cycle, press), ...late(cycle, press), ...grades(cycle)];
}

function late({ delay, volts, lead, wholeRange }: PressCycle, press: string): CycleWarning[] {
  return [
    ...(delay.value < late_s ? [] : warn('press-late', 'care', { press, delay, volts, lead })),
    ...(wholeRange ? [] : warn('mains-too-low', 'care', { press })),
  ];
}

function outlet({ current, fed }: PressCycle, press: string): CycleWarning[] {
  const { limit } = fed;
  if (limit === undefined) return warn('outlet-unknown', 'note', { press, current });
  return current.value <= limit.value ? [] : warn('outlet-overloaded', 'stop', { press, current, limit });
}

function grades({ middle, edge, moistureKnown }: PressCycle): CycleWarning[] {
  const off = edge && { grade: edge.grade, off: example('temperatureDifference', Math.abs(edge.off.value)) };
  const way = edge && edge.off.value < 0 ? 'cooler' : 'hotter';
  return [
    ...(middle.grade === 'good' ? [] : warn('splice-not-good', 'care', { grade: middle.grade })),
    ...(off === undefined || off.grade === 'good' || off.grade === middle.grade
      ? []
      : warn('edge-not-good', 'care', { ...off, way })),
    ...(moistureKnown ? [] : warn('moisture-not-known', 'note')),
  ];
}
