import { fetchedLater } from '../../offline/fetched-later.tsx';
import { PlaceLater } from '../../shell/place-later.tsx';
import type { StoresPlaceProps } from './stores-place.tsx';

const Fetched = fetchedLater(async () => (await import('./stores-place.tsx')).StoresPlace);

/** The stores. Forms and lists are fetched when somebody comes here. */
export function StoresPlace(props: StoresPlaceProps) {
  return (
    <PlaceLater place="stores" card={props.card}>
      <Fetched {...props} />
    </PlaceLater>
  );
}
