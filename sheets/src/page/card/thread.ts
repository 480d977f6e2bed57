import type { CardPath } from '@loopwright/jobs';
import { sentence } from '@loopwright/words';
import type { Block } from '../page.ts';
import { type CardReader, caution, overleaf, type Step, text, unknowns } from './section.ts';
import { threadDrawing } from './thread-drawing.ts';

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
  return { kind: 'drawing', drawing: threadDrawing(path, card.line, voice), overleaf: true };
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
