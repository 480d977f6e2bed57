import { Suspense } from 'react';
import { fetchedLater } from '../../offline/fetched-later.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';

const Fetched = fetchedLater(async () => (await import('./witnesses.tsx')).Witnesses);

/** Who has seen the records. Fetched when somebody asks for it. */
export function Witnesses() {
  const { say } = useSpeech();
  return (
    <Suspense fallback={<p role="status">{say('app.reading')}</p>}>
      <Fetched />
    </Suspense>
  );
}
