import { useEffect, useState } from 'react';

const fresh_ms = 60_000;

/** The moment for which everything is computed: when the page was opened, or looked at again after a while. */
export function useNow(): string {
  const [now, setNow] = useState(() => new Date().toISOString());
  useEffect(() => {
    const lookAgain = () => {
      const stale = Date.now() - Date.parse(now) > fresh_ms;
      if (document.visibilityState === 'visible' && stale) setNow(new Date().toISOString());
    };
    document.addEventListener('visibilitychange', lookAgain);
    return () => document.removeEventListener('visibilitychange', lookAgain);
  }, [now]);
  return now;
}
