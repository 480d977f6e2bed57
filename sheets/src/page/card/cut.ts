import type { CardLengths, LengthSource } from '@loopwright/jobs';
import { dimensionDrawing } from '../../drawing/dimension-drawing.ts';
import { figureOf, written } from '../figure.ts';
import type { Block, Row } from '../page.ts';
import { type CardReader, caution, overleaf, row, rows, type Step, text, unknowns } from './section.ts';

function beltLine({ card, voice }: CardReader): string {
  const thickness = voice.write(card.belt.thickness_m, 'shortLength');
  const antistatic = card.belt.antistatic ? 'yes' : 'no';
  return voice.say('card.cut.belt', {
    belt: card.belt.id,
    width: written(card.width, voice, { kind: 'length' }),
    thickness,
    antistatic,
  });
}

function drawing(lengths: CardLengths, { voice }: CardReader): Block {
  const [square, tips, endless, finger] = [lengths.square, lengths.tipToTip, lengths.endless, lengths.fingerLength].map(
    (length) => written(length, voice, { kind: 'length' }),
  );
  const values = { square: square ?? '', tips: tips ?? '', endless: endless ?? '', finger: finger ?? '' };
  return {
    kind: 'drawing',
    drawing: dimensionDrawing({
      alt: voice.say('card.cut.drawing', values),
      square: voice.say('card.cut.drawing.square', { length: values.square }),
      tips: voice.say('card.cut.drawing.tips', { length: values.tips }),
      endless: voice.say('card.cut.drawing.endless', { length: values.endless }),
      finger: values.finger,
    }),
  };
}

function sourceRow({ voice }: CardReader, source: LengthSource): Row {
  return {
    label: voice.say(`lengthSource.${source.kind}`),
    figure: figureOf(source.length, voice),
    note: voice.say('card.cut.weight', { weight: voice.write(source.weight, 'percent', { digits: 0 }) }),
  };
}

/** Cut so long and no shorter: the number below it is what punching leaves. */
function squareFirst({ square }: CardLengths, { voice }: CardReader): Block[] {
  const length = written(square, voice, { kind: 'length' });
  return length === undefined ? [] : [text(voice.say('card.cut.square-first', { length }), 'strong')];
}

function known(lengths: CardLengths, reader: CardReader): Block[] {
  const { voice } = reader;
  return [
    ...squareFirst(lengths, reader),
    { kind: 'figure', figure: figureOf(lengths.tipToTip, voice), label: voice.say('card.cut.tips') },
    drawing(lengths, reader),
    ...overleaf(
      rows([
        ...row(reader, 'card.cut.square', lengths.square),
        ...row(reader, 'card.cut.endless', lengths.endless),
        ...row(reader, 'card.cut.finger', lengths.fingerLength, { style: { kind: 'length' } }),
        ...lengths.sources.map((source) => sourceRow(reader, source)),
      ]),
    ),
    ...(lengths.sourcesAgree ? [] : [caution('stop', voice.say('card.cut.disagree'))]),
  ];
}

/** The belt, what to cut square, and the one number: what is left from tip to tip. */
export function cutStep(reader: CardReader): Step {
  const { card, voice } = reader;
  return {
    id: 'cut',
    title: voice.say('card.step.cut'),
    blocks: [
      text(beltLine(reader), 'strong'),
      ...(card.lengths ? known(card.lengths, reader) : []),
      text(voice.say('card.cut.how')),
      caution('care', voice.say('card.ppe.knife')),
      ...unknowns(reader, ['loop-length', 'data-sheet']),
    ],
  };
}
