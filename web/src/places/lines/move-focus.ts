import type { KeyboardEvent } from 'react';

const steps: Readonly<Record<string, number>> = { ArrowDown: 1, ArrowRight: 1, ArrowUp: -1, ArrowLeft: -1 };
const ends: Readonly<Record<string, number>> = { Home: 0, End: -1 };

/** The targets of a list, in the order in which they stand; a part that is not drawn yet is one of them. */
export function targetsIn(list: Element | null): readonly HTMLElement[] {
  return list === null ? [] : [...list.querySelectorAll<HTMLElement>('a, .undrawn')];
}

/** Arrow keys go from one position to the next; Home and End to the first and the last. */
export function moveByArrows(event: KeyboardEvent<HTMLElement>): void {
  const list = event.currentTarget.closest('[data-list]');
  const targets = targetsIn(list);
  const here = targets.indexOf(event.currentTarget);
  if (here < 0) return;
  const end = ends[event.key];
  const there =
    end === undefined ? here + (steps[event.key] ?? 0) : targets.indexOf(targets.at(end) ?? event.currentTarget);
  if (there === here) return;
  event.preventDefault();
  targets[there]?.focus();
  // A part that was not drawn leads to its nearer end; the far end of the list may be its other one.
  if (end !== undefined) targetsIn(list).at(end)?.focus();
}
