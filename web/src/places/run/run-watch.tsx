import { type RunState, runFacts, viewRun } from '@loopwright/jobs/press-run';
import type { RunChange } from '@loopwright/records/run';
import { voiceOfDisplay } from '@loopwright/sheets';
import { runWords } from '@loopwright/words';
import { useEffect, useState } from 'react';
import { Link } from 'wouter';
import { useBusy } from '../../offline/busy.ts';
import { useSpeech } from '../../speech/use-speech.tsx';
import { useOpenRuns } from '../../store/use-runs.ts';
import { useStore } from '../../store/use-store.tsx';
import { AlarmOverlay } from './alarm-overlay.tsx';
import { readySound } from './alarm-sound.ts';
import { timeToOpen } from './clock-text.ts';
import { runAddress } from './run-address.ts';
import { RunSignView } from './run-sign.tsx';
import { useMoment } from './use-moment.ts';

interface RunWatchProps {
  /** The run that has the screen and rings by itself. */
  readonly shown: string | undefined;
}

/** The runs under way, on every place of the app: where they stand, and their alarms. */
export function RunWatch({ shown }: RunWatchProps) {
  const open = useOpenRuns();
  useBusy(open.length > 0);
  const others = open.filter(({ id }) => id !== shown);
  return others.length === 0 ? null : <Watched runs={others} silent={shown !== undefined} />;
}

interface WatchedProps {
  readonly runs: readonly RunState[];
  /** Only the alarms: another run has the screen and shows these itself. */
  readonly silent: boolean;
}

function Watched({ runs, silent }: WatchedProps) {
  const speech = useSpeech();
  const { store, state } = useStore();
  const now = useMoment(store, state);
  const [saving, setSaving] = useState(false);
  // The sound may only begin after a tap; the first one anywhere makes it ready.
  useEffect(() => {
    const ready = () => void readySound();
    window.addEventListener('pointerdown', ready, { once: true });
    return () => window.removeEventListener('pointerdown', ready);
  }, []);
  const hear = async (change: RunChange): Promise<boolean> => {
    setSaving(true);
    try {
      await store.append([change]);
      return true;
    } catch {
      return false;
    } finally {
      setSaving(false);
    }
  };
  const watched = runs.map((run) => ({
    run,
    view: viewRun(run, now),
    words: runWords(speech, runFacts(run), voiceOfDisplay(run.started.things.press, speech)),
  }));
  const alarmed = watched.find(({ view }) => view.alarm !== undefined);
  return (
    <>
      {silent ? null : (
        <nav className="run-banner" aria-label={speech.say('runs.open')}>
          {watched.map(({ run, view, words }) => (
            <Link key={run.id} href={runAddress(run.id)} className="run-entry">
              <RunSignView view={view} words={words} />
              <strong>{view.position}</strong>
              <span>{words.phase(view.phase)}</span>
              <span className="strong">{timeToOpen(speech, view)}</span>
            </Link>
          ))}
        </nav>
      )}
      {alarmed === undefined ? null : (
        <AlarmOverlay
          key={`${alarmed.run.id} ${alarmed.run.attempt}`}
          view={alarmed.view}
          words={alarmed.words}
          saving={saving}
          onHeard={hear}
        />
      )}
    </>
  );
}
