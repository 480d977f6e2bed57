import { type RunState, runFacts, viewRun } from '@loopwright/jobs/press-run';
import { runWords } from '@loopwright/words';
import { useLocation } from 'wouter';
import { BadgeShape } from '../../form/badge-shape.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';
import { useOpenRuns } from '../../store/use-runs.ts';
import { timeToOpen } from './clock-text.ts';
import { runAddress } from './run-address.ts';
import { useRunShown } from './run-context.tsx';

/** The other runs that are open on this device: one tap shows them, their alarms ring here too. */
export function OtherRun() {
  const { state } = useRunShown();
  const others = useOpenRuns().filter(({ id }) => id !== state.id);
  return others.map((other) => <OtherTile key={other.id} other={other} />);
}

function OtherTile({ other }: { readonly other: RunState }) {
  const speech = useSpeech();
  const [, goTo] = useLocation();
  const { now } = useRunShown();
  const view = viewRun(other, now);
  const words = runWords(speech, runFacts(other));
  return (
    <button type="button" className="button run-tile run-other" onClick={() => goTo(runAddress(other.id))}>
      <span>
        <BadgeShape shape={view.sign.shape} /> {words.sign(view.sign.word)} · {view.position}
      </span>
      <span>
        {view.alarm === undefined ? '' : `${speech.say('runs.alarm')} · `}
        {timeToOpen(speech, view) ?? words.phase(view.phase)}
      </span>
    </button>
  );
}
