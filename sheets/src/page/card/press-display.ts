import type { Press } from '@loopwright/plant';
import { type Voice, voice } from '@loopwright/words';
import type { CardReader } from './section.ts';

/** Temperatures of the press are written as its display shows them, whatever units the reader has chosen. */
export function displayVoice({ card, voice: reader }: CardReader): Voice {
  return voiceOfDisplay(card.press.press, reader);
}

/** The reader's language in the units of a press's display; the reader's own without a press. */
export function voiceOfDisplay(press: Press | undefined, reader: Voice): Voice {
  const unit = press?.displayUnit;
  if (unit === undefined) return reader;
  return voice(reader.language, unit === 'degF' ? 'us' : 'metric');
}

/** The recipe's opening temperature as the display shows it. */
export function openingTemperature(reader: CardReader): string | undefined {
  const { recipe } = reader.card.press;
  return recipe && displayVoice(reader).write(recipe.open_degC, 'temperature');
}
