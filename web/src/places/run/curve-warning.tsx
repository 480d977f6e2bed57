import { type CurveWarning, watchRun } from '@loopwright/jobs/curve-watch';
import type { RunState } from '@loopwright/jobs/press-run';
import { watchWords } from '@loopwright/words';
import { Mark } from '../../page/mark.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';
import { useRunShown } from './run-context.tsx';

/** The gravest of what the readings so far show against the prediction; undefined while there is nothing to act on. */
export function gravestWarning(state: RunState): CurveWarning | undefined {
  const [gravest] = watchRun(state)
    .filter(({ level }) => level !== 'note')
    .toSorted((a, b) => Number(b.level === 'stop') - Number(a.level === 'stop'));
  return gravest;
}

/** What the readings show, what it may be, what to do. */
export function CurveWarningView({ warning }: { readonly warning: CurveWarning }) {
  const speech = useSpeech();
  const { display } = useRunShown();
  const words = watchWords(speech, display);
  return (
    <p className={warning.level === 'stop' ? 'run-fault' : 'run-care'} role="alert">
      <Mark name={warning.level === 'stop' ? 'stop' : 'care'} />
      <span>
        <strong>{words.seen(warning)}</strong> {words.todo(warning.code)} {words.mayBe(warning)}
      </span>
    </p>
  );
}
