import type { GatherItem } from '@loopwright/jobs';
import { written } from '../figure.ts';
import type { Row } from '../page.ts';
import { type CardReader, rows, type Step, ticks, unknowns } from './section.ts';

const tools = ['belt-roll', 'die', 'template', 'press'] as const;
const isTool = ({ code }: GatherItem): boolean => tools.some((tool) => tool === code);

function amounts({ needed, left }: GatherItem, { voice }: CardReader): string[] {
  if (!needed) return [];
  const values = { needed: written(needed, voice) };
  return [
    left
      ? voice.say('card.gather.needed-left', { ...values, left: written(left, voice) })
      : voice.say('card.gather.needed', values),
  ];
}

function toolRow(item: GatherItem, reader: CardReader): Row {
  const { card, voice } = reader;
  const roll = item.code === 'belt-roll' ? card.roll : undefined;
  const notes = [
    ...(item.place ? [item.place] : []),
    ...amounts(item, reader),
    ...(roll?.sealed ? [voice.say('card.gather.sealed')] : []),
    ...(roll?.lot ? [voice.say('card.gather.lot', { lot: roll.lot })] : []),
  ];
  return {
    label: voice.say(`gather.${item.code}`),
    text: item.thing ?? voice.say('card.gather.unknown'),
    ...(notes.length > 0 && { note: notes.join(' · ') }),
  };
}

function smallThing(item: GatherItem, { voice }: CardReader): string {
  const word = voice.say(`gather.${item.code}`);
  return item.needed ? `${word}: ${written(item.needed, voice)}` : word;
}

/** Everything in hand before the knife: a die missed after cutting costs the night. */
export function gatherStep(reader: CardReader): Step {
  const { card, voice } = reader;
  return {
    id: 'gather',
    title: voice.say('card.step.gather'),
    blocks: [
      ...rows(card.gather.filter(isTool).map((item) => toolRow(item, reader))),
      ticks(card.gather.filter((item) => !isTool(item)).map((item) => smallThing(item, reader))),
      ...unknowns(reader, ['roll', 'die', 'template', 'press']),
    ],
  };
}
