import { Suspense } from 'react';
import { fetchedLater } from '../../offline/fetched-later.tsx';
import { Bar } from '../../shell/bar.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';

const Fetched = fetchedLater(async () => (await import('./start-place.tsx')).StartPlace);

/** The way to a plant of one's own. Its forms are fetched when somebody comes here. */
export function StartPlace() {
  return (
    <div className="shell">
      <Bar place="start" plant={undefined} card={undefined} />
      <main className="pane start">
        <Suspense fallback={<Fetching />}>
          <Fetched />
        </Suspense>
      </main>
    </div>
  );
}

function Fetching() {
  const { say } = useSpeech();
  return <p role="status">{say('app.reading')}</p>;
}
