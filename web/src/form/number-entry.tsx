import type { Kind } from '@loopwright/plant';
import { useSpeech } from '../speech/use-speech.tsx';
import type { Entry } from './entries.ts';
import type { FormField } from './form-field.ts';
import { bareSign, unitSign, unitsOf } from './unit-choice.ts';
import { rememberUnit } from './unit-memory.ts';

/** What every control of a form gets. */
export interface ControlProps {
  readonly kind: Kind;
  readonly field: FormField;
  readonly label: string;
  readonly entry: Entry;
  /** What the field shows. */
  readonly text: string;
  readonly id: string;
  /** Ids of the lines that say more: help, what is wrong. */
  readonly describedBy: string | undefined;
  readonly wrong: boolean;
  readonly onChange: (entry: Entry) => void;
}

/** A number with the unit it is typed in. The unit is remembered for this field. */
export function NumberEntry(props: ControlProps) {
  const { field, entry, text, id, describedBy, wrong, onChange } = props;
  return (
    <span className="number-entry">
      <input
        id={id}
        type="text"
        inputMode="decimal"
        autoComplete="off"
        className="entry"
        value={text}
        aria-invalid={wrong}
        aria-describedby={describedBy}
        aria-required={field.required}
        onChange={(event) => onChange({ ...withoutKept(entry), text: event.target.value })}
      />
      <UnitChoice {...props} />
    </span>
  );
}

function UnitChoice({ kind, field, label, entry, text, onChange }: ControlProps) {
  const speech = useSpeech();
  const choices = unitsOf(field);
  const only = choices[0];
  if (choices.length < 2) {
    const sign = only === undefined ? bareSign(speech, field, Number(text)) : unitSign(speech, only.unit);
    return sign === '' ? null : <span className="unit-only">{sign}</span>;
  }
  const choose = (unit: string) => {
    rememberUnit(kind, field.key, speech.units, unit);
    onChange({ ...entry, unit });
  };
  return (
    <select
      className="entry unit-choice"
      aria-label={speech.say('stores.unit-of', { field: label })}
      value={entry.unit}
      onChange={(event) => choose(event.target.value)}
    >
      {choices.map(({ unit }) => (
        <option key={unit} value={unit}>
          {unitSign(speech, unit)}
        </option>
      ))}
    </select>
  );
}

/** An entry that somebody touches. */
export function withoutKept({ kept: _, ...entry }: Entry): Entry {
  return entry;
}
