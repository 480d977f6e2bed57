import type { Plant } from '@loopwright/plant';
import { useState } from 'react';
import type { StoreKind } from '../../form/thing-layout.ts';
import { useSpeech } from '../../speech/use-speech.tsx';
import type { PlantStore } from '../../store/plant-store.ts';
import { keep, removalOf, type Written } from './keep.ts';
import { usersOf } from './used-by.tsx';

interface RemoveThingProps {
  readonly store: PlantStore;
  readonly plant: Plant;
  readonly kind: StoreKind;
  readonly id: string;
  readonly onWritten: (written: Written) => void;
}

/** Takes a thing out of the stores: asked once, saying what still refers to it. It stays in the history. */
export function RemoveThing({ store, plant, kind, id, onWritten }: RemoveThingProps) {
  const speech = useSpeech();
  const { say } = speech;
  const [asked, setAsked] = useState(false);
  const [refused, setRefused] = useState<string>();
  const remove = async () => {
    const outcome = await keep(store, speech, removalOf(kind, id));
    if ('refused' in outcome) return setRefused(outcome.refused);
    const eventId = outcome.saved.events[0]?.id;
    return onWritten({ did: 'removed', kind, id, ...(eventId === undefined ? {} : { eventId }) });
  };
  if (!asked) {
    return (
      <button type="button" className="button button-stop remove" onClick={() => setAsked(true)}>
        {say('stores.remove', { id })}
      </button>
    );
  }
  return (
    <fieldset className="ask">
      <legend className="strong">{say('stores.remove.ask', { id })}</legend>
      <Referring plant={plant} kind={kind} id={id} />
      <p>{say('stores.remove.history')}</p>
      {refused === undefined ? null : <p role="alert">{refused}</p>}
      <div className="ask-answers">
        <button type="button" className="button button-stop" onClick={() => void remove()}>
          {say('stores.remove.yes')}
        </button>
        <button type="button" className="button" onClick={() => setAsked(false)}>
          {say('stores.remove.no')}
        </button>
      </div>
    </fieldset>
  );
}

const mostNamed = 4;

function Referring({ plant, kind, id }: Pick<RemoveThingProps, 'plant' | 'kind' | 'id'>) {
  const { say, list } = useSpeech();
  const users = usersOf(plant, kind, id);
  if (users.length === 0) return null;
  return (
    <ul className="list">
      {users.map(({ kind: user, things }) => (
        <li key={user}>
          {say('stores.remove.referring', {
            kind: say(`stores.kind.${user}`),
            count: things.length,
            names: list(things.slice(0, mostNamed).map((thing) => thing.id)),
            more: things.length > mostNamed ? 'yes' : 'no',
          })}
        </li>
      ))}
    </ul>
  );
}
