import { type RunState, runFacts, tapWrites, viewRun } from '@loopwright/jobs/press-run';
import type { Plant } from '@loopwright/plant';
import type { RunChange } from '@loopwright/records/run';
import { voiceOfDisplay } from '@loopwright/sheets';
import { runWords } from '@loopwright/words';
import { useMemo, useState } from 'react';
import { useBusy } from '../../offline/busy.ts';
import { useSpeech } from '../../speech/use-speech.tsx';
import { faultSentence } from '../../store/fault-sentence.ts';
import { runNow } from '../../store/use-runs.ts';
import { useStore } from '../../store/use-store.tsx';
import { AlarmOverlay } from './alarm-overlay.tsx';
import { useMeanwhile } from './last-look.ts';
import { MeanwhilePanel } from './meanwhile-panel.tsx';
import { RunBody } from './run-body.tsx';
import { type RunPanel, RunProvider, type RunShown } from './run-context.tsx';
import { RunHead } from './run-head.tsx';
import { useMoment } from './use-moment.ts';
import { useWakeLock } from './wake-lock.ts';

interface RunScreenProps {
  readonly state: RunState;
  readonly plant: Plant;
}

/** A run on the whole screen: what now, the one number, one big action. */
export function RunScreen({ state, plant }: RunScreenProps) {
  const speech = useSpeech();
  const { store, state: kept } = useStore();
  const now = useMoment(store, kept);
  const [panel, show] = useState<RunPanel>({ name: 'step' });
  const { saving, fault, write, append } = useWriting(state, plant);
  const view = useMemo(
    () => viewRun(state, now, { badges: Object.values(plant.badges), rolls: Object.values(plant.rolls) }),
    [state, now, plant],
  );
  const display = useMemo(() => voiceOfDisplay(state.started.things.press, speech), [state, speech]);
  const words = useMemo(() => runWords(speech, runFacts(state), display), [speech, state, display]);
  const { meanwhile, forget } = useMeanwhile(state, now);
  const awake = useWakeLock(view.end === undefined);
  useBusy(view.end === undefined);
  const shown: RunShown = { state, view, now, words, display, plant, write, append, saving, show };
  return (
    <RunProvider value={shown}>
      <main className="run" data-phase={view.phase} data-run={view.run}>
        <RunHead awake={awake} />
        {fault === undefined ? null : (
          <p className="run-fault" role="alert">
            {fault}
          </p>
        )}
        {meanwhile.length > 0 ? (
          <MeanwhilePanel meanwhile={meanwhile} onGoOn={forget} />
        ) : (
          <RunBody panel={panel} key={view.end ?? 'open'} />
        )}
        {view.alarm === undefined ? null : (
          <AlarmOverlay
            key={view.attempt}
            view={view}
            words={words}
            saving={saving}
            onHeard={(change) => write([change])}
          />
        )}
      </main>
    </RunProvider>
  );
}

type Writing = Pick<RunShown, 'saving' | 'write' | 'append'> & { readonly fault: string | undefined };

/** Writing of a run: one tap at a time, and what came of it. */
function useWriting(state: RunState, plant: Plant): Writing {
  const speech = useSpeech();
  const { store, state: kept } = useStore();
  const [saving, setSaving] = useState(false);
  const [fault, setFault] = useState<string>();
  const append = async (changes: readonly RunChange[], blobs: readonly Blob[] = []): Promise<void> => {
    const [first, ...rest] = tapWrites(state, changes, runNow(store, kept), plant);
    if (first !== undefined) await store.append([{ ...first, blobs }, ...rest]);
  };
  const write = async (changes: readonly RunChange[]): Promise<boolean> => {
    if (saving || changes.length === 0) return false;
    setSaving(true);
    try {
      await append(changes);
      setFault(undefined);
      return true;
    } catch (cause) {
      setFault(faultSentence(speech, cause));
      return false;
    } finally {
      setSaving(false);
    }
  };
  return { saving, fault, write, append };
}
