import { useEffect, useState } from 'react';
import { useSpeech } from '../speech/use-speech.tsx';
import { useStore } from '../store/use-store.tsx';
import { photoOf } from './photo-of.ts';

interface PhotoThumbProps {
  readonly sha256: string;
  /** What the photo shows. */
  readonly label: string;
}

/** A kept photo, small; a tap shows it as large as the screen is wide. */
export function PhotoThumb({ sha256, label }: PhotoThumbProps) {
  const { say } = useSpeech();
  const { shown, noteDamage } = useShown(sha256);
  const [large, setLarge] = useState(false);
  if (typeof shown !== 'object') return <p className="soft">{say(`photo.thumb.${shown}`, { label })}</p>;
  return (
    <figure className="photo-thumb" data-large={large}>
      <button type="button" aria-expanded={large} onClick={() => setLarge(!large)}>
        <img src={shown.address} alt={label} onError={noteDamage} />
      </button>
      <figcaption>{label}</figcaption>
    </figure>
  );
}

type Shown = { readonly address: string } | 'reading' | 'not-here' | 'damaged';

function useShown(sha256: string): { readonly shown: Shown; readonly noteDamage: () => void } {
  const { store } = useStore();
  const [shown, setShown] = useState<Shown>('reading');
  useEffect(() => {
    let address: string | undefined;
    let wanted = true;
    const show = (photo: Blob | undefined) => {
      if (!wanted) return;
      address = photo && URL.createObjectURL(photo);
      setShown(address === undefined ? 'not-here' : { address });
    };
    setShown('reading');
    photoOf(store, sha256).then(show, () => show(undefined));
    return () => {
      wanted = false;
      if (address !== undefined) URL.revokeObjectURL(address);
    };
  }, [store, sha256]);
  return { shown, noteDamage: () => setShown('damaged') };
}
