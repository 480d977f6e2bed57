import type { CardPath } from '@loopwright/jobs';
import { figureOf } from '@loopwright/sheets';
import { choiceWord } from '../../../form/field-words.ts';
import { FigureView } from '../../../page/figure-view.tsx';
import { useSpeech } from '../../../speech/use-speech.tsx';
import type { LoopNow, Worst } from './loop-now.ts';

/** Below this a take-up does not do its work: a wrap of half a turn gives 2. */
const leastGain = 0.2;

interface LoopFactsProps {
  readonly loop: LoopNow;
  /** Leads to the measurement that is worth taking again. */
  readonly onAgain?: (worst: Worst) => void;
}

/** Length of the loop with its range, what the range comes from, and how far the belt wraps each pulley. */
export function LoopFacts({ loop, onAgain }: LoopFactsProps) {
  const speech = useSpeech();
  const { say } = speech;
  const { path, worst, gain } = loop;
  if (path === undefined) return null;
  return (
    <section className="part">
      <h2>{say('geometry.length')}</h2>
      <div className="big" aria-live="polite">
        <FigureView figure={figureOf(path.length, speech)} large />
      </div>
      <p className="caption">{say('geometry.length.note')}</p>
      {worst === undefined || worst.share === 0 ? null : <WorstText worst={worst} onAgain={onAgain} />}
      {gain !== undefined && gain < leastGain ? (
        <p className="caution caution-care">{say('geometry.takeUp.no-gain', { value: speech.number(gain, 2) })}</p>
      ) : null}
      <Wraps path={path} />
    </section>
  );
}

function WorstText({ worst, onAgain }: { readonly worst: Worst; readonly onAgain: LoopFactsProps['onAgain'] }) {
  const speech = useSpeech();
  const { measurement, pulley, share } = worst;
  const percent = speech.number(Math.round(share * 100), 0);
  const question = measurement === undefined ? '' : `survey.${measurement.replace(/_m$/, '')}`;
  return (
    <>
      <p>
        {speech.has(question)
          ? speech.say('geometry.worst', { share: percent, what: speech.say(question) })
          : speech.say('geometry.worst.pulley', { share: percent, number: (pulley ?? 0) + 1 })}
      </p>
      {onAgain === undefined ? null : (
        <button type="button" className="button" onClick={() => onAgain(worst)}>
          {speech.say('geometry.again')}
        </button>
      )}
    </>
  );
}

function Wraps({ path }: { readonly path: CardPath }) {
  const speech = useSpeech();
  return (
    <table className="wraps">
      <caption className="strong">{speech.say('geometry.wraps')}</caption>
      <thead>
        <tr>
          <th scope="col">{speech.say('geometry.wraps.pulley')}</th>
          <th scope="col">{speech.say('geometry.wraps.wrap')}</th>
        </tr>
      </thead>
      <tbody>
        {path.pulleys.map((pulley, at) => (
          <tr key={pulley.id}>
            <th scope="row">
              {at + 1} {choiceWord(speech, 'role', pulley.role)}
            </th>
            <td>{speech.write(pulley.wrap_rad, 'angle')}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
