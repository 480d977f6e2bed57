import type { LinesOverview } from '@loopwright/jobs';
import { StateWord } from '../../page/state-word.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';
import { CardAction, firstTorn } from './first-action.tsx';

/** Beside the list while nothing is chosen: the torn position that waits longest, or what to do. */
export function PositionSummary({ overview }: { readonly overview: LinesOverview }) {
  const { say, moment } = useSpeech();
  const first = firstTorn(overview);
  if (first === undefined) return <p className="said">{say('app.choose')}</p>;
  const { position, state } = first;
  const line = overview.lines.find((group) => group.line.id === position.line)?.line;
  return (
    <div className="summary">
      <p>
        <StateWord state={state} /> {position.since === undefined ? '' : moment(position.since)}
      </p>
      <h2>{position.id}</h2>
      <p className="soft">{[line?.name, line?.belt].filter(Boolean).join(' · ')}</p>
      <CardAction overview={first} />
    </div>
  );
}
