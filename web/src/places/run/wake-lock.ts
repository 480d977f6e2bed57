import { useEffect, useState } from 'react';

/** Whether the screen stays on: `none` where the browser cannot, `off` where it was refused. */
export type Awake = 'on' | 'off' | 'none';

/** Keeps the screen on; asks again whenever the page is seen, for the browser lets go when it is put away. */
export function useWakeLock(wanted: boolean): Awake {
  const [awake, setAwake] = useState<Awake>(() => (lockOfScreen() === undefined ? 'none' : 'off'));
  useEffect(() => {
    const screen = lockOfScreen();
    if (!wanted || screen === undefined) return undefined;
    let held: WakeLockSentinel | undefined;
    let over = false;
    const ask = async () => {
      if (document.visibilityState !== 'visible' || (held !== undefined && !held.released)) return;
      const got = await screen.request('screen').catch(() => undefined);
      if (over) return void got?.release();
      held = got;
      got?.addEventListener('release', () => setAwake('off'));
      setAwake(got === undefined ? 'off' : 'on');
    };
    void ask();
    document.addEventListener('visibilitychange', ask);
    return () => {
      over = true;
      document.removeEventListener('visibilitychange', ask);
      void held?.release();
    };
  }, [wanted]);
  return awake;
}

// Only a page from a secure address has it, and not every browser.
function lockOfScreen(): WakeLock | undefined {
  return (navigator as { readonly wakeLock?: WakeLock }).wakeLock;
}
