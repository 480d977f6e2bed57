import { fingerEnds } from '../../drawing/finger-ends.ts';
import { written } from '../figure.ts';
import type { Block } from '../page.ts';
import { type CardReader, type Step, text } from './section.ts';

function drawing(reader: CardReader): Block {
  const { card, voice } = reader;
  const shift_m = card.phase.secondEndFenceMove.value;
  const tip = written(card.phase.firstTip, voice, { kind: 'shortLength' });
  return {
    kind: 'drawing',
    drawing: fingerEnds({
      alt: voice.say('card.ends.drawing', { tip }),
      width_m: card.width.value,
      pitch_m: card.belt.fingerPitch_m,
      firstTip_m: card.phase.firstTip.value,
      secondShift_m: shift_m,
      fence: voice.say('card.ends.fence'),
      firstTip: tip,
      secondFirstTip: voice.write(card.phase.firstTip.value + shift_m, 'shortLength'),
      down: voice.say('card.ends.down'),
      meshed: voice.say('card.ends.meshed'),
    }),
  };
}

function dieLine({ card, voice }: CardReader): string {
  const { die, belt } = card;
  const fingers = fingersText(die?.fingerLength_m ?? belt.fingerLength_m, die?.pitch_m ?? belt.fingerPitch_m, voice);
  return die ? voice.say('card.ends.die', { die: die.id, fingers }) : voice.say('card.ends.wanted', { fingers });
}

/** `80 × 10 mm`, held together: length times pitch, as dies are marked. */
function fingersText(length_m: number, pitch_m: number, voice: CardReader['voice']): string {
  return `${voice.show(length_m, 'length').value}\u00a0×\u00a0${voice.write(pitch_m, 'shortLength')}`;
}

/** Both ends into the die the same way, so that they mesh. */
export function endsStep(reader: CardReader): Step {
  const { card, voice } = reader;
  const shift_m = card.phase.secondEndFenceMove.value;
  const tip = written(card.phase.firstTip, voice, { kind: 'shortLength' });
  const turnedOver = written(card.phase.turnedOverShift, voice, { kind: 'shortLength' });
  const sentences = [
    voice.say('card.ends.how', { tip }),
    ...(shift_m > 0 ? [voice.say('card.ends.move-fence', { shift: voice.write(shift_m, 'shortLength') })] : []),
    voice.say('card.ends.turned-over', { shift: turnedOver }),
    voice.say('card.ends.chalk'),
  ];
  return {
    id: 'ends',
    title: voice.say('card.step.ends'),
    blocks: [text(dieLine(reader), 'strong'), drawing(reader), text(sentences.join(' '))],
  };
}
