import type { Voice } from '@loopwright/words';
import { entrySentence } from './entry-sentence.ts';
import { hiddenSigns } from './read-entries.ts';

/** Signs a name of a plant may have: it stands on every card. */
const longestPlantName = 60;

/** The name as it is kept, or the sentence for what is wrong with it. */
export function readPlantName(voice: Voice, typed: string): { readonly name: string } | { readonly wrong: string } {
  const name = typed.trim().normalize('NFC');
  if (name === '') return { wrong: voice.say('start.name.missing') };
  const tooLong = { code: 'entry-too-long', data: { length: name.length, max: longestPlantName } };
  if (name.length > longestPlantName) return { wrong: entrySentence(voice, tooLong) };
  if (hiddenSigns.test(name)) return { wrong: entrySentence(voice, { code: 'entry-hidden-signs', data: {} }) };
  return { name };
}
