import type { LineSummary, LinesOverview, PositionSummary } from '@loopwright/jobs';
import type { Voice } from '@loopwright/words';
import { StateWord } from '../../page/state-word.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';
import { CardAction, firstTorn } from './first-action.tsx';

/** Beside the list while nothing is chosen: the torn position that waits longest, or what to do; nothing in a plant without lines. */
export function NextPosition({ overview }: { readonly overview: LinesOverview }) {
  const speech = useSpeech();
  const next = firstTorn(overview);
  if (overview.lines.length === 0) return null;
  if (next === undefined) return <p className="said">{speech.say('app.choose')}</p>;
  const { position, state } = next;
  const group = overview.lines.find(({ line }) => line.id === position.line);
  return (
    <div className="summary">
      <p>
        <StateWord state={state} /> {position.since === undefined ? '' : speech.moment(position.since)}
      </p>
      <h2>{position.id}</h2>
      <p className="soft">{group?.line.name}</p>
      <dl className="rows">
        {facts(speech, next, group).map(({ label, value }) => (
          <div className="row" key={label}>
            <dt>{label}</dt>
            <dd className="row-value row-text">{value}</dd>
          </div>
        ))}
      </dl>
      <CardAction summary={next} />
    </div>
  );
}

/** What the plant knows at a look; what it does not know is left out here, the card says how to find out. */
function facts({ say, write, day }: Voice, summary: PositionSummary, group: LineSummary | undefined) {
  const { position, endless_m, revolutions } = summary;
  const width = group === undefined ? '' : ` · ${write(group.line.width_m, 'length')}`;
  return [
    { label: say('app.belt'), value: group === undefined ? '' : `${group.line.belt}${width}` },
    { label: say('card.cut.endless'), value: endless_m === undefined ? '' : write(endless_m, 'length') },
    { label: say('card.revolutions'), value: revolutions === undefined ? '' : write(revolutions, 'revolutions') },
    { label: say('app.fitted'), value: position.fittedOn === undefined ? '' : day(position.fittedOn) },
  ].filter(({ value }) => value !== '');
}
