import { type RunFace, runChange, runFaces } from '@loopwright/records/run';
import { useState } from 'react';
import { PhotoTake } from '../../photo/photo-take.tsx';
import type { Photo } from '../../photo/take-photo.ts';
import { useSpeech } from '../../speech/use-speech.tsx';
import { useRunShown } from './run-context.tsx';

/** A photo of each face, or why there is none. */
export function PhotosPanel() {
  const { say } = useSpeech();
  const { show, words, view, state, append } = useRunShown();
  const [face, setFace] = useState<RunFace>(() => runFaces.find((each) => !isSettled(each)) ?? 'roller');
  const noPhoto = view.others.some(({ code }) => code === 'no-photo');
  const keep = ({ blob, sha256, bytes, width_px, height_px }: Photo) => {
    const thing = { run: view.run, face, sha256, bytes, width_px, height_px };
    return append([runChange('run.photo-taken', thing)], [blob]);
  };
  return (
    <section className="run-panel">
      <h1>{say('runs.photos')}</h1>
      <div className="run-row">
        {runFaces.map((each) => (
          <button
            key={each}
            type="button"
            className="button run-tile"
            aria-pressed={each === face}
            onClick={() => setFace(each)}
          >
            <span>{words.choice(each)}</span>
            <span className="caption">{say(isSettled(each) ? 'runs.state.settled' : 'runs.state.open')}</span>
          </button>
        ))}
      </div>
      <PhotoTake key={face} face={face} kept={photoOf(face)} onTaken={keep} />
      <div className="run-row run-back">
        <button type="button" className="button run-tile" onClick={() => show({ name: 'step' })}>
          <span>{say('runs.back')}</span>
        </button>
        {noPhoto ? (
          <button type="button" className="button run-tile" onClick={() => show({ name: 'choices', code: 'no-photo' })}>
            <span>{words.action('no-photo')}</span>
          </button>
        ) : null}
      </div>
    </section>
  );

  function photoOf(of: RunFace): string | undefined {
    return view.photos.findLast((each) => each.face === of && each.attempt === view.attempt)?.sha256;
  }

  function isSettled(of: RunFace): boolean {
    return photoOf(of) !== undefined || state.noPhoto[of] !== undefined;
  }
}
