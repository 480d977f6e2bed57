import { Link } from 'wouter';
import { useSpeech } from '../../speech/use-speech.tsx';
import { witnessesAddress } from '../stores/store-address.ts';

/** The way to the page on which devices bear witness to each other's records. */
export function WitnessesLink() {
  const { say } = useSpeech();
  return (
    <Link href={witnessesAddress} className="button">
      {say('seen.title')}
    </Link>
  );
}
