import type { SpliceCard } from '@loopwright/jobs';
import type { Voice } from '@loopwright/words';
import { cardCode } from '../code/card-code.ts';
import { cutStep } from './card/cut.ts';
import { causeStep, lockStep, openStep, restartStep, siteStep, takeUpStep } from './card/doing.ts';
import { endsStep } from './card/ends.ts';
import { gatherStep } from './card/gather.ts';
import { cycleStep, pressStep } from './card/press.ts';
import { formulasStep, reasonsStep, respliceStep, timeStep } from './card/reasons.ts';
import type { CardReader } from './card/section.ts';
import { marksStep, tensionStep } from './card/tension.ts';
import { threadStep } from './card/thread.ts';
import { notesStep, warningsStep } from './card/warnings.ts';
import { figureOf } from './figure.ts';
import type { Page, Section, StateShape } from './page.ts';

/** The steps in the order of the floor: nothing is cut before the lock-out, nor before everything is in hand. */
const doing = [
  causeStep,
  lockStep,
  gatherStep,
  siteStep,
  cutStep,
  endsStep,
  marksStep,
  threadStep,
  takeUpStep,
  pressStep,
  openStep,
  restartStep,
  tensionStep,
] as const;

const shapes: Readonly<Record<SpliceCard['state'], StateShape>> = {
  running: 'running',
  'retension-due': 'due',
  'past-life': 'past',
  torn: 'torn',
  empty: 'empty',
};

function stateOf({ card, voice }: CardReader): Page['state'] {
  const word = voice.say(`state.${card.state}`);
  const { since } = card.position;
  const said = since ? voice.say('card.since', { state: word, moment: voice.moment(since) }) : word;
  return { shape: shapes[card.state], word: said };
}

/**
 * A splice card as a page: everything that is shown of it, in one reader's language and units.
 * @param card - what the job found
 * @param voice - language and units of the reader
 * @returns the page, free of any medium: the doing in front, drawing and reasons behind
 */
export function cardPage(card: SpliceCard, voice: Voice): Page {
  const reader: CardReader = { card, voice };
  const { line, position, plant, engine, revision, now } = card;
  const front: Section[] = [...warningsStep(reader), ...doing.map((step, i) => ({ ...step(reader), number: i + 1 }))];
  const place = [line.name, ...(position.name ? [position.name] : []), plant.name];
  return {
    language: voice.language,
    title: `${line.id} · ${position.number}`,
    subtitle: [voice.say('card.title'), ...place].join(' · '),
    state: stateOf(reader),
    time: {
      label: voice.say('card.time', { people: String(card.people) }),
      figure: figureOf(card.time, voice, { kind: 'minutes' }),
    },
    front,
    back: [
      cycleStep(reader),
      ...notesStep(reader),
      ...reasonsStep(reader),
      ...respliceStep(reader),
      ...timeStep(reader),
      ...formulasStep(reader),
    ].filter((section) => section.blocks.length > 0),
    code: cardCode({ position: position.id, revision }),
    footer: [
      voice.say('card.foot.check'),
      voice.say('card.foot.rules'),
      voice.say('card.foot.version', { engine, revision, moment: voice.moment(now) }),
    ],
    now,
  };
}
