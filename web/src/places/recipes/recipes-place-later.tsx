import { Suspense } from 'react';
import { fetchedLater } from '../../offline/fetched-later.tsx';
import { Bar } from '../../shell/bar.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';
import type { RecipesPlaceProps } from './recipes-place.tsx';

const Fetched = fetchedLater(async () => (await import('./recipes-place.tsx')).RecipesPlace);

/** Recipes and their cycles. Fetched when somebody comes here. */
export function RecipesPlace(props: RecipesPlaceProps) {
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
      <Bar place="recipes" plant={undefined} card={card} />
      <main className="pane">
        <p role="status">{say('app.reading')}</p>
      </main>
    </div>
  );
}
