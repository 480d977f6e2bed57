import { fetchedLater } from '../../offline/fetched-later.tsx';
import { PlaceLater } from '../../shell/place-later.tsx';
import type { ScanPlaceProps } from './scan-place.tsx';

const Fetched = fetchedLater(async () => (await import('./scan-place.tsx')).ScanPlace);

/** Scanning. Camera and reader are fetched when somebody comes here. */
export function ScanPlace(props: ScanPlaceProps) {
  return (
    <PlaceLater place="scan" card={props.card}>
      <Fetched {...props} />
    </PlaceLater>
  );
}
