import { appendFileSync, mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect } from 'vitest';

/**
 * What an expected number rests on. `printed`: a publication shows it (tolerance = half its last digit);
 * `derived`: exact solution or formula; `independent`: another program; `practice`: common practice, no source.
 */
export type Evidence = 'printed' | 'derived' | 'independent' | 'practice';

/** One line of the validation book: a number of ours held against one from outside. */
export interface Check {
  /** Page of the book: `loop`, `splice` ... */
  readonly topic: string;
  /** Stable id, sorted on the page: `T1.1 wrap of the small pulley`. */
  readonly id: string;
  readonly source: string;
  readonly evidence: Evidence;
  readonly inputs: string;
  readonly unit: string;
  readonly published: number;
  readonly ours: number;
  readonly tolerance: number;
  /** Why this tolerance. */
  readonly why: string;
}

export const bookCache = join(import.meta.dirname, '../../.cache/validation');

/** Asserts that ours lies within the tolerance of the published number and enters the line in the validation book. */
export function checkAgainst(check: Check): void {
  mkdirSync(bookCache, { recursive: true });
  appendFileSync(join(bookCache, `${check.topic}.jsonl`), `${JSON.stringify(check)}\n`);
  expect(
    Math.abs(check.ours - check.published),
    `${check.id}: ours ${check.ours}, published ${check.published} +/- ${check.tolerance}`,
  ).toBeLessThanOrEqual(check.tolerance);
}
