import { useState } from 'react';
import { isStoreKind, type StoreKind } from '../../form/thing-layout.ts';
import { Bar } from '../../shell/bar.tsx';
import { Said } from '../../shell/said.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';
import { useStore } from '../../store/use-store.tsx';
import type { Written } from './keep.ts';
import { KindsList } from './kinds-list.tsx';
import { listAddress, type StoreView, storesAddress, storeView, thingAddress } from './store-address.ts';
import { ThingList } from './thing-list.tsx';
import { ThingPane } from './thing-pane.tsx';

export interface StoresPlaceProps {
  /** What stands behind `/stores` in the address. */
  readonly path: string;
  readonly now: string;
  /** Where the place of the card leads. */
  readonly card: string | undefined;
}

/** What do we have, and what do we know of it? */
export function StoresPlace({ path, now, card }: StoresPlaceProps) {
  const { say } = useSpeech();
  const { plant } = useStore().state;
  const view = storeView(path);
  const kind = 'kind' in view ? view.kind : undefined;
  const known = kind === undefined || isStoreKind(kind);
  return (
    <div className="shell">
      <Bar place="stores" plant={plant} card={card} back={wayBack(view, say)} />
      {known ? (
        <StoresPanes view={view} kind={kind} now={now} />
      ) : (
        <main className="pane">
          <Said title={say('stores.unknown', { kind })} next={say('stores.unknown.next')} toLines />
        </main>
      )}
    </div>
  );
}

/** On a phone, from a thing to the list it is in; a list has its own way back. */
function wayBack(view: StoreView, say: ReturnType<typeof useSpeech>['say']) {
  if (['everything', 'plant', 'witnesses'].includes(view.view)) return { href: storesAddress, to: say('stores.title') };
  if (!('kind' in view) || view.view === 'list' || !isStoreKind(view.kind)) return undefined;
  if (view.view === 'many') return { href: thingAddress('lines', view.id), to: view.id };
  if (view.view === 'edit' || view.view === 'geometry') return { href: thingAddress(view.kind, view.id), to: view.id };
  return { href: listAddress(view.kind), to: say(`stores.kind.${view.kind}`) };
}

interface StoresPanesProps {
  readonly view: StoreView;
  readonly kind: StoreKind | undefined;
  readonly now: string;
}

function StoresPanes({ view, kind, now }: StoresPanesProps) {
  const { state, store } = useStore();
  const [written, setWritten] = useState<Written>();
  const { plant } = state;
  const isList = view.view === 'kinds' || view.view === 'list';
  return (
    <main className="panes" data-place="stores" data-shows={isList ? 'list' : 'thing'}>
      <div className="pane pane-list">
        {kind === undefined ? (
          <KindsList plant={plant} main={isList} />
        ) : (
          <ThingList plant={plant} kind={kind} chosen={'id' in view ? view.id : undefined} main={isList} />
        )}
      </div>
      <div className="pane pane-thing">
        <ThingPane
          key={JSON.stringify(view)}
          store={store}
          state={state}
          view={view}
          kind={kind}
          now={now}
          written={written}
          onWritten={setWritten}
        />
      </div>
    </main>
  );
}
