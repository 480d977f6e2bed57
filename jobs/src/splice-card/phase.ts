import {
  edgeSlivers,
  firstTipCentreRow,
  firstTipFlankRow,
  secondEndFenceMove_m,
  turnedOverShift_m,
} from '@loopwright/engine/splice';
import { work } from '@loopwright/engine/worked';
import type { Belt, Line } from '@loopwright/plant';
import { computed } from '../quantity.ts';
import type { CardPhase } from './card.ts';

/** The lateral setting of the fence that leaves no hair-thin finger at the belt's edges. */
export function cardPhase(belt: Belt, line: Line): CardPhase {
  const width_m = line.width_m;
  const pitch_m = belt.fingerPitch_m;
  const edges = edgeSlivers({ width_m, pitch_m });
  // Where both settings serve, the one that leaves the fence alone for the second end.
  const setting = edges.setting === 'either' ? 'flank' : edges.setting;
  const firstTip = work(setting === 'tip' ? firstTipCentreRow : firstTipFlankRow, { b: width_m, p: pitch_m });
  return {
    setting,
    firstTip: computed('shortLength', firstTip),
    secondEndFenceMove: computed('shortLength', secondEndFenceMove_m(pitch_m, setting)),
    score: computed('shortLength', edges.best_m),
    threshold: computed('shortLength', edges.threshold_m),
    turnedOverShift: computed('shortLength', turnedOverShift_m({ width_m, pitch_m, firstTip_m: firstTip.value })),
  };
}
