import { runFaces } from '@loopwright/records/run';
import { useSpeech } from '../../speech/use-speech.tsx';
import { useRunShown } from './run-context.tsx';
import { Tiles } from './tiles.tsx';

/** A photo of each face, or why there is none. */
export function PhotosPanel() {
  const { say } = useSpeech();
  const { show, words, view } = useRunShown();
  const tiles = view.others
    .filter(({ code }) => code === 'no-photo')
    .map(({ code }) => ({
      key: code,
      shown: words.action(code),
      onTap: () => show({ name: 'choices' as const, code }),
    }));
  const said = (
    <ul className="run-said">
      {runFaces.map((face) => (
        <li key={face}>{words.choice(face)}</li>
      ))}
    </ul>
  );
  return <Tiles title={say('runs.photos')} said={said} tiles={tiles} onBack={() => show({ name: 'step' })} />;
}
