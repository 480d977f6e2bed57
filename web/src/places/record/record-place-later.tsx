import { fetchedLater } from '../../offline/fetched-later.tsx';
import { PlaceLater } from '../../shell/place-later.tsx';
import type { RecordPlaceProps } from './record-place.tsx';

const Fetched = fetchedLater(async () => (await import('./record-place.tsx')).RecordPlace);

/** The record of a press run. */
export function RecordPlace(props: RecordPlaceProps) {
  return (
    <PlaceLater place="run" card={props.card}>
      <Fetched {...props} />
    </PlaceLater>
  );
}
