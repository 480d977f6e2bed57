import { foldRun, type RunNow, type RunState } from '@loopwright/jobs/press-run';
import { nobody } from '@loopwright/records/run';
import { useEffect, useState } from 'react';
import type { PlantStore, StoreState } from './plant-store.ts';
import { useStore } from './use-store.tsx';

/** The state of a run as the store holds it: `reading` until it is read, `none` where there is no such run. */
export type RunResult =
  | { readonly status: 'reading' | 'none' }
  | { readonly status: 'ready'; readonly state: RunState };

/** A run of this device or another, folded anew whenever something was written. */
export function useRun(run: string): RunResult {
  const { store, state } = useStore();
  const { size } = state;
  const [result, setResult] = useState<RunResult>({ status: 'reading' });
  useEffect(() => {
    let wanted = size >= 0;
    const read = async () => {
      const folded = foldRun(await store.runEvents(run));
      if (wanted) setResult(folded === undefined ? { status: 'none' } : { status: 'ready', state: folded });
    };
    void read().catch(() => wanted && setResult({ status: 'none' }));
    return () => {
      wanted = false;
    };
  }, [store, run, size]);
  return result;
}

/** Runs that are over never change but by somebody's acceptance; they are kept so that a look costs nothing. */
const ended = new Map<string, RunState>();

/** Every run of the shown plant, latest first; undefined until they are read. */
export function useRuns(): readonly RunState[] | undefined {
  const { store, state } = useStore();
  const { size } = state;
  const [runs, setRuns] = useState<readonly RunState[]>();
  useEffect(() => {
    let wanted = size >= 0;
    void allRuns(store).then(
      (read) => wanted && setRuns(read),
      () => wanted && setRuns([]),
    );
    return () => {
      wanted = false;
    };
  }, [store, size]);
  return runs;
}

async function allRuns(store: PlantStore): Promise<readonly RunState[]> {
  const ids = await store.runs();
  const read = await Promise.all(ids.map((id) => ended.get(id) ?? readRun(store, id)));
  return read.flatMap((each) => each ?? []).toSorted((a, b) => b.started.at.localeCompare(a.started.at));
}

async function readRun(store: PlantStore, id: string): Promise<RunState | undefined> {
  const folded = foldRun(await store.runEvents(id));
  if (folded?.end !== undefined && folded.deviations.every(({ accepted }) => accepted)) ended.set(id, folded);
  return folded;
}

/** Both clocks of this device, and who looks. */
export function runNow(store: PlantStore, { badge, device }: StoreState): RunNow {
  return { ...store.clock(), by: badge?.id ?? nobody, device: device.id };
}
