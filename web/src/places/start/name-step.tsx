import { type FormEvent, useState } from 'react';
import { PlantNameEntry } from '../../form/plant-name-entry.tsx';
import { readPlantName } from '../../form/read-plant-name.ts';
import { useSpeech } from '../../speech/use-speech.tsx';
import type { PlantStore } from '../../store/plant-store.ts';
import { EverythingLink } from '../stores/everything-link.tsx';
import { outcomeOf } from '../stores/keep.ts';

interface NameStepProps {
  readonly store: PlantStore;
  /** Whether the demo plant is shown now. */
  readonly demo: boolean;
}

/** What the plant is called. Starting it leaves the plant shown before on the device. */
export function NameStep({ store, demo }: NameStepProps) {
  const speech = useSpeech();
  const { say } = speech;
  const [name, setName] = useState('');
  const [wrong, setWrong] = useState<string>();
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    const read = readPlantName(speech, name);
    if ('wrong' in read) return setWrong(read.wrong);
    const outcome = await outcomeOf(speech, store.startPlant(read.name));
    setWrong('refused' in outcome ? outcome.refused : undefined);
  };
  return (
    <form className="thing-form" onSubmit={(event) => void submit(event)} noValidate>
      <PlantNameEntry
        text={name}
        help={demo ? `${say('start.name.help')} ${say('start.name.demo')}` : say('start.name.help')}
        wrong={wrong}
        onType={setName}
      />
      <button type="submit" className="button main-action">
        {say('start.next')}
      </button>
      <EverythingLink />
    </form>
  );
}
