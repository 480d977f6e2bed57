import type { RunAction, StepView } from '@loopwright/jobs/press-run';
import { keyed } from '../../page/keyed.ts';
import { useSpeech } from '../../speech/use-speech.tsx';
import { ReadingsSaid } from './readings-said.tsx';
import { useRunShown } from './run-context.tsx';

interface StepOpenedProps {
  readonly step: StepView;
  readonly onBack: () => void;
}

/** One step opened: what to do, why, what stands in its way, and its action where it may be done now. */
export function StepOpened({ step: opened, onBack }: StepOpenedProps) {
  const { say } = useSpeech();
  const { words, view, show, write, saving } = useRunShown();
  const { step, number, state, action, whyNot, settled } = opened;
  const take = (tapped: RunAction) => {
    if (tapped.changes === undefined || tapped.choices !== undefined)
      return show({ name: 'choices', code: tapped.code, step });
    void write(tapped.changes).then((kept) => kept && show({ name: 'step' }));
  };
  return (
    <section className="run-panel">
      <h1 className="run-title">
        <span className="balloon">{number}</span>
        <span>{words.step(step)}</span>
      </h1>
      <p className="run-do">{words.todo(step)}</p>
      <p className="soft">{words.why(step)}</p>
      <p className="strong">
        {say(`runs.state.${state}`)}
        {settled?.reason === undefined ? '' : ` · ${words.reason(settled.reason)}`}
      </p>
      {keyed(whyNot).map(({ key, item }) => (
        <p key={key}>{words.blocked(item)}</p>
      ))}
      {opened.measures.length === 0 ? null : <ReadingsSaid asked={opened.measures} />}
      <div className="run-row">
        {opened.measures.length === 0 || view.end !== undefined ? null : (
          <button
            type="button"
            className="button run-tile"
            onClick={() => show({ name: 'readings', measures: opened.measures.map(({ measure }) => measure) })}
          >
            <span>{say('runs.readings', { count: opened.measures.length })}</span>
          </button>
        )}
        {action === undefined || action.own ? null : (
          <button type="button" className="button run-tile" disabled={saving} onClick={() => take(action)}>
            <span>{words.action(action.code)}</span>
          </button>
        )}
        <button type="button" className="button run-tile run-back" onClick={onBack}>
          <span>{say('runs.back')}</span>
        </button>
      </div>
    </section>
  );
}
