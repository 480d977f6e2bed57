import type { CardPath } from '@loopwright/jobs';
import { sentence } from '@loopwright/words';
import { threadPath } from '../../drawing/thread-path.ts';
import type { Block } from '../page.ts';
import { type CardReader, caution, overleaf, type Step, text, unknowns } from './section.ts';

/** Beyond this many pulleys a sentence that lists them helps nobody. */
const mostListed = 40;

function facesText(path: CardPath, { voice }: CardReader): string[] {
  if (path.pulleys.length > mostListed) return [];
  const numbers = (face: 'running' | 'back'): string =>
    path.pulleys
      .filter((pulley) => pulley.face === face)
      .map((pulley) => String(pulley.order))
      .join(' ');
  const [running, back] = [numbers('running'), numbers('back')];
  return [
    ...(running ? [voice.say('card.thread.running', { numbers: running })] : []),
    ...(back ? [voice.say('card.thread.back', { numbers: back })] : []),
  ];
}

function drawing(path: CardPath, { card, voice }: CardReader): Block {
  const orderOf = (index: number): string => String(path.pulleys[index]?.order ?? '–');
  const drawn = threadPath(
    path,
    { x: card.line.takeUpX, y: card.line.takeUpY },
    {
      alt: voice.say('card.thread.drawing', {
        count: path.pulleys.length,
        drive: orderOf(path.drive),
        takeUp: orderOf(path.takeUp),
      }),
      belt: voice.say('card.thread.belt'),
      goods: voice.say('card.thread.goods-word'),
      drive: voice.say('card.thread.drive'),
      takeUp: voice.say('card.thread.take-up'),
      splice: voice.say('card.thread.splice'),
      runningFace: voice.say('card.thread.face-running'),
      backFace: voice.say('card.thread.face-back'),
      rollers: voice.say('card.thread.rollers'),
      shortened: voice.say('card.thread.shortened'),
    },
  );
  return { kind: 'drawing', drawing: drawn, overleaf: true };
}

/** The route of the belt: drawing, which face touches which pulley, and how not to twist it. */
export function threadStep(reader: CardReader): Step {
  const { card, voice } = reader;
  const { path } = card;
  const sentences = [...(path ? facesText(path, reader) : []), voice.say('card.thread.how')];
  return {
    id: 'thread',
    title: voice.say('card.step.thread'),
    blocks: [
      ...(path ? [drawing(path, reader)] : []),
      text(sentences.join(' ')),
      ...(path?.fromSurvey ? overleaf([text(voice.say('card.thread.survey'), 'soft')]) : []),
      ...(card.noPath ? [caution('care', sentence(voice, card.noPath))] : []),
      ...unknowns(reader, ['path', 'drive']),
    ],
  };
}
