import { Link } from 'wouter';
import { useSpeech } from '../../speech/use-speech.tsx';
import { labelsAddress } from './labels-address.ts';

/** The way to the labels of all positions. */
export function LabelsLink() {
  const { say } = useSpeech();
  return (
    <Link href={labelsAddress} className="button">
      {say('labels.print')}
    </Link>
  );
}
