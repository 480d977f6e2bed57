import type { RunAction } from '@loopwright/jobs/press-run';
import { Mark } from '../../page/mark.tsx';
import { useRunShown } from './run-context.tsx';

/** More than so many stand in two columns. */
export const manySteps = 4;

/** Number, title and what to do; of a group the titles of its steps. */
export function StepSaid({ action }: { readonly action: RunAction | undefined }) {
  const { view, words, state } = useRunShown();
  const { current } = view;
  if (current === undefined) return null;
  const numberOf = (step: string) => view.steps.find((each) => each.step === step)?.number;
  const isGroup = action?.code === 'group-done';
  const isInPress = view.curve !== undefined || view.keepClosed;
  const ways =
    current.step === 'dry' && state.dry?.answer === 'not-dry'
      ? words.ways('not-dry')
      : current.step === 'match' && state.recipe?.answer === 'differs'
        ? words.ways('differs')
        : undefined;
  return (
    <>
      <h1 className="run-title">
        <span className="balloon">{current.number}</span>
        <span>
          {isInPress ? words.phase(view.phase) : isGroup ? words.group(current.group) : words.step(current.step)}
        </span>
      </h1>
      {isInPress && action === undefined ? null : isGroup ? (
        <>
          <ol className="run-group" data-many={action.steps.length > manySteps}>
            {action.steps.map((step) => (
              <li key={step}>
                <span className="run-number">{numberOf(step)}</span> <span>{words.step(step)}</span>
              </li>
            ))}
          </ol>
          {action.steps.includes('heat') ? <p className="run-why soft">{words.todo('heat')}</p> : null}
        </>
      ) : (
        <p className="run-do">{words.todo(current.step)}</p>
      )}
      {isGroup || isInPress || current.measures.length > 0 ? null : (
        <p className="run-why soft">{words.why(current.step)}</p>
      )}
      {ways === undefined ? null : (
        <p className="run-care">
          <Mark name="care" /> <span>{ways}</span>
        </p>
      )}
    </>
  );
}
