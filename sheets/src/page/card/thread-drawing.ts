import type { CardPath } from '@loopwright/jobs';
import type { Voice } from '@loopwright/words';
import { threadPath } from '../../drawing/thread-path.ts';
import type { Drawing } from '../page.ts';

/**
 * The thread-path drawing with its words in the reader's language.
 *
 * @param path - how the belt runs
 * @param takeUp - of the line: the way that lengthens the loop, y up
 * @param voice - of the reader
 */
export function threadDrawing(
  path: CardPath,
  takeUp: { readonly takeUpX: number; readonly takeUpY: number },
  voice: Voice,
): Drawing {
  const orderOf = (index: number): string => String(path.pulleys[index]?.order ?? '–');
  return threadPath(
    path,
    { x: takeUp.takeUpX, y: takeUp.takeUpY },
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
}
