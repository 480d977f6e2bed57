import { useEffect } from 'react';

/** Held by every tab in which something goes on, so that the other tabs know. */
const lockName = 'loopwright.busy';

const going = new Set<symbol>();
const listeners = new Set<() => void>();

/** Says that something begins which a reload would disturb: a form with unsaved entries, a run. Returns its end. */
export function beginBusy(): () => void {
  const mark = Symbol(lockName);
  let release = () => {};
  const end = new Promise<void>((resolve) => {
    release = resolve;
  });
  going.add(mark);
  // Without the lock the other tabs do not know; this one does.
  void locks()
    ?.request(lockName, { mode: 'shared' }, () => end)
    .catch(() => undefined);
  tell();
  return () => {
    if (!going.delete(mark)) return;
    release();
    tell();
  };
}

/** True while something goes on in this tab. */
export function isBusy(): boolean {
  return going.size > 0;
}

/** True while something goes on in any tab of this browser that shows the app. */
export async function isAnyTabBusy(): Promise<boolean> {
  const held = (await locks()?.query())?.held ?? [];
  return isBusy() || held.some(({ name }) => name === lockName);
}

export function onBusyChange(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

/** Busy as long as the component is shown and `active`. */
export function useBusy(active: boolean): void {
  useEffect(() => (active ? beginBusy() : undefined), [active]);
}

function tell(): void {
  for (const listener of listeners) listener();
}

// Only a page from a secure address has locks.
function locks(): LockManager | undefined {
  return (navigator as { readonly locks?: LockManager }).locks;
}
