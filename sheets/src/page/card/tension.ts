import { waitingText } from '@loopwright/words';
import { figureOf, written } from '../figure.ts';
import { type CardReader, type Step, text } from './section.ts';

/** Two lines on the slack belt: how far apart. */
export function marksStep({ card, voice }: CardReader): Step {
  return {
    id: 'marks',
    title: voice.say('card.step.marks'),
    blocks: [
      {
        kind: 'figure',
        figure: figureOf(card.marks.before, voice, { kind: 'length' }),
        label: voice.say('card.marks.before'),
      },
      text(
        `${voice.say('card.marks.how')} ${voice.say('card.marks.later', { after: written(card.marks.after, voice) })}`,
      ),
    ],
  };
}

/** The same lines on the tensioned belt, and what pull that means. */
export function tensionStep({ card, voice }: CardReader): Step {
  const { marks, tension } = card;
  const values = {
    before: written(marks.before, voice, { kind: 'length' }),
    elongation: written(marks.elongation, voice),
    tension: written(marks.strandTension, voice),
    fresh: written(marks.freshTension, voice),
  };
  const after = voice.say('card.tension.retension', { days: waitingText(tension.retensionAfter.value, voice) });
  return {
    id: 'tension',
    title: voice.say('card.step.tension'),
    blocks: [
      {
        kind: 'figure',
        figure: figureOf(marks.after, voice, { kind: 'shortLength' }),
        label: voice.say('card.tension.after'),
      },
      text(`${voice.say('card.tension.from', values)} ${after}`),
    ],
  };
}
