import { watchRun } from '@loopwright/jobs/curve-watch';
import { voiceOfDisplay } from '@loopwright/sheets';
import { watchWords } from '@loopwright/words';
import { Mark } from '../../page/mark.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';
import { useRunShown } from './run-context.tsx';

/** What the readings so far show against the prediction; the gravest, with what to do. */
export function CurveWarnings() {
  const speech = useSpeech();
  const { state } = useRunShown();
  const words = watchWords(speech, voiceOfDisplay(state.started.things.press, speech));
  const [gravest] = watchRun(state).toSorted((a, b) => rank[a.level] - rank[b.level]);
  if (gravest === undefined || gravest.level === 'note') return null;
  return (
    <p className={gravest.level === 'stop' ? 'run-fault' : 'run-care'} role="alert">
      <Mark name={gravest.level === 'stop' ? 'stop' : 'care'} />
      <span>
        <strong>{words.seen(gravest)}</strong> {words.todo(gravest.code)} {words.mayBe(gravest)}
      </span>
    </p>
  );
}

const rank = { stop: 0, care: 1, note: 2 } as const;
