import type { Plant } from '@loopwright/plant';
import { wholeLanguages } from '@loopwright/words';
import { type ComponentProps, Suspense, useEffect } from 'react';
import { afterFirstPaint } from '../../offline/after-first-paint.ts';
import { fetchedLater } from '../../offline/fetched-later.tsx';
import { useSettings } from '../../settings/use-settings.tsx';
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

/**
 * Fetches the card's part and computes the card that will most likely be asked for, while nobody waits for either, so that
 * the tap opens it at once.
 *
 * @param position - whose card; undefined while another stands open
 */
export function useReadyCard(plant: Plant, position: string | undefined, now: string): void {
  const speech = useSpeech();
  const { people, press } = useSettings().settings;
  useEffect(() => {
    let wanted = true;
    const prepare = async () => {
      const [{ prepareCard }] = await Promise.all([import('./card-place.tsx'), wholeLanguages()]);
      if (wanted && position !== undefined) prepareCard({ plant, position, now, people, press, speech });
    };
    // What fails here is tried again by the tap itself, and said there.
    afterFirstPaint(() => void (wanted && prepare().catch(() => undefined)));
    return () => {
      wanted = false;
    };
  }, [plant, position, now, people, press, speech]);
}
