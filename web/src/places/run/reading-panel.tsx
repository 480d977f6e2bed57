import type { RunView } from '@loopwright/jobs/press-run';
import { runChange } from '@loopwright/records/run';
import { voiceOfDisplay } from '@loopwright/sheets';
import { useState } from 'react';
import { useSpeech } from '../../speech/use-speech.tsx';
import { BigButton } from './big-button.tsx';
import { useRunShown } from './run-context.tsx';
import { Stepper } from './stepper.tsx';

const perFahrenheit_K = 1 / 1.8;

/** Both displays, read by steppers that start where they should stand now. */
export function ReadingPanel({ reading }: { readonly reading: NonNullable<RunView['reading']> }) {
  const speech = useSpeech();
  const { say } = speech;
  const { words, state, view, write, show, saving } = useRunShown();
  const display = voiceOfDisplay(state.started.things.press, speech);
  const [expected] = useState(reading);
  const [top, setTop] = useState(reading.top_degC);
  const [bottom, setBottom] = useState(reading.bottom_degC);
  const step = display.units === 'us' ? perFahrenheit_K : expected.step_K;
  const back = () => show({ name: 'step' });
  const keep = () => {
    const { mark } = reading;
    const change = runChange('run.display-read', { run: view.run, mark, top_degC: top, bottom_degC: bottom });
    void write([change]).then((kept) => kept && back());
  };
  const row = (label: string, value: number, change: (value: number) => void, predicted: number) => (
    <Stepper
      label={label}
      value={value}
      shown={display.write(value, 'temperature')}
      note={say('runs.expected', { value: display.write(predicted, 'temperature') })}
      step={step}
      least={expected.least_degC}
      most={expected.most_degC}
      touched
      onChange={change}
    />
  );
  return (
    <section className="run-panel">
      <h1>{words.action('read-display')}</h1>
      {row(say('runs.top'), top, setTop, expected.top_degC)}
      {row(say('runs.bottom'), bottom, setBottom, expected.bottom_degC)}
      <button type="button" className="button run-tile run-back" onClick={back}>
        <span>{say('runs.back')}</span>
      </button>
      <BigButton onTap={keep} disabled={saving} keyed>
        {say('runs.read-so')}
      </BigButton>
    </section>
  );
}
