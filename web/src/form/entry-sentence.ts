import { sentence, type Voice } from '@loopwright/words';
import type { FormField } from './form-field.ts';
import type { EntryProblem } from './read-entries.ts';
import { bareSign, unitSign } from './unit-choice.ts';

/**
 * The sentence for what is wrong with a field: the value as typed, what is allowed in the same unit, the next step.
 *
 * @param voice - of the reader
 * @param problem - of the field
 * @param field - names the unit where there is none to choose
 */
export function entrySentence(voice: Voice, { code, data }: EntryProblem, field?: FormField): string {
  const { unit, day, ...others } = data;
  const rest = typeof day === 'string' ? { ...others, day: voice.day(day) } : others;
  const only = field?.asked === 'number' ? bareSign(voice, field, 2) : '';
  const sign = typeof unit === 'string' ? unitSign(voice, unit) : only;
  return sentence(voice, { code, path: '', data: sign === '' ? rest : { ...rest, unit: sign } });
}
