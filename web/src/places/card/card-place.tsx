import type { Plant } from '@loopwright/plant';
import { useEffect, useMemo, useRef } from 'react';
import { afterFirstPaint } from '../../offline/after-first-paint.ts';
import { PageView } from '../../page/page-view.tsx';
import { useSettings } from '../../settings/use-settings.tsx';
import { Said } from '../../shell/said.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';
import { CardEnds } from './card-ends.tsx';
import { type CardResult, cardAsked } from './card-result.ts';
import { PeopleQuestion } from './people-question.tsx';

interface CardPlaceProps {
  readonly plant: Plant;
  readonly position: string;
  readonly now: string;
}

export { prepareCard } from './card-result.ts';

/** What do I cut, punch, thread, press here? Mounted anew for each position. */
export function CardPlace({ plant, position, now }: CardPlaceProps) {
  const speech = useSpeech();
  const { people, press } = useSettings().settings;
  const result = useMemo(
    () => cardAsked({ plant, position, now, people, press, speech }),
    [plant, position, now, people, press, speech],
  );
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => arriveAt(place.current), []);
  return (
    <div ref={place} data-opening="">
      <CardOutcome result={result} position={position} asked={people !== undefined} />
    </div>
  );
}

/** Whoever comes to a card starts at its top, by eye, by keyboard and by ear. */
function arriveAt(place: HTMLElement | null): void {
  window.scrollTo(0, 0);
  place?.querySelector<HTMLElement>('h1')?.focus({ preventScroll: true });
  requestAnimationFrame(() => afterFirstPaint(() => place?.removeAttribute('data-opening')));
}

interface CardOutcomeProps {
  readonly result: CardResult;
  readonly position: string;
  readonly asked: boolean;
}

function CardOutcome({ result, position, asked }: CardOutcomeProps) {
  const { say } = useSpeech();
  if (result.status === 'unknown-position') {
    return <Said title={say('app.card.unknown', { position })} next={say('app.card.unknown.next')} toLines />;
  }
  if (result.status === 'refused') {
    return <Said title={say('app.card.refused', { position })} next={result.sentence} toLines />;
  }
  return (
    <>
      <PageView page={result.page} ask={asked ? null : <PeopleQuestion />} />
      <CardEnds page={result.page} position={position} />
    </>
  );
}
