import { Link } from 'wouter';
import { useSpeech } from '../../speech/use-speech.tsx';
import { startAddress } from './start-address.ts';

/** The way to a plant of one's own, or back onto it. */
export function StartLink({ begun }: { readonly begun: boolean }) {
  const { say } = useSpeech();
  return (
    <Link href={startAddress} className="button">
      {say(begun ? 'start.go-on' : 'start.begin')}
    </Link>
  );
}
