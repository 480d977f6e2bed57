import type { RunView } from '@loopwright/jobs/press-run';
import { runChange } from '@loopwright/records/run';
import { useState } from 'react';
import { useSpeech } from '../../speech/use-speech.tsx';
import { BigButton } from './big-button.tsx';
import { useRunShown } from './run-context.tsx';
import { Stepper } from './stepper.tsx';

const perFahrenheit_K = 1 / 1.8;

/** Both displays, one after the other, by steppers that start where they should stand now. */
export function ReadingPanel({ reading }: { readonly reading: NonNullable<RunView['reading']> }) {
  const { say } = useSpeech();
  const { words, display, view, write, show, saving } = useRunShown();
  const [asked] = useState(reading);
  const [read, setRead] = useState({ top: reading.top_degC, bottom: reading.bottom_degC });
  const [platen, setPlaten] = useState<'top' | 'bottom'>('top');
  const predicted = platen === 'top' ? asked.top_degC : asked.bottom_degC;
  const back = () => (platen === 'bottom' ? setPlaten('top') : show({ name: 'step' }));
  const keep = () => {
    if (platen === 'top') return setPlaten('bottom');
    const { mark } = reading;
    const change = runChange('run.display-read', { run: view.run, mark, top_degC: read.top, bottom_degC: read.bottom });
    void write([change]).then((kept) => kept && show({ name: 'step' }));
  };
  return (
    <section className="run-panel">
      <h1>{say(`runs.${platen}`)}</h1>
      <p className="soft">{words.action('read-display')}</p>
      <Stepper
        key={`stepper ${platen}`}
        label={say(`runs.${platen}`)}
        value={read[platen]}
        shown={display.write(read[platen], 'temperature')}
        note={say('runs.expected', { value: display.write(predicted, 'temperature') })}
        step={display.units === 'us' ? perFahrenheit_K : asked.step_K}
        least={asked.least_degC}
        most={asked.most_degC}
        onChange={(value) => setRead({ ...read, [platen]: value })}
      />
      <button type="button" className="button run-tile run-back" onClick={back}>
        <span>{say('runs.back')}</span>
      </button>
      <BigButton key={`kept ${platen}`} onTap={keep} disabled={saving} keyed>
        {say('runs.reads-so')}
      </BigButton>
    </section>
  );
}
