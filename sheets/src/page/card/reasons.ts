import type { SpliceCard } from '@loopwright/jobs';
import { figureOf, workedOf } from '../figure.ts';
import type { Block, Row, WorkedText } from '../page.ts';
import { type CardReader, row, rows, type Step, text } from './section.ts';

const section = (id: string, title: string, blocks: readonly Block[]): Step[] =>
  blocks.length > 0 ? [{ id, title, blocks }] : [];

/** Tension, slip and shaft loads: why the numbers of the front are what they are. */
export function reasonsStep(reader: CardReader): Step[] {
  const { card, voice } = reader;
  const { tension } = card;
  const list = [
    ...row(reader, 'card.reason.loop', card.path?.length),
    ...row(reader, 'card.reason.elongation', card.marks.elongation),
    ...row(reader, 'card.reason.by-take-up', tension.elongationByTakeUp),
    ...row(reader, 'card.reason.strand', tension.strand),
    ...row(reader, 'card.reason.fresh', tension.fresh),
    ...row(reader, 'card.reason.pull', tension.pull),
    ...row(reader, 'card.reason.slip', tension.pullAtSlip),
    ...row(reader, 'card.reason.reserve', tension.slipReserve),
    ...row(reader, 'card.reason.needed', tension.elongationForNoSlip),
    ...row(reader, 'card.reason.shaft', tension.driveShaftLoad),
    ...row(reader, 'card.reason.fresh-shaft', tension.freshDriveShaftLoad),
    ...row(reader, 'card.reason.strength', card.spliceStrength),
    ...beltRows(reader),
  ];
  return section('reasons', voice.say('card.step.reasons'), rows(list));
}

function beltRows(reader: CardReader): Row[] {
  const { card, voice } = reader;
  const sheet = card.belt.dataSheet;
  return [
    ...(sheet ? [{ label: voice.say('card.reason.sheet'), text: sheet }] : []),
    ...(card.position.lot ? [{ label: voice.say('card.reason.lot'), text: card.position.lot }] : []),
    ...row(reader, 'card.revolutions', card.revolutions),
  ];
}

/** A scale on a frame is read to the millimetre. */
const inLength = { style: { kind: 'length' } } as const;

/** Where the take-up stood and goes. */
function takeUpReasons(reader: CardReader): Row[] {
  const { takeUp } = reader.card;
  return [
    ...row(reader, 'card.take-up.stroke', takeUp.stroke, inLength),
    ...row(reader, 'card.take-up.stands', takeUp.standsAt, inLength),
    ...row(reader, 'card.take-up.set-at', takeUp.setAt, inLength),
  ];
}

/** Whether the same belt can be cut and spliced once more. */
export function respliceStep(reader: CardReader): Step[] {
  const { card, voice } = reader;
  const { resplice } = card.takeUp;
  const list = takeUpReasons(reader);
  if (!resplice) return section('resplice', voice.say('card.step.take-up'), rows(list));
  const verdict = !resplice.possible ? 'no' : resplice.meshesInPlace ? 'yes' : 'set';
  return section('resplice', voice.say('card.step.resplice'), [
    ...rows([
      ...list,
      ...row(reader, 'card.resplice.given-back', resplice.givenBack, inLength),
      ...row(reader, 'card.resplice.stretch', resplice.stretch, inLength),
      ...row(reader, 'card.resplice.slack', resplice.slack, inLength),
      ...row(reader, 'card.resplice.needed', resplice.needed, inLength),
      ...row(reader, 'card.resplice.available', resplice.available, inLength),
    ]),
    text(voice.say(`card.resplice.${verdict}`), 'strong'),
  ]);
}

/** The parts of the time needed. */
export function timeStep({ card, voice }: CardReader): Step[] {
  const list = card.timeParts.map(({ code, time }) => ({
    label: voice.say(`timePart.${code}`),
    figure: figureOf(time, voice, { kind: 'minutes' }),
  }));
  return section('time-parts', voice.say('card.step.time-parts'), rows(list));
}

/** Every formula behind the card, once, in the order of the card. */
export function formulasStep({ card, voice }: CardReader): Step[] {
  const seen = new Map<string, WorkedText>();
  for (const quantity of quantitiesOf(card)) {
    const worked = workedOf(quantity, voice);
    if (worked && !seen.has(worked.withNumbers)) seen.set(worked.withNumbers, worked);
  }
  const list = [...seen.values()].map(({ title, withNumbers, source }) => ({
    label: title,
    text: withNumbers,
    note: source,
  }));
  return section('formulas', voice.say('card.step.formulas'), rows(list));
}

type Quantity = SpliceCard['time'];

const isQuantity = (value: object): value is Quantity => 'value' in value && 'kind' in value && 'source' in value;

/** All quantities of a card, wherever they stand in it. */
function quantitiesOf(value: unknown): Quantity[] {
  if (typeof value !== 'object' || value === null) return [];
  if (!Array.isArray(value) && isQuantity(value)) return [value];
  return Object.values(value).flatMap(quantitiesOf);
}
