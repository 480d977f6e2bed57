import type { StepView } from '@loopwright/jobs/press-run';
import { useState } from 'react';
import { useSpeech } from '../../speech/use-speech.tsx';
import { useRunShown } from './run-context.tsx';
import { StepOpened } from './step-opened.tsx';
import { Tiles } from './tiles.tsx';

/** Every step of the run, the current ones first: each opens what to do and why, and what may be done now. */
export function AllSteps() {
  const { say } = useSpeech();
  const { view, words, show } = useRunShown();
  const [opened, setOpened] = useState<StepView['step']>();
  const step = view.steps.find((each) => each.step === opened);
  if (step !== undefined) return <StepOpened step={step} onBack={() => setOpened(undefined)} />;
  const from = Math.max(
    0,
    view.steps.findIndex((each) => each.step === view.current?.step),
  );
  const ordered = [...view.steps.slice(from), ...view.steps.slice(0, from)];
  const tiles = ordered.map((each) => ({
    key: each.step,
    shown: (
      <>
        <span className="run-tile-number">{each.number}</span> {words.step(each.step)}
        <span className="caption run-tile-state">{say(`runs.state.${each.state}`)}</span>
      </>
    ),
    now: each.state === 'current',
    onTap: () => setOpened(each.step),
  }));
  return <Tiles title={say('runs.all-steps')} tiles={tiles} onBack={() => show({ name: 'step' })} />;
}
