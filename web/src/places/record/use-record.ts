import { engineVersion } from '@loopwright/engine/version';
import { type AuditReport, auditReport, logsOfRun } from '@loopwright/jobs/audit-report';
import { foldRun } from '@loopwright/jobs/press-run';
import { useEffect, useState } from 'react';
import type { PlantStore } from '../../store/plant-store.ts';
import { useStore } from '../../store/use-store.tsx';

/** The record of a run as the store holds it; every line of the logs is checked before it is shown. */
type RecordResult =
  | { readonly status: 'reading' | 'checking' | 'none' }
  | { readonly status: 'ready'; readonly report: AuditReport; readonly isBroken: boolean };

/**
 * The record of a run, made anew whenever something was written.
 *
 * @param run - id
 * @param now - the moment of making, UTC
 */
export function useRecord(run: string, now: string): RecordResult {
  const { store, state } = useStore();
  const { size } = state;
  const [result, setResult] = useState<RecordResult>({ status: 'reading' });
  useEffect(() => {
    let wanted = size >= 0;
    const show = (found: RecordResult) => wanted && setResult(found);
    const onChecking = () =>
      wanted && setResult((before) => (before.status === 'ready' ? before : { status: 'checking' }));
    void recordOf(store, run, now, onChecking).then(show, () => show({ status: 'none' }));
    return () => {
      wanted = false;
    };
  }, [store, run, now, size]);
  return result;
}

async function recordOf(store: PlantStore, run: string, now: string, onChecking: () => void): Promise<RecordResult> {
  const events = await store.runEvents(run);
  const state = foldRun(events);
  if (state === undefined) return { status: 'none' };
  onChecking();
  const { broken, brokenBlobs } = await store.verify();
  const logs = await store.logs();
  const { plant } = store.current();
  const lost = new Set(brokenBlobs);
  const report = auditReport(state, {
    plant,
    logs: logsOfRun(
      run,
      events,
      logs,
      logs.flatMap(({ sightings }) => sightings),
    ),
    checked: broken === undefined,
    pictures: new Set(state.photos.map(({ sha256 }) => sha256).filter((sha256) => !lost.has(sha256))),
    now,
    engine: engineVersion,
  });
  return { status: 'ready', report, isBroken: broken !== undefined };
}
