import { fetchedLater } from '../../offline/fetched-later.tsx';
import { PlaceLater } from '../../shell/place-later.tsx';
import type { RunPlaceProps } from './run-place.tsx';

const Fetched = fetchedLater(async () => (await import('./run-place.tsx')).RunPlace);

/** The press run: from "isolated" to "running again". */
export function RunPlace(props: RunPlaceProps) {
  return (
    <PlaceLater place="run" card={props.card}>
      <Fetched {...props} />
    </PlaceLater>
  );
}
