import { type LastLook, type Meanwhile, type RunNow, type RunState, resumeRun } from '@loopwright/jobs/press-run';
import { useEffect, useRef, useState } from 'react';

const key = (run: string): string => `loopwright.run-look.${run}`;
/** Whoever looked away for less has missed nothing. */
const away_ms = 20_000;

/**
 * What happened in a run while nobody looked at this device: after a start of the page, and after it was put away.
 *
 * @param state - of the run
 * @param now - both clocks
 */
export function useMeanwhile(state: RunState, now: RunNow): Away {
  const [meanwhile, setMeanwhile] = useState(() => missed(state, now, readLook(state.id)));
  const seen = useRef(now);
  useEffect(() => {
    const before = seen.current;
    seen.current = now;
    if (document.visibilityState === 'hidden') return;
    const slept = now.up_ms - before.up_ms > away_ms;
    if (slept) setMeanwhile((known) => [...missed(state, now, { ...before, entries: state.entries.length }), ...known]);
    writeLook(state, now);
  }, [state, now]);
  return { meanwhile, forget: () => setMeanwhile([]) };
}

interface Away {
  readonly meanwhile: readonly Meanwhile[];
  /** Somebody has read it. */
  readonly forget: () => void;
}

function missed(state: RunState, now: RunNow, last: LastLook | undefined): readonly Meanwhile[] {
  // A look is noted in a hurry, and a device that dies may lose it; the run's own entries are never lost.
  const isSameStart = (last ?? state.entries.at(-1))?.boot === now.boot;
  if (state.end !== undefined || (last === undefined && isSameStart)) return [];
  // A page loaded again at once is no absence.
  const gap_ms = last === undefined ? away_ms : Date.parse(now.at) - Date.parse(last.at);
  if (gap_ms >= 0 && gap_ms < away_ms && last?.entries === state.entries.length) return [];
  return resumeRun(state, now, last).meanwhile.filter(({ code }) => code !== 'nothing');
}

function readLook(run: string): LastLook | undefined {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(key(run)) ?? 'null');
    return isLook(kept) ? kept : undefined;
  } catch {
    return undefined;
  }
}

function isLook(value: unknown): value is LastLook {
  if (typeof value !== 'object' || value === null) return false;
  const { device, boot, at, up_ms, entries } = value as Record<string, unknown>;
  return [device, boot, at].every((each) => typeof each === 'string') && [up_ms, entries].every(Number.isFinite);
}

/** Where the browser forbids it, the run's own entries tell when somebody was last here. */
function writeLook({ id, entries, end }: RunState, { device, boot, at, up_ms }: RunNow): void {
  try {
    if (end !== undefined) localStorage.removeItem(key(id));
    else localStorage.setItem(key(id), JSON.stringify({ device, boot, at, up_ms, entries: entries.length }));
  } catch {
    return;
  }
}
