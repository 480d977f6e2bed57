import { Suspense } from 'react';
import { fetchedLater } from '../../../offline/fetched-later.tsx';
import { useSpeech } from '../../../speech/use-speech.tsx';

const Fetched = fetchedLater(async () => (await import('./everything.tsx')).Everything);

/** Everything as one file. Fetched when somebody asks for it. */
export function Everything(props: { readonly now: string }) {
  const { say } = useSpeech();
  return (
    <Suspense fallback={<p role="status">{say('app.reading')}</p>}>
      <Fetched {...props} />
    </Suspense>
  );
}
