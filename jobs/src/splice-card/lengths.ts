import { squareCutRow, stripTipToTipRow } from '@loopwright/engine/loop';
import { work } from '@loopwright/engine/worked';
import type { Belt, Die } from '@loopwright/plant';
import type { EndlessLength } from '../loop/endless-length.ts';
import { computed, example, given, type Quantity } from '../quantity.ts';
import type { CardLengths } from './card.ts';

/** What a die cuts away beyond the tips at one end when nobody has measured it: common practice, no source. */
const usualWaste_m = 0.025;

/** The three lengths: square before punching, tip to tip, endless; the first two differ from it by fixed amounts. */
export function cardLengths(known: EndlessLength, belt: Belt, die: Die | undefined): CardLengths {
  const { endless, sources, agree, difference } = known;
  const finger = given('shortLength', belt.fingerLength_m, belt, 'fingerLength_m');
  const waste = wasteOf(die);
  const tips = work(stripTipToTipRow, { L0: endless.value, lf: belt.fingerLength_m, c: 0 });
  const square = work(squareCutRow, { S: tips.value, w: waste.value });
  const shifted = (by_m: number): [number, number] => [
    (endless.low ?? endless.value) + by_m,
    (endless.high ?? endless.value) + by_m,
  ];
  return {
    endless,
    tipToTip: computed('length', tips, shifted(belt.fingerLength_m)),
    square: computed('length', square, shifted(belt.fingerLength_m + 2 * waste.value)),
    fingerLength: finger,
    waste,
    sources,
    sourcesAgree: agree,
    difference,
  };
}

/** What is cut away at one end beyond the tips; also what a re-splice trims. */
export function wasteOf(die: Die | undefined): Quantity {
  return die ? given('shortLength', die.waste_m, die, 'waste_m') : example('shortLength', usualWaste_m);
}
