import { Suspense } from 'react';
import { fetchedLater } from '../../../offline/fetched-later.tsx';
import { useSpeech } from '../../../speech/use-speech.tsx';
import type { TablePaneProps } from './table-pane.tsx';

const Fetched = fetchedLater(async () => (await import('./table-pane.tsx')).TablePane);

/** Things of one kind as a table. Fetched when somebody asks for it. */
export function TablePane(props: TablePaneProps) {
  const { say } = useSpeech();
  return (
    <Suspense fallback={<p role="status">{say('app.reading')}</p>}>
      <Fetched {...props} />
    </Suspense>
  );
}
