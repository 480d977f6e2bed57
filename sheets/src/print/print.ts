import type { Drawing } from '../page/page.ts';

/** What is printed: one drawing a sheet, one unit a point, and what the file says of itself. All of it plain data. */
export interface Print {
  /** All of one size, at least one. */
  readonly sheets: readonly Drawing[];
  readonly title: string;
  readonly language: string;
  /** ISO text; stands as creation date. */
  readonly now: string;
}
