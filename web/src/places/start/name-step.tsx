import { type FormEvent, useId, useState } from 'react';
import { useSpeech } from '../../speech/use-speech.tsx';
import type { PlantStore } from '../../store/plant-store.ts';
import { EverythingLink } from '../stores/everything-link.tsx';
import { outcomeOf } from '../stores/keep.ts';

interface NameStepProps {
  readonly store: PlantStore;
  /** Whether the demo plant is shown now. */
  readonly demo: boolean;
}

const longest = 60;

/** What the plant is called. Starting it leaves the plant shown before on the device. */
export function NameStep({ store, demo }: NameStepProps) {
  const speech = useSpeech();
  const { say } = speech;
  const id = useId();
  const [name, setName] = useState('');
  const [wrong, setWrong] = useState<string>();
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    const typed = name.trim().normalize('NFC');
    if (typed === '') return setWrong(say('start.name.missing'));
    const outcome = await outcomeOf(speech, store.startPlant(typed));
    setWrong('refused' in outcome ? outcome.refused : undefined);
  };
  return (
    <form className="thing-form" onSubmit={(event) => void submit(event)} noValidate>
      <h1 tabIndex={-1}>
        <label htmlFor={id}>{say('start.name')}</label>
      </h1>
      <input
        id={id}
        type="text"
        className="entry"
        dir="auto"
        autoComplete="off"
        maxLength={longest}
        value={name}
        aria-invalid={wrong !== undefined}
        aria-describedby={`${id}-help`}
        onChange={(event) => setName(event.target.value)}
      />
      <p id={`${id}-help`}>
        {say('start.name.help')} {demo ? say('start.name.demo') : null}
      </p>
      {wrong === undefined ? null : (
        <p className="caution caution-stop" role="alert">
          {wrong}
        </p>
      )}
      <button type="submit" className="button main-action">
        {say('start.next')}
      </button>
      <EverythingLink />
    </form>
  );
}
