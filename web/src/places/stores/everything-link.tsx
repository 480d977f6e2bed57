import { Link } from 'wouter';
import { useSpeech } from '../../speech/use-speech.tsx';
import { everythingAddress } from './store-address.ts';

/** The way to the page on which everything goes out and comes in as one file. */
export function EverythingLink() {
  const { say } = useSpeech();
  return (
    <Link href={everythingAddress} className="button">
      {say('store.everything')}
    </Link>
  );
}
