import { Link } from 'wouter';
import { useSpeech } from '../../speech/use-speech.tsx';
import { useStore } from '../../store/use-store.tsx';
import { cardAddress } from '../card/card-address.ts';
import { recordAddress } from '../record/record-address.ts';
import { everythingAddress } from '../stores/store-address.ts';
import { useRunShown } from './run-context.tsx';

/** The run is over: what is still open, what departed from the card, and where the proof is. */
export function EndView() {
  const { say, list, day } = useSpeech();
  const { view, words, show, plant } = useRunShown();
  const { state } = useStore();
  const open = view.deviations.filter(({ accepted }) => accepted === undefined);
  const accept = view.others.find(({ code }) => code === 'accept');
  return (
    <section className="run-panel">
      <h1>{words.end(view.end ?? 'finished')}</h1>
      {view.openPoints.length === 0 ? null : (
        <p className="strong">{words.line('still-open', { steps: list(view.openPoints.map(words.step)) })}</p>
      )}
      {view.retensionOn === undefined || view.end === 'stopped' ? null : (
        <p>{words.line('retension', { day: day(view.retensionOn) })}</p>
      )}
      <h2>{say('runs.deviations', { count: view.deviations.length })}</h2>
      <ul className="run-said">
        {view.deviations.map((each) => (
          <li key={each.id}>
            {words.deviation(each)}{' '}
            <span className="soft">
              {each.accepted === undefined
                ? words.line('not-accepted')
                : words.line('accepted', { badge: plant.badges[each.accepted.by]?.word ?? each.accepted.by })}
            </span>
          </li>
        ))}
      </ul>
      {open.length === 0 ? null : <p className="soft">{say('runs.second-badge')}</p>}
      <p className="soft">{say(state.device.onlyHere > 0 ? 'runs.only-here' : 'runs.seen')}</p>
      <div className="run-tiles">
        {accept === undefined ? null : (
          <button type="button" className="button run-tile" onClick={() => show({ name: 'choices', code: 'accept' })}>
            <span>{words.action('accept')}</span>
          </button>
        )}
        <Link href={recordAddress(view.run)} className="button run-tile">
          {say('runs.record')}
        </Link>
        <button type="button" className="button run-tile" onClick={() => show({ name: 'logger' })}>
          <span>{say('runs.logger')}</span>
        </button>
        <button type="button" className="button run-tile" onClick={() => show({ name: 'who' })}>
          <span>{say('who.nobody')}</span>
        </button>
        <Link href={everythingAddress} className="button run-tile">
          {say('runs.export')}
        </Link>
        <Link href={cardAddress(view.position)} className="button run-tile">
          {say('card.title')}
        </Link>
        <Link href="/" className="button run-tile">
          {say('app.lines')}
        </Link>
      </div>
    </section>
  );
}
