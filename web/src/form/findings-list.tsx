import type { PlantProblem } from '@loopwright/plant';
import { fieldsOf, thingSchemas } from '@loopwright/plant';
import { problemSentence, type Voice } from '@loopwright/words';
import { keyed } from '../page/keyed.ts';
import { Mark } from '../page/mark.tsx';
import { useSpeech } from '../speech/use-speech.tsx';
import { fieldLabel } from './field-words.ts';
import type { Findings } from './findings.ts';

const mostShown = 8;

/** What the rest of the plant says to a change, before it is saved. */
export function FindingsList({ findings }: { readonly findings: Findings }) {
  const { say } = useSpeech();
  const { errors, cares } = findings;
  return (
    <div aria-live="polite" className="findings">
      {errors.length === 0 ? null : (
        <FindingsGroup title={say('stores.findings.errors')} level="stop" problems={errors} />
      )}
      {cares.length === 0 ? null : <FindingsGroup title={say('stores.findings.cares')} level="care" problems={cares} />}
    </div>
  );
}

interface FindingsGroupProps {
  readonly title: string;
  readonly level: 'stop' | 'care';
  readonly problems: readonly PlantProblem[];
}

function FindingsGroup({ title, level, problems }: FindingsGroupProps) {
  const speech = useSpeech();
  const left = problems.length - mostShown;
  return (
    <div className={`caution caution-${level}`}>
      <Mark name={level} />
      <div>
        <p className="strong">{title}</p>
        <ul className="list">
          {keyed(problems.slice(0, mostShown)).map(({ key, item }) => (
            <li key={key}>
              <p>{findingSentence(speech, item)}</p>
            </li>
          ))}
        </ul>
        {left > 0 ? <p>{speech.say('stores.findings.more', { count: left })}</p> : null}
      </div>
    </div>
  );
}

/** The sentence of a finding, the thing and the field in front. */
function findingSentence(voice: Voice, { kind, id, field, code, data }: PlantProblem): string {
  const name =
    field === undefined ? undefined : fieldsOf(thingSchemas[kind]).find((known) => known.key === field)?.name;
  const place = [
    `${voice.say(`stores.one.${kind}`)} ${id}`,
    ...(name === undefined ? [] : [fieldLabel(voice, kind, name)]),
  ];
  return problemSentence(voice, { file: place.join(' · '), code, data });
}
