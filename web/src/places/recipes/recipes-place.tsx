import type { Plant } from '@loopwright/plant';
import { useEffect, useMemo, useRef } from 'react';
import { useSettings } from '../../settings/use-settings.tsx';
import { Bar } from '../../shell/bar.tsx';
import { Said } from '../../shell/said.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';
import { CycleView } from './cycle-view.tsx';
import { RecipeList } from './recipe-list.tsx';
import { recipesAddress, recipesView } from './recipes-address.ts';
import { startOf } from './start-of.ts';

export interface RecipesPlaceProps {
  readonly path: string;
  readonly plant: Plant;
  readonly now: string;
  /** Where the place of the card leads. */
  readonly card: string | undefined;
}

/** Which settings for this belt on this press, and how sure are we? */
export function RecipesPlace({ path, plant, now, card }: RecipesPlaceProps) {
  const { say } = useSpeech();
  const place = useRef<HTMLElement>(null);
  useEffect(() => {
    window.scrollTo(0, 0);
    place.current?.querySelector<HTMLElement>('h1')?.focus({ preventScroll: true });
  }, []);
  const isList = recipesView(path).view === 'list';
  const back = isList ? {} : { back: { href: recipesAddress, to: say('app.recipes') } };
  return (
    <div className="shell">
      <Bar place="recipes" plant={plant} card={card} {...back} />
      <main className="pane recipes" ref={place}>
        {isList ? <RecipeList plant={plant} /> : <Trial path={path} plant={plant} now={now} />}
      </main>
    </div>
  );
}

function Trial({ path, plant, now }: Omit<RecipesPlaceProps, 'card'>) {
  const { say } = useSpeech();
  const { press } = useSettings().settings;
  const start = useMemo(() => startOf(plant, recipesView(path), { press, now }), [plant, path, press, now]);
  if ('missing' in start) {
    return <Said title={say('app.recipes')} next={say(`recipes.missing.${start.missing}`, { id: start.id })} />;
  }
  return <CycleView plant={plant} now={now} start={start} />;
}
