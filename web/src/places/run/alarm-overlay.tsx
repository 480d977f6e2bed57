import type { RunView } from '@loopwright/jobs/press-run';
import type { RunChange } from '@loopwright/records/run';
import type { RunWords } from '@loopwright/words';
import { useEffect } from 'react';
import { useSpeech } from '../../speech/use-speech.tsx';
import { ring } from './alarm-sound.ts';
import { clockText } from './clock-text.ts';
import { RunSignView } from './run-sign.tsx';

interface AlarmOverlayProps {
  readonly view: RunView;
  readonly words: RunWords;
  readonly saving: boolean;
  readonly onHeard: (change: RunChange) => void;
}

/** Rings, shakes and fills the screen with a pattern until somebody has heard it. */
export function AlarmOverlay({ view, words, saving, onHeard }: AlarmOverlayProps) {
  const speech = useSpeech();
  useEffect(() => ring(), []);
  const { alarm } = view;
  if (alarm === undefined) return null;
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
        <button
          type="button"
          className="button main-action run-main"
          disabled={saving}
          onClick={() => onHeard(alarm.heard)}
        >
          {words.action('heard')}
        </button>
        <p className="soft">{words.line('not-a-signal')}</p>
      </div>
    </section>
  );
}
