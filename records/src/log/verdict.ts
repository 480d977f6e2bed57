/**
 * What can be wrong with a log, in the order in which it is looked for. The first failure is the verdict. Public
 * names: they keep their meaning for ever.
 */
export const verdicts = [
  'not-canonical',
  'bad-envelope',
  'wrong-plant',
  'wrong-device',
  'bad-signature',
  'sequence-gap',
  'broken-link',
  'bad-checkpoint',
  'truncated',
  'history-rewritten',
  'fork',
  'prefix',
  'ok',
] as const;
export type Verdict = (typeof verdicts)[number];

/** Where a log fails, and how. */
export interface Failure {
  readonly verdict: Exclude<Verdict, 'ok'>;
  /** Line, from 0; of a checkpoint its size; `truncated`: the size of the log. Missing where there is no number. */
  readonly at?: number;
  /** `truncated`: the size that a checkpoint witnesses. */
  readonly witnessed?: number;
  /** `bad-envelope`, `bad-checkpoint`: the field that is not as it must be, where it is one. */
  readonly field?: string;
}

/** What does not make a log wrong, but a person should know. */
export interface LogWarning {
  readonly code: 'clock-back' | 'not-witnessed';
  readonly at: number;
}
