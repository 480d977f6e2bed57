import type { Plant } from '@loopwright/plant';
import { useDeferredValue, useMemo, useState } from 'react';
import { Link, useLocation } from 'wouter';
import type { StoreKind } from '../../form/thing-layout.ts';
import { Mark } from '../../page/mark.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';
import { FoundThings } from './found-things.tsx';
import { searchableThings, searchThings } from './search-things.ts';
import { newAddress, storesAddress, tableAddress, thingAddress } from './store-address.ts';
import { StoreFind } from './store-find.tsx';
import { isTableKind } from './table/table-kinds.ts';

interface ThingListProps {
  readonly plant: Plant;
  readonly kind: StoreKind;
  readonly chosen: string | undefined;
  /** Whether the list is the page's subject, or stands beside it. */
  readonly main: boolean;
}

/** All things of one kind: found as one types, opened by a tap; and the way to enter a new one. */
export function ThingList({ plant, kind, chosen, main }: ThingListProps) {
  const speech = useSpeech();
  const { say } = speech;
  const [typed, setTyped] = useState('');
  const asked = useDeferredValue(typed);
  const all = useMemo(() => searchableThings(speech, plant, [kind]), [speech, plant, kind]);
  const found = useMemo(() => (asked.trim() === '' ? all : searchThings(all, asked)), [all, asked]);
  const [, goTo] = useLocation();
  const goToFirst = () => {
    const first = found[0];
    if (first !== undefined) goTo(thingAddress(kind, first.id));
  };
  const Heading = main ? 'h1' : 'h2';
  return (
    <div data-list="">
      <div className="lines-head">
        <Link href={storesAddress} className="back-in-place">
          <Mark name="left" />
          {say('stores.title')}
        </Link>
        <Heading>{say(`stores.kind.${kind}`)}</Heading>
        {all.length === 0 ? null : (
          <StoreFind typed={typed} hint={say('stores.find.hint.kind')} onType={setTyped} onGo={goToFirst} />
        )}
      </div>
      {all.length === 0 ? <p>{say(`stores.empty.${kind}`)}</p> : <FoundThings found={found} chosen={chosen} />}
      {main ? (
        <div className="list-action">
          <Link href={newAddress(kind)} className="button main-action">
            {say(`stores.new.${kind}`)}
          </Link>
          {isTableKind(kind) ? (
            <Link href={tableAddress(kind)} className="button">
              {say('tables.open')}
            </Link>
          ) : null}
        </div>
      ) : null}
    </div>
  );
}
