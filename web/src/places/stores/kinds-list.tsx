import type { Plant } from '@loopwright/plant';
import { useDeferredValue, useMemo, useState } from 'react';
import { Link, useLocation } from 'wouter';
import { type StoreKind, storeKinds } from '../../form/thing-layout.ts';
import { useSpeech } from '../../speech/use-speech.tsx';
import { LabelsLink } from '../labels/labels-link.tsx';
import { moveByArrows } from '../lines/move-focus.ts';
import { StartLink } from '../start/start-link.tsx';
import { WitnessesLink } from '../witness/witnesses-link.tsx';
import { EverythingLink } from './everything-link.tsx';
import { FoundThings } from './found-things.tsx';
import { PlantNameLink } from './plant-name-link.tsx';
import { RunsLink } from './runs-link.tsx';
import { searchableThings, searchThings } from './search-things.ts';
import { listAddress, newAddress, thingAddress } from './store-address.ts';
import { StoreFind } from './store-find.tsx';

/** What a card cannot do without, in the order in which it is entered. */
const needed = ['belts', 'dies', 'templates', 'presses', 'recipes', 'lines', 'positions'] as const;

interface KindsListProps {
  readonly plant: Plant;
  /** Whether the list is the page's subject, or stands beside it. */
  readonly main: boolean;
}

/** All kinds of things with how many there are, a search over all of them, and what to enter next. */
export function KindsList({ plant, main }: KindsListProps) {
  const speech = useSpeech();
  const { say } = speech;
  const [typed, setTyped] = useState('');
  const asked = useDeferredValue(typed);
  const all = useMemo(() => searchableThings(speech, plant), [speech, plant]);
  const found = useMemo(() => searchThings(all, asked), [all, asked]);
  const [, goTo] = useLocation();
  const goToFirst = () => {
    const first = found[0];
    if (first !== undefined) goTo(thingAddress(first.kind, first.id));
  };
  const Heading = main ? 'h1' : 'h2';
  return (
    <div data-list="">
      <div className="lines-head">
        <div>
          <Heading>{say('stores.title')}</Heading>
          <p className="soft">
            <bdi>{plant.name}</bdi>
          </p>
        </div>
        <StoreFind typed={typed} hint={say('stores.find.hint')} onType={setTyped} onGo={goToFirst} />
      </div>
      {typed.trim() === '' ? <Kinds plant={plant} /> : <FoundThings found={found} chosen={undefined} withKind />}
      <p className="list-more">
        <LabelsLink />
        <EverythingLink />
        <RunsLink />
        <WitnessesLink />
        <PlantNameLink />
      </p>
      {main ? <NextStep plant={plant} /> : null}
    </div>
  );
}

function Kinds({ plant }: { readonly plant: Plant }) {
  const { say } = useSpeech();
  return (
    <ul className="found">
      {storeKinds.map((kind) => {
        const count = Object.keys(plant[kind]).length;
        return (
          <li key={kind}>
            <Link href={listAddress(kind)} className="found-row kind-row" onKeyDown={moveByArrows}>
              <span className="found-id">{say(`stores.kind.${kind}`)}</span>
              <span className={count === 0 ? 'soft' : 'kind-count'}>
                {count === 0 ? say('stores.none') : say('stores.count', { count })}
              </span>
            </Link>
          </li>
        );
      })}
    </ul>
  );
}

/** What the way to a first card asks for. */
const onTheWay: readonly StoreKind[] = ['belts', 'lines', 'positions'];

/** The first kind of which nothing is there yet; nothing missing, no main action. */
export function nextKind(plant: Plant): StoreKind | undefined {
  return needed.find((kind) => Object.keys(plant[kind]).length === 0);
}

function NextStep({ plant }: { readonly plant: Plant }) {
  const { say } = useSpeech();
  const next = nextKind(plant);
  if (next === undefined) return null;
  return (
    <div className="list-action">
      <p className="soft">{say(`stores.empty.${next}`)}</p>
      <Link href={newAddress(next)} className="button main-action">
        {say(`stores.new.${next}`)}
      </Link>
      {onTheWay.includes(next) ? <StartLink begun /> : null}
    </div>
  );
}
