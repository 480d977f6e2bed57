import { useEffect, useRef, useState } from 'react';
import { type Photo, type PhotoFault, takePhoto } from './take-photo.ts';

/** How far a photo has come. Only `kept` says that it is on the disk. */
export type PhotoProgress =
  | { readonly at: 'idle' }
  | { readonly at: 'reading'; readonly megapixels?: number }
  | { readonly at: 'keeping'; readonly photo: Photo }
  | { readonly at: 'kept'; readonly photo: Photo }
  | { readonly at: 'fault'; readonly fault: PhotoFault; readonly data: Readonly<Record<string, number>> }
  /** Read, and held until it can be kept. */
  | { readonly at: 'not-kept'; readonly photo: Photo; readonly cause: unknown };

interface PhotoTaking {
  readonly progress: PhotoProgress;
  readonly take: (file: File) => void;
  readonly stop: () => void;
  readonly keep: (photo: Photo) => void;
}

/**
 * Reads a chosen file and hands it on.
 *
 * @param onTaken - resolves when the photo and what says that it was taken are on the disk
 */
export function usePhotoTaking(onTaken: (photo: Photo) => Promise<unknown>): PhotoTaking {
  const [progress, setProgress] = useState<PhotoProgress>({ at: 'idle' });
  const reading = useRef<AbortController>(undefined);
  useEffect(() => () => reading.current?.abort(), []);
  const keep = (photo: Photo) => {
    setProgress({ at: 'keeping', photo });
    onTaken(photo).then(
      () => setProgress({ at: 'kept', photo }),
      (cause: unknown) => setProgress({ at: 'not-kept', photo, cause }),
    );
  };
  const take = async (file: File) => {
    reading.current?.abort();
    const own = new AbortController();
    const { signal } = own;
    reading.current = own;
    setProgress({ at: 'reading' });
    const onLarge = (megapixels: number) => setProgress({ at: 'reading', megapixels });
    const taken = await takePhoto(file, { signal, onLarge });
    // Stopped, gone from the screen, or another one chosen: whoever did so has said what is shown.
    if (signal.aborted) return;
    if ('photo' in taken) keep(taken.photo);
    else setProgress({ at: 'fault', ...taken });
  };
  const stop = () => {
    reading.current?.abort();
    setProgress({ at: 'fault', fault: 'stopped', data: {} });
  };
  return { progress, take: (file) => void take(file), stop, keep };
}
