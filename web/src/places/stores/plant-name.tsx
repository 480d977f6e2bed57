import { type FormEvent, useState } from 'react';
import { PlantNameEntry } from '../../form/plant-name-entry.tsx';
import { readPlantName } from '../../form/read-plant-name.ts';
import { useBusy } from '../../offline/busy.ts';
import { useSpeech } from '../../speech/use-speech.tsx';
import { definitionOf, keep } from './keep.ts';
import { ThingHistory } from './thing-history.tsx';
import type { ThingPaneProps } from './thing-pane.tsx';
import { WrittenNote } from './written-note.tsx';

/** What the plant is called, as one field; and how it came to be called so. */
export function PlantName(props: Pick<ThingPaneProps, 'store' | 'state' | 'written' | 'onWritten'>) {
  const speech = useSpeech();
  const { store, state, onWritten } = props;
  const { id, name: nameNow, note } = state.plant;
  const [typed, setTyped] = useState<string>();
  const [wrong, setWrong] = useState<string>();
  useBusy(typed !== undefined && typed !== nameNow);
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    const read = readPlantName(speech, typed ?? nameNow);
    if ('wrong' in read) return setWrong(read.wrong);
    if (read.name === nameNow) return setWrong(speech.say('stores.plant.same'));
    const thing = { id, name: read.name, ...(note === undefined ? {} : { note }) };
    const outcome = await keep(store, speech, definitionOf('plant', thing));
    if ('refused' in outcome) return setWrong(outcome.refused);
    const eventId = outcome.saved.events[0]?.id;
    setTyped(undefined);
    setWrong(undefined);
    onWritten({ did: 'saved', kind: 'plant', id, ...(eventId === undefined ? {} : { eventId }) });
  };
  const shared = { ...props, kind: 'plant', id } as const;
  return (
    <article className="thing">
      <form className="thing-form" onSubmit={(event) => void submit(event)} noValidate>
        <PlantNameEntry
          text={typed ?? nameNow}
          help={speech.say('stores.plant.help')}
          wrong={wrong}
          onType={(text) => {
            setTyped(text);
            setWrong(undefined);
          }}
        />
        <button type="submit" className="button main-action">
          {speech.say('stores.save')}
        </button>
      </form>
      <WrittenNote {...shared} name={nameNow} />
      <ThingHistory {...shared} size={state.size} />
    </article>
  );
}
