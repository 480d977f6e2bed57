import { fetchedLater } from '../../offline/fetched-later.tsx';
import { PlaceLater } from '../../shell/place-later.tsx';
import type { RecipesPlaceProps } from './recipes-place.tsx';

const Fetched = fetchedLater(async () => (await import('./recipes-place.tsx')).RecipesPlace);

/** Recipes and their cycles. */
export function RecipesPlace(props: RecipesPlaceProps) {
  return (
    <PlaceLater place="recipes" card={props.card}>
      <Fetched {...props} />
    </PlaceLater>
  );
}
