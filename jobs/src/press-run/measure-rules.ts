import type { Kind } from '@loopwright/engine/worked';
import type { RunMeasure } from '@loopwright/records/run';

interface MeasureRule {
  readonly kind: Kind;
  /** Between which a reading is possible at all, SI. */
  readonly least: number;
  readonly most: number;
  /** One press of the stepper. */
  readonly step: number;
  /** Where the stepper starts while nobody expects anything. */
  readonly start: number;
  /** Number of the card that says what is expected. */
  readonly expected?: string;
  /** Further off than this it stays in the record as a deviation. Common practice, no source. */
  readonly tolerance?: number;
}

/** What can be read in a run: one row a measure. */
export const measureRules: Readonly<Record<RunMeasure, MeasureRule>> = {
  'take-up-before': { kind: 'shortLength', least: 0, most: 20, step: 0.001, start: 0, expected: 'take-up-stands' },
  'square-length': {
    kind: 'length',
    least: 0.1,
    most: 10_000,
    step: 0.001,
    start: 1,
    expected: 'square-length',
    tolerance: 0.002,
  },
  'tip-to-tip': {
    kind: 'length',
    least: 0.1,
    most: 10_000,
    step: 0.001,
    start: 1,
    expected: 'tip-to-tip',
    tolerance: 0.002,
  },
  'marks-before': {
    kind: 'shortLength',
    least: 0.1,
    most: 10,
    step: 0.0005,
    start: 2,
    expected: 'marks-before',
    tolerance: 0.001,
  },
  'marks-after': {
    kind: 'shortLength',
    least: 0.1,
    most: 11,
    step: 0.0005,
    start: 2,
    expected: 'marks-after',
    tolerance: 0.001,
  },
  mains: { kind: 'voltage', least: 80, most: 500, step: 1, start: 230, expected: 'mains', tolerance: 23 },
  air: { kind: 'temperature', least: -30, most: 60, step: 1, start: 20, expected: 'air' },
  'gauge-pressure': {
    kind: 'pressure',
    least: 0,
    most: 2_000_000,
    step: 10_000,
    start: 200_000,
    expected: 'gauge-pressure',
    tolerance: 20_000,
  },
  bow: { kind: 'shortLength', least: 0, most: 0.05, step: 0.0005, start: 0, tolerance: 0.002 },
  'edge-step': { kind: 'shortLength', least: 0, most: 0.05, step: 0.0001, start: 0, tolerance: 0.0005 },
  'thickness-step': { kind: 'shortLength', least: 0, most: 0.01, step: 0.0001, start: 0, tolerance: 0.0001 },
  resistance: { kind: 'resistance', least: 0, most: 1e15, step: 1e6, start: 1e6 },
  'take-up-after': { kind: 'shortLength', least: 0, most: 20, step: 0.001, start: 0, expected: 'take-up-set' },
  'roll-left': { kind: 'length', least: 0, most: 10_000, step: 0.1, start: 0, expected: 'roll-left' },
};
