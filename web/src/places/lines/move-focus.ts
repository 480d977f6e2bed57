import type { KeyboardEvent } from 'react';

const steps: Readonly<Record<string, number>> = { ArrowDown: 1, ArrowRight: 1, ArrowUp: -1, ArrowLeft: -1 };

/** The targets of a list, in the order in which they stand. */
export function targetsIn(list: Element | null): readonly HTMLElement[] {
  return list === null ? [] : [...list.querySelectorAll<HTMLElement>('a')];
}

/** Arrow keys go from one position to the next; Home and End to the first and the last. */
export function moveByArrows(event: KeyboardEvent<HTMLElement>): void {
  const targets = targetsIn(event.currentTarget.closest('[data-list]'));
  const here = targets.indexOf(event.currentTarget);
  const there = { Home: 0, End: targets.length - 1 }[event.key] ?? here + (steps[event.key] ?? 0);
  if (there === here || here < 0) return;
  event.preventDefault();
  targets[there]?.focus();
}
