import type { RunView } from '@loopwright/jobs/press-run';
import type { RunChange } from '@loopwright/records/run';
import type { RunWords } from '@loopwright/words';
import { useEffect, useState } from 'react';
import { useSpeech } from '../../speech/use-speech.tsx';
import { ring } from './alarm-sound.ts';
import { clockText } from './clock-text.ts';
import { RunSignView } from './run-sign.tsx';

interface AlarmOverlayProps {
  readonly view: RunView;
  readonly words: RunWords;
  readonly saving: boolean;
  /** Keeps that it was heard; false where that failed. */
  readonly onHeard: (change: RunChange) => Promise<boolean>;
}

/** Rings, shakes and fills the screen with a pattern until somebody has heard it. */
export function AlarmOverlay({ view, words, saving, onHeard }: AlarmOverlayProps) {
  const speech = useSpeech();
  const [heard, setHeard] = useState(false);
  const { alarm } = view;
  const rings = alarm !== undefined && !heard;
  useEffect(() => (rings ? ring() : undefined), [rings]);
  if (!rings) return null;
  // Whoever has heard it goes on to the press, also where the disk is full: then it rings again at the next start.
  const hear = () => void onHeard(alarm.heard).then((isKept) => isKept || setHeard(true));
  return (
    <section className="run-alarm" role="alertdialog" aria-modal="true" aria-labelledby="alarm-title">
      <div className="run-alarm-said">
        <p className="run-alarm-which">
          <RunSignView view={view} words={words} /> {view.position}
          {view.press === undefined ? '' : ` · ${view.press.name}`}
        </p>
        <h2 id="alarm-title">{speech.say('runs.alarm')}</h2>
        <p>{speech.say('runs.alarm-since', { time: clockText(speech, alarm.since) })}</p>
        <p className="strong">{words.todo('open')}</p>
        <button type="button" className="button main-action run-main" disabled={saving} onClick={hear}>
          {words.action('heard')}
        </button>
        <p className="soft">{words.line('not-a-signal')}</p>
      </div>
    </section>
  );
}
