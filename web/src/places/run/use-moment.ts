import type { RunNow } from '@loopwright/jobs/press-run';
import { useEffect, useState } from 'react';
import type { PlantStore, StoreState } from '../../store/plant-store.ts';
import { runNow } from '../../store/use-runs.ts';

const second_ms = 1000;

/**
 * Both clocks now, read anew each second and whenever the page is seen again. Nothing is counted in ticks: a page that
 * slept shows the right time at its next look.
 */
export function useMoment(store: PlantStore, state: StoreState): RunNow {
  const [now, setNow] = useState(() => runNow(store, state));
  useEffect(() => {
    const look = () => setNow(runNow(store, state));
    look();
    const timer = setInterval(look, second_ms);
    document.addEventListener('visibilitychange', look);
    return () => {
      clearInterval(timer);
      document.removeEventListener('visibilitychange', look);
    };
  }, [store, state]);
  return now;
}
