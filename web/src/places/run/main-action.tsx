import type { RunAction } from '@loopwright/jobs/press-run';
import { useSpeech } from '../../speech/use-speech.tsx';
import { BigButton } from './big-button.tsx';
import { useRunShown } from './run-context.tsx';

interface MainActionProps {
  readonly action: RunAction;
  readonly onTap: () => void;
}

/** From this tap on the times run, so it says what must be so at that moment. */
const startsHeat = ({ code, steps }: RunAction): boolean => code === 'group-done' && steps.includes('heat');

/** The big action of a step: writes at once, or asks for the answer that only a person has. */
export function MainAction({ action, onTap }: MainActionProps) {
  const { say } = useSpeech();
  const { words, saving, show, view } = useRunShown();
  const { code, changes, choices, placement, own, steps } = action;
  const ask = () => show({ name: 'choices', code, step: steps[0] ?? '' });
  const label =
    code === 'done' && own ? words.step(steps[0] ?? '') : words.action(startsHeat(action) ? 'heat-on' : code);
  if (placement.shape === 'two-halves' && changes !== undefined) {
    return (
      <div className="run-halves">
        <BigButton onTap={onTap} disabled={saving} shape="two-halves">
          {label}
        </BigButton>
        <button type="button" className="button run-tile run-half" disabled={saving} onClick={ask}>
          <span>{say('runs.not-same')}</span>
        </button>
      </div>
    );
  }
  const answers = changes === undefined && choices !== undefined;
  const sealed = code === 'dry' && changes !== undefined;
  return (
    <BigButton
      key={`${view.current?.step} ${code}`}
      onTap={answers ? ask : onTap}
      disabled={saving}
      shape={placement.shape}
      keyed={!own && !answers}
    >
      {sealed ? words.choice('sealed-roll') : label}
    </BigButton>
  );
}
