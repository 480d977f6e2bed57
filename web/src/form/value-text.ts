import type { Kind } from '@loopwright/plant';
import type { Voice } from '@loopwright/words';
import { choiceWord } from './field-words.ts';
import type { FormField } from './form-field.ts';
import { bareSign, unitNamed, unitSign } from './unit-choice.ts';
import { rememberedUnit } from './unit-memory.ts';
import { readableNumber } from './write-number.ts';

/**
 * A value of a field as its reader reads it: in the unit chosen for the field, with the words of the language.
 *
 * @param digits - significant digits of a number; default: enough to read by
 * @returns the text, empty for nothing
 */
export function valueText(voice: Voice, kind: Kind, field: FormField, value: unknown, digits?: number): string {
  if (typeof value === 'boolean') return voice.say(value ? 'stores.yes' : 'stores.no');
  if (typeof value === 'number')
    return field.allowed ? choiceWord(voice, field.name, String(value)) : numberText(voice, kind, field, value, digits);
  if (typeof value !== 'string') return '';
  if (field.asked === 'choice') return choiceWord(voice, field.name, value);
  if (field.asked === 'day') return voice.day(value);
  return field.asked === 'moment' ? voice.moment(value) : value;
}

function numberText(voice: Voice, kind: Kind, field: FormField, value: number, digits: number | undefined): string {
  const unit = unitNamed(field, rememberedUnit(kind, field.key, voice.units), voice.units);
  const sign = unit === undefined ? bareSign(voice, field, value) : unitSign(voice, unit.unit);
  const text = readableNumber(value, unit, voice.language, digits);
  return sign === '' ? text : `${text}\u00a0${sign}`;
}

/** Two values that differ, written so that they read differently. */
export function changeTexts(
  voice: Voice,
  kind: Kind,
  field: FormField,
  before: unknown,
  after: unknown,
): readonly [string, string] {
  const both = (digits?: number) =>
    [valueText(voice, kind, field, before, digits), valueText(voice, kind, field, after, digits)] as const;
  const short = both();
  return short[0] === short[1] ? both(15) : short;
}
