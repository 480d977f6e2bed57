import { Link } from 'wouter';
import { Mark } from '../../page/mark.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';
import { scanAddress } from '../scan/scan-address.ts';

/** The way to the camera, above the search: both find a position. */
export function ScanLink() {
  const { say } = useSpeech();
  return (
    <Link href={scanAddress} className="button scan-link">
      <Mark name="scan" />
      {say('app.scan')}
    </Link>
  );
}
