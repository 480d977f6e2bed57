import { Link } from 'wouter';
import { useSpeech } from '../../speech/use-speech.tsx';
import { plantNameAddress } from './store-address.ts';

/** The way to the page on which the name of the plant is changed. */
export function PlantNameLink() {
  const { say } = useSpeech();
  return (
    <Link href={plantNameAddress} className="button">
      {say('store.plant-name')}
    </Link>
  );
}
