import { type ReactNode, Suspense } from 'react';
import { useSpeech } from '../speech/use-speech.tsx';
import { Bar, type PlaceOfBar } from './bar.tsx';

interface PlaceLaterProps {
  readonly place: PlaceOfBar;
  /** Where the place of the card leads. */
  readonly card: string | undefined;
  /** The place itself, from `fetchedLater`. */
  readonly children: ReactNode;
}

/** A place whose code is fetched when somebody comes there; until then the bar stands and says so. */
export function PlaceLater({ place, card, children }: PlaceLaterProps) {
  return <Suspense fallback={<Fetching place={place} card={card} />}>{children}</Suspense>;
}

function Fetching({ place, card }: Omit<PlaceLaterProps, 'children'>) {
  const { say } = useSpeech();
  return (
    <div className="shell">
      <Bar place={place} plant={undefined} card={card} />
      <main className="pane">
        <p role="status">{say('app.reading')}</p>
      </main>
    </div>
  );
}
