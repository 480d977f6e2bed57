import { type ComponentType, useEffect, useState } from 'react';
import { useLocation } from 'wouter';
import { useAfterFirstPaint } from '../../offline/use-after-first-paint.ts';
import { useStore } from '../../store/use-store.tsx';
import { runAsked } from './run-address.ts';
import type { RunWatch as RunWatchNow } from './run-watch.tsx';

type Watch = ComponentType<Parameters<typeof RunWatchNow>[0]>;

/** Watches the runs under way; fetched after what people came for stands, and only where there has been a run. */
export function RunWatch() {
  const { store, state } = useStore();
  const stands = useAfterFirstPaint();
  const [path] = useLocation();
  const [Found, setFound] = useState<Watch>();
  const { size } = state;
  useEffect(() => {
    let wanted = stands && size > 0 && Found === undefined;
    const look = async () => {
      if (!wanted || (await store.runs()).length === 0) return;
      const { RunWatch: found } = await import('./run-watch.tsx');
      if (wanted) setFound(() => found);
    };
    // What cannot be fetched now is tried at the next entry.
    void look().catch(() => undefined);
    return () => {
      wanted = false;
    };
  }, [store, size, stands, Found]);
  const asked = runAsked(path);
  return Found === undefined ? null : <Found shown={asked.what === 'run' ? asked.run : undefined} />;
}
