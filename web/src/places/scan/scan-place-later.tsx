import { Suspense } from 'react';
import { fetchedLater } from '../../offline/fetched-later.tsx';
import { Bar } from '../../shell/bar.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';
import type { ScanPlaceProps } from './scan-place.tsx';

const Fetched = fetchedLater(async () => (await import('./scan-place.tsx')).ScanPlace);

/** Scanning. Camera and reader are fetched when somebody comes here. */
export function ScanPlace(props: ScanPlaceProps) {
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
      <Bar place="scan" plant={undefined} card={card} />
      <main className="pane">
        <p role="status">{say('app.reading')}</p>
      </main>
    </div>
  );
}
