import { fetchedLater } from '../../offline/fetched-later.tsx';
import { PlaceLater } from '../../shell/place-later.tsx';
import type { LabelsPlaceProps } from './labels-place.tsx';

const Fetched = fetchedLater(async () => (await import('./labels-place.tsx')).LabelsPlace);

/** Labels of positions. */
export function LabelsPlace(props: LabelsPlaceProps) {
  return (
    <PlaceLater place="stores" card={props.card}>
      <Fetched {...props} />
    </PlaceLater>
  );
}
