import { useSettings } from '../../settings/use-settings.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';

/** Asked once on a device: alone or two people. It changes steps and time; until then the card is for one. */
export function PeopleQuestion() {
  const { say } = useSpeech();
  const { change } = useSettings();
  return (
    <fieldset className="ask">
      <legend className="sr">{say('app.people')}</legend>
      <p>
        <span className="strong" aria-hidden="true">
          {say('app.people')}
        </span>{' '}
        <span className="soft">{say('app.people.until')}</span>
      </p>
      <div className="ask-answers">
        {([1, 2] as const).map((people) => (
          <button key={people} type="button" className="button" onClick={() => change({ people })}>
            {say(`app.people.${people}`)}
          </button>
        ))}
      </div>
    </fieldset>
  );
}
