import { written } from '../figure.ts';
import type { Block } from '../page.ts';
import { openingTemperature } from './press-display.ts';
import { type CardReader, caution, overleaf, row, rows, type Step, text, ticks, unknowns } from './section.ts';

/** What made the belt fail comes before a new one: else the new one fails too. */
export function causeStep({ card, voice }: CardReader): Step {
  return {
    id: 'cause',
    title: voice.say('card.step.cause'),
    blocks: [ticks(card.causes.map((code) => voice.say(`cause.${code}`)))],
  };
}

/** Lock-out with stored energy released: always before anything is cut. */
export function lockStep(reader: CardReader): Step {
  const { card, voice } = reader;
  const { kind, standsAt } = card.takeUp;
  const release =
    kind === 'none'
      ? voice.say('card.lock.no-take-up')
      : voice.say('card.lock.take-up', {
          kind,
          stands: standsAt ? written(standsAt, voice, { kind: 'length' }) : 'none',
        });
  return {
    id: 'lock',
    title: voice.say('card.step.lock'),
    blocks: [
      caution('stop', voice.say('card.lock.stop')),
      ticks([
        voice.say('card.lock.goods-off'),
        voice.say('card.lock.tag'),
        release,
        voice.say('card.lock.pull'),
        voice.say('card.lock.site-rules'),
      ]),
      ...unknowns(reader, ['take-up-position']),
    ],
  };
}

/** Where to splice, and whether the belt is dry. */
export function siteStep(reader: CardReader): Step {
  const { card, voice } = reader;
  return {
    id: 'site',
    title: voice.say('card.step.site'),
    blocks: [
      text([siteText(reader), voice.say('card.site.support'), voice.say('card.site.outlet')].join(' ')),
      text(dryText(reader), card.roll?.sealed ? 'plain' : 'strong'),
      ...unknowns(reader, ['dry-data']),
    ],
  };
}

function siteText({ card, voice }: CardReader): string {
  const path = card.path;
  const from = path?.pulleys[path.spliceSpan];
  const to = path?.pulleys[(path.spliceSpan + 1) % path.pulleys.length];
  if (!path || !from || !to) return voice.say('card.site.any');
  return voice.say('card.site.span', {
    from: from.order,
    to: to.order,
    length: written(path.spliceSpanLength, voice),
  });
}

function dryText({ card, voice }: CardReader): string {
  if (card.roll?.sealed) return voice.say('card.dry.sealed', { roll: card.roll.id });
  if (!card.dryTime || !card.dryTemperature) return voice.say('card.dry.unknown');
  return voice.say('card.dry.known', {
    time: written(card.dryTime, voice),
    temperature: written(card.dryTemperature, voice),
  });
}

/** A scale on a frame is read to the millimetre. */
const inLength = { style: { kind: 'length' } } as const;

/** The take-up slack, and whether the ends meet without pull. */
export function takeUpStep(reader: CardReader): Step {
  const { card, voice } = reader;
  const { takeUp } = card;
  const list = [
    ...row(reader, 'card.take-up.slack-at', takeUp.slackAt, inLength),
    ...row(reader, 'card.take-up.needed', takeUp.neededToMesh, inLength),
    ...row(reader, 'card.take-up.missing', takeUp.travelMissing, inLength),
    ...row(reader, 'card.take-up.left', takeUp.leftAfter, inLength),
  ];
  return {
    id: 'take-up',
    title: voice.say('card.step.take-up'),
    blocks: [
      text(voice.say('card.take-up.slack')),
      ...meshing(reader),
      ...overleaf(rows(list)),
      ...unknowns(reader, ['take-up-stroke']),
    ],
  };
}

function meshing({ card, voice }: CardReader): Block[] {
  const { meshesInPlace, pullNeeded } = card.takeUp;
  if (meshesInPlace === undefined) return [];
  if (meshesInPlace) return [text(voice.say('card.take-up.meshes'))];
  return pullNeeded
    ? [caution('stop', voice.say('card.take-up.pull', { pull: written(pullNeeded, voice, { kind: 'length' }) }))]
    : [];
}

/** Opened only when the displays say so; both faces looked at. */
export function openStep(reader: CardReader): Step {
  const { card, voice } = reader;
  const open = openingTemperature(reader) ?? 'none';
  return {
    id: 'open',
    title: voice.say('card.step.open'),
    blocks: [ticks(card.inspect.map((code) => voice.say(`inspect.${code}`, code === 'open' ? { open } : {})))],
  };
}

/** Back to running, step by step. */
export function restartStep({ card, voice }: CardReader): Step {
  const jog =
    card.jogTime && voice.say('card.restart.jog', { time: written(card.jogTime, voice, { kind: 'minutes' }) });
  const step = (code: (typeof card.restart)[number]): string =>
    code === 'jog-three-turns' && jog ? `${voice.say(`restart.${code}`)} ${jog}` : voice.say(`restart.${code}`);
  return {
    id: 'restart',
    title: voice.say('card.step.restart'),
    blocks: [ticks(card.restart.map(step))],
  };
}
