/** What a page can ask about time, and what tells it that it was put away. Handed in, so that tests can turn it. */
export interface PageTime {
  /** Wall clock [ms]. */
  readonly now: () => number;
  /** Steady clock of the browser [ms]; on some systems it stands still while the device sleeps. */
  readonly ticks: () => number;
  readonly isHidden: () => boolean;
  readonly onVisibility: (look: () => void) => void;
}

/** A device that was put away for less than this slept through nothing worth counting. */
const smallest_ms = 2000;

/**
 * A clock that goes on while the device sleeps: what the wall clock went on beyond the browser's steady one while the
 * page was hidden is added. A wall clock that somebody sets while the page is seen moves nothing; one that is set forward
 * while nobody sees the page cannot be told from sleep.
 *
 * @param time - of the page
 * @returns time since the page started [ms], never set back
 */
export function steadyClock({ now, ticks, isHidden, onVisibility }: PageTime): () => number {
  let slept_ms = 0;
  let hidden: { readonly wall: number; readonly ticks: number } | undefined;
  const away = (): number => {
    if (hidden === undefined) return 0;
    const beyond_ms = now() - hidden.wall - (ticks() - hidden.ticks);
    return beyond_ms > smallest_ms ? beyond_ms : 0;
  };
  onVisibility(() => {
    slept_ms += away();
    hidden = isHidden() ? { wall: now(), ticks: ticks() } : undefined;
  });
  let last = 0;
  return () => {
    last = Math.max(last, ticks() + slept_ms + away());
    return last;
  };
}

/** The clock of this page. */
export function pageClock(): () => number {
  return steadyClock({
    now: () => Date.now(),
    ticks: () => performance.now(),
    isHidden: () => document.visibilityState === 'hidden',
    onVisibility: (look) => {
      document.addEventListener('visibilitychange', look);
    },
  });
}
