import type { MeasureAsked } from '@loopwright/jobs/press-run';
import { runChange } from '@loopwright/records/run';
import { isQuantityKind } from '@loopwright/words';
import { useState } from 'react';
import { useSpeech } from '../../speech/use-speech.tsx';
import { BigButton } from './big-button.tsx';
import { useRunShown } from './run-context.tsx';
import { Stepper } from './stepper.tsx';

/** What is read at these steps, one number after the other; each is kept as soon as somebody says it. */
export function ReadingsPanel({ measures }: { readonly measures: readonly string[] }) {
  const { view, show } = useRunShown();
  const [at, setAt] = useState(0);
  const asked = view.steps.flatMap((step) => step.measures).filter(({ measure }) => measures.includes(measure));
  const measure = asked[at];
  const back = () => show({ name: 'step' });
  if (measure === undefined) return null;
  const onward = () => (at + 1 < asked.length ? setAt(at + 1) : back());
  return (
    <OneReading key={measure.measure} asked={measure} left={asked.length - at - 1} onward={onward} onBack={back} />
  );
}

interface OneReadingProps {
  readonly asked: MeasureAsked;
  readonly left: number;
  readonly onward: () => void;
  readonly onBack: () => void;
}

function OneReading({ asked, left, onward, onBack }: OneReadingProps) {
  const { say, write: written } = useSpeech();
  const { words, view, write, saving } = useRunShown();
  const { measure, kind, start, expected, step, least, most } = asked;
  const [value, setValue] = useState(start);
  const text = (number: number) => (isQuantityKind(kind) ? written(number, kind) : String(number));
  const keep = () => {
    const change = runChange('run.measured', { run: view.run, measure, value });
    void write([change]).then((kept) => kept && onward());
  };
  return (
    <section className="run-panel">
      <h1>{words.measure(measure)}</h1>
      <Stepper
        label={words.measure(measure)}
        value={value}
        shown={text(value)}
        note={expected ? say('runs.expected', { value: text(expected.value) }) : words.line('measure-this')}
        step={step}
        least={least}
        most={most}
        onChange={setValue}
      />
      <div className="run-row run-back">
        <button type="button" className="button run-tile" onClick={onBack}>
          <span>{say('runs.back')}</span>
        </button>
        <button type="button" className="button run-tile" disabled={left === 0} onClick={onward}>
          <span>{say('runs.next-reading')}</span>
        </button>
      </div>
      <BigButton onTap={keep} disabled={saving} keyed>
        {say('runs.reads-so')}
      </BigButton>
    </section>
  );
}
