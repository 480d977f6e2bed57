import type { Plant, Pulley } from '@loopwright/plant';
import { useId } from 'react';
import { type Entry, shownText } from '../../../form/entries.ts';
import { choiceWord, fieldLabel } from '../../../form/field-words.ts';
import type { FormField } from '../../../form/form-field.ts';
import { useSpeech } from '../../../speech/use-speech.tsx';
import { EntryRow } from './entry-row.tsx';
import type { PulleyRow } from './geometry.ts';
import { pulleyRowFields } from './geometry-fields.ts';
import type { Problems } from './read-geometry.ts';

interface PulleyFieldsProps {
  readonly plant: Plant;
  readonly row: PulleyRow;
  readonly number: number;
  readonly isLast: boolean;
  readonly original: Pulley | undefined;
  readonly problems: Problems;
  readonly onChange: (field: string, entry: Entry) => void;
  readonly onMove: (by: 1 | -1) => void;
  readonly onRemove: () => void;
}

/** One pulley of the table. */
export function PulleyFields(props: PulleyFieldsProps) {
  const { plant, row, number, original, problems, onChange } = props;
  const { say } = useSpeech();
  return (
    <fieldset className="pulley">
      <legend>{say('geometry.pulley', { number })}</legend>
      <div className="pulley-fields">
        {pulleyRowFields.map((field) =>
          field.asked === 'choice' ? (
            <ChoiceList key={field.key} field={field} row={row} original={original} onChange={onChange} />
          ) : (
            <EntryRow
              key={field.key}
              plant={plant}
              kind="pulleys"
              field={field}
              entries={row.entries}
              original={original}
              problems={problems}
              tried={false}
              source=""
              onChange={onChange}
            />
          ),
        )}
      </div>
      <PulleyButtons {...props} />
    </fieldset>
  );
}

type ChoiceListProps = Pick<PulleyFieldsProps, 'row' | 'original' | 'onChange'> & { readonly field: FormField };

function ChoiceList({ field, row, original, onChange }: ChoiceListProps) {
  const speech = useSpeech();
  const id = useId();
  const entry = row.entries[field.key] ?? { text: '' };
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        {fieldLabel(speech, 'pulleys', field.name)}
      </label>
      <select
        id={id}
        className="entry"
        value={shownText(field, entry, original, speech)}
        onChange={(event) => onChange(field.key, { text: event.target.value })}
      >
        <option value="">{speech.say('stores.choose')}</option>
        {(field.allowed ?? []).map((value) => (
          <option key={value} value={value}>
            {choiceWord(speech, field.name, value)}
          </option>
        ))}
      </select>
    </div>
  );
}

function PulleyButtons({ number, isLast, onMove, onRemove }: PulleyFieldsProps) {
  const { say } = useSpeech();
  return (
    <div className="pulley-buttons">
      {number === 1 ? null : (
        <button type="button" className="button" onClick={() => onMove(-1)}>
          {say('geometry.earlier', { number })}
        </button>
      )}
      {isLast ? null : (
        <button type="button" className="button" onClick={() => onMove(1)}>
          {say('geometry.later', { number })}
        </button>
      )}
      <button type="button" className="button" onClick={onRemove}>
        {say('geometry.remove', { number })}
      </button>
    </div>
  );
}
