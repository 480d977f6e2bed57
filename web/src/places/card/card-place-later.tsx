import { type ComponentProps, Suspense } from 'react';
import { fetchedLater } from '../../offline/fetched-later.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';
import type { CardPlace as CardPlaceNow } from './card-place.tsx';

const fetchCard = async () => (await import('./card-place.tsx')).CardPlace;
const Fetched = fetchedLater(fetchCard);

/** The card's place. What computes and draws a card is fetched when it is needed, or before by `readyCard`. */
export function CardPlace(props: ComponentProps<typeof CardPlaceNow>) {
  const { say } = useSpeech();
  return (
    <Suspense fallback={<p role="status">{say('app.reading')}</p>}>
      <Fetched {...props} />
    </Suspense>
  );
}

/** Fetches the card's part while nobody waits for it, so that the tap on a position opens it at once. */
export function readyCard(): void {
  // Fetched again by the tap itself where it failed.
  void fetchCard().catch(() => undefined);
}
