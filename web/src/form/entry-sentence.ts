import { sentence, type Voice } from '@loopwright/words';
import type { EntryProblem } from './read-entries.ts';
import { unitSign } from './unit-choice.ts';

/** The sentence for what is wrong with a field: the value as typed or as it is read, what is allowed in the same unit, the next step. */
export function entrySentence(voice: Voice, { code, data }: EntryProblem): string {
  const { unit, day, ...others } = data;
  const rest = typeof day === 'string' ? { ...others, day: voice.day(day) } : others;
  return sentence(voice, {
    code,
    path: '',
    data: typeof unit === 'string' ? { ...rest, unit: unitSign(voice, unit) } : rest,
  });
}
