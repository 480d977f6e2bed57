import type { CardWarning } from '@loopwright/jobs';
import { sentence } from '@loopwright/words';
import { cycleParams } from '../cycle/warnings.ts';
import { written } from '../figure.ts';
import { type CardReader, caution, type Step, unknowns } from './section.ts';

const order = { stop: 0, care: 1, note: 2 } as const;

/** Why no time line can be computed. */
function reasonText({ card, voice }: CardReader): { readonly reason?: string } {
  const { cycle } = card.press;
  return cycle?.status === 'none' ? { reason: sentence(voice, cycle) } : {};
}

/** The lengths that disagree, as the card lists them. */
const lengthsText = ({ card, voice }: CardReader): string =>
  voice.list((card.lengths?.sources ?? []).map((source) => written(source.length, voice)));

function sentences(reader: CardReader, levels: readonly CardWarning['level'][]) {
  const { card, voice } = reader;
  return card.warnings
    .filter(({ level }) => levels.includes(level))
    .toSorted((a, b) => order[a.level] - order[b.level])
    .map(({ code, level, data }) => {
      const params = { ...cycleParams(data, voice), ...reasonText(reader), lengths: lengthsText(reader) };
      return caution(level, voice.say(`warning.${code}`, params));
    });
}

/** What to settle before anything else: stop first, then care. */
export function warningsStep(reader: CardReader): Step[] {
  const blocks = sentences(reader, ['stop', 'care']);
  return blocks.length > 0 ? [{ id: 'warnings', title: reader.voice.say('card.step.warnings'), blocks }] : [];
}

/** What is good to know, on the back. */
export function notesStep(reader: CardReader): Step[] {
  const blocks = [...sentences(reader, ['note']), ...unknowns(reader, ['neutral-line'])];
  return blocks.length > 0 ? [{ id: 'notes', title: reader.voice.say('card.step.notes'), blocks }] : [];
}
