import { useSettings } from '../../settings/use-settings.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';
import { MainAction } from './main-action.tsx';
import { OtherRun } from './other-run.tsx';
import { ReadingsSaid } from './readings-said.tsx';
import { useRunShown } from './run-context.tsx';
import { SideTiles } from './side-tiles.tsx';
import { manySteps, StepSaid } from './step-said.tsx';
import { WaitView } from './wait-view.tsx';

/** The step that is to be done now, or the group of steps for somebody who knows the work. */
export function StepScreen() {
  const { say } = useSpeech();
  const { view, show, write, saving } = useRunShown();
  const { settings } = useSettings();
  const { current } = view;
  if (current === undefined) return null;
  const action = settings.pace === 'groups' ? (view.fast ?? view.main) : view.main;
  const main = action && <MainAction action={action} onTap={() => void write(action.changes ?? [])} />;
  const place = action?.placement.place ?? 'bottom';
  const waits = action === undefined || action.code === 'open';
  return (
    <div className="run-step" data-step={current.step} data-place={place}>
      {place === 'top' ? main : null}
      <div className="run-told">
        <StepSaid action={action} />
        {waits ? <WaitView brief={action !== undefined} /> : null}
        {place === 'middle' ? main : null}
        {action === undefined || action.measures.length === 0 || action.steps.length > manySteps ? null : (
          <ReadingsSaid asked={action.measures} />
        )}
      </div>
      <OtherRun />
      <div className="run-row">
        <SideTiles action={action} />
        <button type="button" className="button run-tile" disabled={saving} onClick={() => show({ name: 'more' })}>
          <span>{say('runs.more')}</span>
        </button>
      </div>
      {place === 'bottom' ? main : null}
      {action === undefined ? <Nothing /> : null}
    </div>
  );
}

/** While nothing needs doing there is nothing to tap. */
function Nothing() {
  const { say } = useSpeech();
  const { view, words } = useRunShown();
  return <p className="run-nothing">{view.keepClosed ? words.line('nothing-to-do') : say('runs.wait')}</p>;
}
