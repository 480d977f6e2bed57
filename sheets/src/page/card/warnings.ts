import type { CardWarning, Quantity } from '@loopwright/jobs';
import type { Params, Voice } from '@loopwright/words';
import { written } from '../figure.ts';
import { type CardReader, caution, type Step, unknowns } from './section.ts';

const order = { stop: 0, care: 1, note: 2 } as const;

/** Values of a warning as text. */
function paramsOf(data: CardWarning['data'], voice: Voice): Params {
  const one = (value: Quantity | string | number): string | number =>
    typeof value === 'object' ? written(value, voice) : value;
  return Object.fromEntries(Object.entries(data).map(([name, value]) => [name, one(value)]));
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
      const params = { ...paramsOf(data, voice), lengths: lengthsText(reader) };
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
