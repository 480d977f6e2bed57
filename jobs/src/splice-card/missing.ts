import type { MissingCode, SpliceCard } from './card.ts';

type Draft = Omit<SpliceCard, 'warnings' | 'missing'>;

/** What each code is missing from: true when the card lacks it. One row a code. */
const lacks: Readonly<Record<MissingCode, (card: Draft) => boolean>> = {
  'loop-length': ({ lengths }) => lengths === undefined,
  path: ({ path }) => path === undefined,
  drive: ({ path }) => path !== undefined && path.drive < 0,
  'take-up-stroke': ({ takeUp }) => takeUp.kind !== 'none' && takeUp.stroke === undefined,
  'take-up-position': ({ takeUp }) => takeUp.kind !== 'none' && takeUp.standsAt === undefined,
  die: ({ die }) => die === undefined,
  template: ({ press }) => press.template === undefined,
  press: ({ press }) => press.press === undefined,
  'press-check': ({ press }) => press.press !== undefined && press.press.checkedOn === undefined,
  recipe: ({ press }) => press.recipe === undefined,
  roll: ({ roll }) => roll === undefined,
  'dry-data': ({ belt }) => belt.dryTime_s === undefined || belt.dryTemperature_degC === undefined,
  'data-sheet': ({ belt }) => belt.dataSheet === undefined || belt.dataSheet === '',
  'neutral-line': ({ belt }) => belt.neutralLine_m === undefined,
};

/** What the plant does not know and somebody must measure or look up, most needed first. */
export function missingOf(card: Draft): readonly MissingCode[] {
  return (Object.keys(lacks) as MissingCode[]).filter((code) => lacks[code](card));
}
