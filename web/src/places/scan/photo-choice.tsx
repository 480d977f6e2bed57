import { useState } from 'react';
import { useSpeech } from '../../speech/use-speech.tsx';
import { readPhoto } from './read-photo.ts';

interface PhotoChoiceProps {
  readonly onRead: (texts: readonly string[]) => void;
}

type Progress = 'idle' | 'reading' | 'nothing' | 'not';

/** A photo of a label in place of the camera: taken before, or sent by somebody. It stays on the device. */
export function PhotoChoice({ onRead }: PhotoChoiceProps) {
  const { say } = useSpeech();
  const [progress, setProgress] = useState<Progress>('idle');
  const read = async (file: File | undefined) => {
    if (file === undefined) return;
    setProgress('reading');
    const texts = await readPhoto(file).catch(() => 'not-a-photo' as const);
    if (texts === 'not-a-photo') return setProgress('not');
    setProgress(texts.length === 0 ? 'nothing' : 'idle');
    if (texts.length > 0) onRead(texts);
  };
  return (
    <div className="scan-photo">
      <label className="button">
        <input
          type="file"
          accept="image/*"
          className="sr"
          onChange={(event) => {
            void read(event.target.files?.[0]);
            // The same photo may be chosen once more.
            event.target.value = '';
          }}
        />
        {say('scan.photo')}
      </label>
      <p role="status" className={progress === 'reading' ? 'soft' : 'strong'}>
        {progress === 'idle' ? '' : say(`scan.photo.${progress}`)}
      </p>
    </div>
  );
}
