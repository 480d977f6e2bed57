import { Link } from 'wouter';
import { useSpeech } from '../../speech/use-speech.tsx';
import { runsAddress } from '../run/run-address.ts';

/** The way to every press run, those under way and those that are over. */
export function RunsLink() {
  const { say } = useSpeech();
  return (
    <Link href={runsAddress} className="button">
      {say('runs.title')}
    </Link>
  );
}
