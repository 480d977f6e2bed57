import { momentAfter } from './run-clock.ts';
import type { RunState } from './run-state.ts';

const day_s = 86_400;

/** The day of the next visit, counted from when the belt was tensioned; undefined before that. */
export function retensionDay({ settled, started }: RunState): string | undefined {
  const after_days = started.numbers.find(({ name }) => name === 'retension-after')?.value;
  const tensioned = settled['final-tension'];
  if (after_days === undefined || tensioned === undefined) return undefined;
  return momentAfter(tensioned.at, after_days * day_s).slice(0, 10);
}
