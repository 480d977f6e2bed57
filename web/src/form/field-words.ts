import type { Kind } from '@loopwright/plant';
import type { Voice } from '@loopwright/words';

/** What a field is called; the name in the schema where nothing is said of it. */
export function fieldLabel(voice: Voice, kind: Kind, name: string): string {
  const own = `field.${kind}.${name}`;
  if (voice.has(own)) return voice.say(own);
  // A measurement of a survey is called by its question.
  const question = `survey.${name}`;
  if (kind === 'surveys' && voice.has(question)) return voice.say(question);
  const any = `field.any.${name}`;
  return voice.has(any) ? voice.say(any) : name;
}

/** A short word to the field where one needs it. */
export function fieldHelp(voice: Voice, kind: Kind, name: string): string | undefined {
  const own = `fieldHelp.${kind}.${name}`;
  if (voice.has(own)) return voice.say(own);
  const any = `fieldHelp.any.${name}`;
  return voice.has(any) ? voice.say(any) : undefined;
}

/** How an answer out of a list reads. */
export function choiceWord(voice: Voice, name: string, value: string): string {
  const dashed = value.replaceAll(' ', '-');
  const keys = name === 'source' ? [`source.${dashed}`] : [`choice.${name}.${dashed}`, `state.${dashed}`];
  const known = keys.find((key) => voice.has(key));
  return known !== undefined && voice.has(known) ? voice.say(known) : value;
}
