import { Suspense } from 'react';
import { fetchedLater } from '../../offline/fetched-later.tsx';
import { Bar } from '../../shell/bar.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';
import type { LabelsPlaceProps } from './labels-place.tsx';

const Fetched = fetchedLater(async () => (await import('./labels-place.tsx')).LabelsPlace);

/** Labels of positions. Fetched when somebody comes here. */
export function LabelsPlace(props: LabelsPlaceProps) {
  return (
    <Suspense fallback={<Fetching card={props.card} />}>
      <Fetched key={props.path} {...props} />
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
