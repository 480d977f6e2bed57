import { Refusal } from '@loopwright/engine/refusal';
import { sentence, type Voice } from '@loopwright/words';
import { storeErrorOf } from './strict-write.ts';

/** Why a promise of the store was refused, as a sentence that says what to do. */
export function faultSentence(speech: Voice, cause: unknown): string {
  const { code, data, cause: below } = storeErrorOf(cause);
  // What the records refused has its own sentence, with value and limit.
  if (code === 'refused' && below instanceof Refusal) return sentence(speech, below);
  return speech.say(`store.${code}`, data);
}
