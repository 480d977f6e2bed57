import { formulaOf } from '@loopwright/engine/worked';
import type { Quantity } from '@loopwright/jobs';
import { type QuantityKind, type Voice, workedText } from '@loopwright/words';
import type { Figure, WorkedText } from './page.ts';

/** How a quantity is shown where its own kind does not say it: minutes for a job, whole seconds for a hold time. */
export interface FigureStyle {
  readonly kind?: QuantityKind;
  readonly digits?: number;
  readonly signed?: boolean;
}

/** Two deviations this close, as a share, are one `±`. */
const symmetric = 0.02;

function rangeText(quantity: Quantity, kind: QuantityKind, voice: Voice): string | undefined {
  const { value, low, high } = quantity;
  if (low === undefined || high === undefined || low === high) return undefined;
  const [below, above] = [value - low, high - value];
  return Math.abs(below - above) <= symmetric * Math.max(below, above)
    ? voice.plusMinus((below + above) / 2, kind)
    : voice.range(low, high, kind);
}

/** The worked formula of a quantity in the reader's words, when one row of the table gave it. */
export function workedOf(quantity: Quantity, voice: Voice): WorkedText | undefined {
  const row = quantity.worked && formulaOf(quantity.worked.formula);
  return row && quantity.worked ? workedText(voice, row, quantity.worked.inputs, quantity.worked.value) : undefined;
}

const sourceKeys = {
  'data sheet': 'source.data-sheet',
  measured: 'source.measured',
  person: 'source.person',
  example: 'source.example',
  computed: 'source.computed',
} as const;

/** Where a number comes from, in words. */
export const sourceWord = (source: Quantity['source'], voice: Voice): string => voice.say(sourceKeys[source]);

/** A quantity as one reader sees it: number, unit, range, source and reason. */
export function figureOf(quantity: Quantity, voice: Voice, style: FigureStyle = {}): Figure {
  const kind = style.kind ?? quantity.kind;
  const { value, unit } = voice.show(quantity.value, kind, {
    ...(style.digits !== undefined && { digits: style.digits }),
    ...(style.signed && { signed: true }),
  });
  const range = rangeText(quantity, kind, voice);
  const worked = workedOf(quantity, voice);
  return {
    value,
    unit,
    source: sourceWord(quantity.source, voice),
    ...(quantity.source === 'computed' && { computed: true }),
    ...(range !== undefined && { range }),
    ...(quantity.uncalibrated && { uncalibrated: voice.say('source.uncalibrated') }),
    ...(worked && { worked }),
  };
}

/** Number and unit as text for a sentence. */
export const written = (quantity: Quantity, voice: Voice, style: FigureStyle = {}): string =>
  voice.write(quantity.value, style.kind ?? quantity.kind, style.digits === undefined ? {} : { digits: style.digits });
