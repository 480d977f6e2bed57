import { type Kind, type Plant, type Source, sources, toInside } from '@loopwright/plant';
import type { Voice } from '@loopwright/words';
import { type ComponentType, useId } from 'react';
import { Mark } from '../page/mark.tsx';
import { useSpeech } from '../speech/use-speech.tsx';
import { ChoiceEntry } from './choice-entry.tsx';
import { DayEntry } from './day-entry.tsx';
import type { Entry } from './entries.ts';
import { entrySentence } from './entry-sentence.ts';
import { choiceWord, fieldHelp, fieldLabel } from './field-words.ts';
import { type AskedAs, type FormField, hasSource } from './form-field.ts';
import { type ControlProps, NumberEntry } from './number-entry.tsx';
import type { EntryProblem } from './read-entries.ts';
import { readTypedNumber } from './read-number.ts';
import { ReferenceEntry } from './reference-entry.tsx';
import { TextEntry } from './text-entry.tsx';
import { unitNamed, unitSign } from './unit-choice.ts';
import { valueText } from './value-text.ts';
import { readableNumber } from './write-number.ts';

export interface FieldRowProps {
  readonly plant: Plant;
  readonly kind: Kind;
  readonly field: FormField;
  readonly entry: Entry;
  readonly text: string;
  readonly problem: EntryProblem | undefined;
  /** True once somebody has tried to save: then an empty field is a fault too. */
  readonly tried: boolean;
  /** Where all numbers of the thing come from. */
  readonly source: string;
  /** Whether each number may say where it comes from. */
  readonly ownSources: boolean;
  readonly onChange: (entry: Entry) => void;
}

type Control = ComponentType<ControlProps & { readonly plant: Plant }>;

const controls: Readonly<Record<AskedAs, Control>> = {
  id: TextEntry,
  text: TextEntry,
  number: NumberEntry,
  day: DayEntry,
  moment: DayEntry,
  reference: ReferenceEntry,
  choice: ChoiceEntry,
  'yes-no': ChoiceEntry,
};

/** One field: what it is, what stands in it, and what is wrong with it, as one types. */
export function FieldRow(props: FieldRowProps) {
  const speech = useSpeech();
  const { plant, kind, field, entry, text, problem, tried, onChange } = props;
  const id = useId();
  const label = fieldLabel(speech, kind, field.name);
  const help = fieldHelp(speech, kind, field.name);
  const wrong = problem !== undefined && (tried || text !== '') ? entrySentence(speech, problem, field) : undefined;
  const also = alsoText(speech, props);
  const Control = controls[field.asked];
  const grouped = field.asked === 'choice' || field.asked === 'yes-no';
  const lines = [help === undefined ? [] : `${id}-help`, wrong === undefined ? [] : `${id}-wrong`].flat();
  const described = lines.length === 0 ? undefined : lines.join(' ');
  const control = { plant, kind, field, label, entry, text, id, describedBy: described, wrong: wrong !== undefined };
  return (
    <div className="field" data-field={field.name}>
      {grouped ? null : (
        <label className="field-label" htmlFor={id}>
          {label} {field.required ? null : <span className="field-open">{speech.say('stores.open')}</span>}
        </label>
      )}
      <Control {...control} onChange={onChange} />
      {help === undefined ? null : (
        <p className="caption" id={`${id}-help`}>
          {help}
        </p>
      )}
      {also === '' ? null : <p className="caption">{also}</p>}
      {wrong === undefined ? null : <Wrong id={`${id}-wrong`} text={wrong} />}
      <SourceLine {...props} label={label} />
    </div>
  );
}

function Wrong({ id, text }: { readonly id: string; readonly text: string }) {
  return (
    <p className="field-wrong" id={id} role="status">
      <Mark name="stop" />
      <span>{text}</span>
    </p>
  );
}

/** The number in the unit that the reader reads by, when it is typed in another; the usual value while none is typed. */
function alsoText(voice: Voice, { kind, field, entry, text }: FieldRowProps): string {
  if (text === '') {
    const usual = field.byDefault ?? field.prior;
    if (field.asked !== 'number' || usual === undefined) return '';
    return voice.say('stores.by-default', { value: valueText(voice, kind, field, usual) });
  }
  const typed = unitNamed(field, entry.unit, voice.units);
  const own = unitNamed(field, undefined, voice.units);
  if (typed === undefined || own === undefined || typed === own) return '';
  const read = readTypedNumber(text, voice.language);
  if (!('value' in read)) return '';
  return `= ${readableNumber(toInside(read.value, typed), own, voice.language)}\u00a0${unitSign(voice, own.unit)}`;
}

function SourceLine({ field, entry, text, source, ownSources, label, onChange }: FieldRowProps & { label: string }) {
  const speech = useSpeech();
  if (!hasSource(field) || text === '') return null;
  const word = (name: string) => choiceWord(speech, 'source', name);
  if (!ownSources) return source === '' ? null : <p className="caption field-source">{word(entry.source ?? source)}</p>;
  const choose = (chosen: string) => {
    const { source: _, ...rest } = entry;
    const own: Source | undefined = sources.find((name) => name === chosen);
    onChange(own === undefined ? rest : { ...rest, source: own });
  };
  return (
    <select
      className="entry source-choice"
      aria-label={speech.say('stores.source-of', { field: label })}
      value={entry.source ?? ''}
      onChange={(event) => choose(event.target.value)}
    >
      <option value="">{speech.say('stores.source-as-all', { source: word(source) })}</option>
      {sources.map((name) => (
        <option key={name} value={name}>
          {word(name)}
        </option>
      ))}
    </select>
  );
}
