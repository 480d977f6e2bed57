import { useEffect } from 'react';
import { useSpeech } from '../../speech/use-speech.tsx';
import { ring } from './alarm-sound.ts';
import { clockText } from './clock-text.ts';
import { useRunShown } from './run-context.tsx';
import { RunSignView } from './run-sign.tsx';

/** Rings, shakes and fills the screen with a pattern until somebody has heard it. */
export function AlarmOverlay() {
  const speech = useSpeech();
  const { view, words, write, saving } = useRunShown();
  useEffect(() => ring(), []);
  const { alarm } = view;
  if (alarm === undefined) return null;
  return (
    <section className="run-alarm" role="alertdialog" aria-modal="true" aria-labelledby="alarm-title">
      <div className="run-alarm-said">
        <p className="run-alarm-which">
          <RunSignView /> {view.position}
          {view.press === undefined ? '' : ` · ${view.press.name}`}
        </p>
        <h2 id="alarm-title">{speech.say('runs.alarm')}</h2>
        <p>{speech.say('runs.alarm-since', { time: clockText(speech, alarm.since) })}</p>
        <p className="strong">{words.line('when-displays')}</p>
        <button
          type="button"
          className="button main-action run-main"
          disabled={saving}
          onClick={() => void write([alarm.heard])}
        >
          {words.action('heard')}
        </button>
        <p className="soft">{words.line('not-a-signal')}</p>
      </div>
    </section>
  );
}
