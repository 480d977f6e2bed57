import type { RunFace } from '@loopwright/records/run';
import type { ReactNode } from 'react';
import { useBusy } from '../offline/busy.ts';
import { useSpeech } from '../speech/use-speech.tsx';
import { faultSentence } from '../store/fault-sentence.ts';
import { PhotoThumb } from './photo-thumb.tsx';
import type { Photo } from './take-photo.ts';
import { type PhotoProgress, usePhotoTaking } from './use-photo-taking.ts';

interface PhotoTakeProps {
  /** Which side of the belt. */
  readonly face: RunFace;
  /** Hash of the photo that is kept of this side already. */
  readonly kept?: string | undefined;
  /** Appends the event with the photo among its `blobs`; resolves when both are on the disk. */
  readonly onTaken: (photo: Photo) => Promise<unknown>;
}

/** Takes the photo of one side. The camera is the device's own, so the page needs no leave to use it. */
export function PhotoTake({ face, kept, onTaken }: PhotoTakeProps) {
  const { say } = useSpeech();
  const { progress, take, stop, keep } = usePhotoTaking(onTaken);
  const isWorking = progress.at === 'reading' || progress.at === 'keeping';
  useBusy(isWorking || progress.at === 'not-kept');
  const shown = progress.at === 'kept' ? progress.photo.sha256 : kept;
  const side = say(`run.choice.${face}`);
  return (
    <div className="photo" data-photo={progress.at} data-face={face}>
      {shown === undefined ? null : <PhotoThumb key={shown} sha256={shown} label={side} />}
      <div role="status">
        <PhotoSaid progress={progress} />
      </div>
      {progress.at === 'reading' ? (
        <button type="button" className="button photo-large" onClick={stop}>
          {say('photo.stop')}
        </button>
      ) : null}
      {progress.at === 'not-kept' ? (
        <button type="button" className="button photo-large" onClick={() => keep(progress.photo)}>
          {say('photo.keep-again')}
        </button>
      ) : null}
      {isWorking ? null : (
        <>
          <FileLabel className="button photo-large" camera onFile={take}>
            {say(shown === undefined ? 'photo.take' : 'photo.take-again', { side })}
          </FileLabel>
          <FileLabel className="button" camera={false} onFile={take}>
            {say('photo.choose')}
          </FileLabel>
        </>
      )}
    </div>
  );
}

function PhotoSaid({ progress }: { readonly progress: PhotoProgress }) {
  const speech = useSpeech();
  const { say } = speech;
  switch (progress.at) {
    case 'idle':
      return null;
    case 'reading': {
      const { megapixels } = progress;
      return <p>{megapixels === undefined ? say('photo.reading') : say('photo.reading-large', { megapixels })}</p>;
    }
    case 'keeping':
      return <p>{say('photo.keeping')}</p>;
    case 'kept': {
      const { width_px, height_px } = progress.photo;
      return <p>{say('photo.kept', { width: String(width_px), height: String(height_px) })}</p>;
    }
    case 'fault':
      return <p className="strong">{say(`photo.fault.${progress.fault}`, progress.data)}</p>;
    case 'not-kept':
      return <p className="strong">{say('photo.not-kept', { reason: faultSentence(speech, progress.cause) })}</p>;
  }
}

interface FileLabelProps {
  readonly className: string;
  /** Goes straight to the camera at the back, where the device has one; else pictures are offered. */
  readonly camera: boolean;
  readonly onFile: (file: File) => void;
  readonly children: ReactNode;
}

/** A label as large as a hand; the browser's own entry inside of it is too small to hit and speaks its own language. */
function FileLabel({ className, camera, onFile, children }: FileLabelProps) {
  return (
    <label className={className}>
      <input
        type="file"
        accept="image/*"
        capture={camera ? 'environment' : undefined}
        className="sr"
        onChange={({ target }) => {
          const [file] = target.files ?? [];
          if (file !== undefined) onFile(file);
          // The same picture may be chosen once more.
          target.value = '';
        }}
      />
      {children}
    </label>
  );
}
