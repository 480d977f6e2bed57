import { Suspense } from 'react';
import { fetchedLater } from '../../offline/fetched-later.tsx';
import { Bar } from '../../shell/bar.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';
import type { StoresPlaceProps } from './stores-place.tsx';

const Fetched = fetchedLater(async () => (await import('./stores-place.tsx')).StoresPlace);

/** The stores. Forms and lists are fetched when somebody comes here. */
export function StoresPlace(props: StoresPlaceProps) {
  return (
    <Suspense fallback={<Fetching card={props.card} />}>
      <Fetched {...props} />
    </Suspense>
  );
}

function Fetching({ card }: { readonly card: string | undefined }) {
  const { say } = useSpeech();
  return (
    <div className="shell">
      <Bar place="stores" plant={undefined} card={card} />
      <main className="pane">
        <p role="status">{say('app.reading')}</p>
      </main>
    </div>
  );
}
