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

/** Runs that are over never open again; they are kept so that a look costs nothing. */
const ended = new Map<string, RunState>();

/** As many of the latest runs as one looks at; older ones are asked for. */
const usual = 40;

/** Runs as read, and whether there are older ones. */
export interface RunsRead {
  readonly runs: readonly RunState[];
  readonly more: boolean;
}

/**
 * The latest runs of the shown plant; undefined until they are read.
 *
 * @param most - how many
 */
export function useRuns(most = usual): RunsRead | undefined {
  const { store, state } = useStore();
  const { size } = state;
  const [read, setRead] = useState<RunsRead>();
  useEffect(() => {
    let wanted = size >= 0;
    void latestRuns(store, most).then(
      (found) => wanted && setRead(found),
      () => wanted && setRead({ runs: [], more: false }),
    );
    return () => {
      wanted = false;
    };
  }, [store, size, most]);
  return read;
}

/** Those of the latest runs that are still open. */
export function useOpenRuns(): readonly RunState[] {
  return (useRuns()?.runs ?? []).filter(({ end }) => end === undefined);
}

async function latestRuns(store: PlantStore, most: number): Promise<RunsRead> {
  const ids = await store.runs();
  const read = await Promise.all(ids.slice(0, most).map((id) => ended.get(id) ?? readRun(store, id)));
  return { runs: read.flatMap((each) => each ?? []), more: ids.length > most };
}

async function readRun(store: PlantStore, id: string): Promise<RunState | undefined> {
  const folded = foldRun(await store.runEvents(id));
  if (folded?.end !== undefined) ended.set(id, folded);
  return folded;
}

/** Both clocks of this device, and who looks. */
export function runNow(store: PlantStore, { badge, device }: StoreState): RunNow {
  return { ...store.clock(), by: badge?.id ?? nobody, device: device.id };
}
