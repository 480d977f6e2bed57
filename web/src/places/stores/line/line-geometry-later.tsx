import { type ComponentProps, Suspense } from 'react';
import { fetchedLater } from '../../../offline/fetched-later.tsx';
import { useSpeech } from '../../../speech/use-speech.tsx';
import type { LineGeometry as LineGeometryNow } from './line-geometry.tsx';

const Fetched = fetchedLater(async () => (await import('./line-geometry.tsx')).LineGeometry);

/** The editor of how a belt runs; what computes and draws it is fetched when somebody opens it. */
export function LineGeometry(props: ComponentProps<typeof LineGeometryNow>) {
  const { say } = useSpeech();
  return (
    <Suspense fallback={<p role="status">{say('app.reading')}</p>}>
      <Fetched {...props} />
    </Suspense>
  );
}
