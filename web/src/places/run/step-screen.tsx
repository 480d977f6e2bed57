import type { RunAction } from '@loopwright/jobs/press-run';
import { withMeasures } from '@loopwright/jobs/press-run';
import { useState } from 'react';
import { useSettings } from '../../settings/use-settings.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';
import { MainAction } from './main-action.tsx';
import { Measures, type ReadValues } from './measures.tsx';
import { OtherRun } from './other-run.tsx';
import { useRunShown } from './run-context.tsx';
import { SideTile } from './side-tile.tsx';
import { StepSaid } from './step-said.tsx';
import { WaitView } from './wait-view.tsx';

/** The step that is to be done now, or the group of steps for somebody who knows the work. */
export function StepScreen() {
  const { say } = useSpeech();
  const { view, show, write, saving } = useRunShown();
  const { settings } = useSettings();
  const [values, setValues] = useState<ReadValues>({});
  const { current } = view;
  if (current === undefined) return null;
  const action = settings.pace === 'groups' ? (view.fast ?? view.main) : view.main;
  const tap = (tapped: RunAction) => void write(withMeasures(tapped, values));
  const main = action && <MainAction action={action} onTap={() => tap(action)} />;
  const place = action?.placement.place ?? 'bottom';
  const waits = action === undefined || view.curve !== undefined;
  return (
    <div className="run-step" data-step={current.step} data-place={place}>
      {place === 'top' ? main : null}
      <div className="run-told">
        <StepSaid action={action} />
        {waits ? <WaitView /> : null}
        {place === 'middle' ? main : null}
        {action === undefined || action.measures.length === 0 ? null : (
          <Measures asked={action.measures} values={values} onChange={setValues} />
        )}
      </div>
      <OtherRun />
      <div className="run-row">
        <SideTile action={action} />
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
