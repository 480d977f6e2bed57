import {
  respliceGivenBackRow,
  respliceTravelToMeshRow,
  takeUpTravelForStretchRow,
  takeUpTravelToMeshRow,
} from '@loopwright/engine/loop';
import { work } from '@loopwright/engine/worked';
import type { Line, Position } from '@loopwright/plant';
import type { Loop } from '../loop/loop.ts';
import { computed, given, type Quantity } from '../quantity.ts';
import type { CardLengths, CardResplice, CardTakeUp } from './card.ts';

interface Travel {
  readonly line: Line;
  readonly lengths: CardLengths;
  /** Wrap that stands for the loop length gained per travel [rad]. */
  readonly wrap_rad: number;
  /** Loop length gained per travel, 2 sin(w/2). */
  readonly gain: number;
}

/** Where the take-up stands, must go and can go; whether the ends mesh in place; what a re-splice would need. */
export function cardTakeUp(position: Position, line: Line, loop: Loop | undefined, lengths?: CardLengths): CardTakeUp {
  const stroke =
    line.takeUpStroke_m > 0 ? given('shortLength', line.takeUpStroke_m, line, 'takeUpStroke_m') : undefined;
  const standsAt =
    position.takeUp_m === undefined ? undefined : given('shortLength', position.takeUp_m, position, 'takeUp_m');
  const stated = { kind: line.takeUpKind, ...(stroke && { stroke }), ...(standsAt && { standsAt }) };
  if (!loop || loop.takeUp < 0 || loop.takeUpWrap_rad <= 0 || !lengths) return stated;
  const wrap_rad = loop.takeUpWrap_rad;
  const travel: Travel = { line, lengths, wrap_rad, gain: 2 * Math.sin(wrap_rad / 2) };
  const setAt = setTravel(loop, travel);
  return {
    ...stated,
    setAt,
    ...toMesh(travel, setAt),
    ...(stroke && { leftAfter: computed('shortLength', Math.max(0, stroke.value - setAt.value)) }),
    ...(standsAt && { resplice: resplice(travel, standsAt) }),
  };
}

/** Travel at which the new belt reaches its set elongation: where the survey stood, moved by what the belt differs. */
function setTravel(loop: Loop, { line, lengths, gain }: Travel): Quantity {
  const target_m = lengths.endless.value * (1 + line.setElongation);
  return computed('shortLength', line.takeUpReference_m + (target_m - loop.path.length_m) / gain);
}

/** To mesh in place the loop must close without pull: the take-up gives back stretch and slack, or hands must pull. */
function toMesh({ line, lengths, wrap_rad, gain }: Travel, setAt: Quantity): Partial<CardTakeUp> {
  const common = { e: line.setElongation, L0: lengths.endless.value, w: wrap_rad };
  const stretch = work(takeUpTravelForStretchRow, common);
  const needed = work(takeUpTravelToMeshRow, { ...common, s: line.fitSlack_m });
  const missing_m = Math.max(0, needed.value - setAt.value);
  return {
    slackAt: computed('shortLength', setAt.value - stretch.value),
    neededToMesh: computed('shortLength', needed),
    meshesInPlace: missing_m <= 0,
    ...(missing_m > 0 && {
      pullNeeded: computed('shortLength', missing_m * gain),
      travelMissing: computed('shortLength', missing_m),
    }),
  };
}

/** The same belt cut and spliced again: it loses two fingers and two trims, and must still be meshed in place. */
function resplice({ line, lengths, wrap_rad, gain }: Travel, available: Quantity): CardResplice {
  const lf = lengths.fingerLength.value;
  const t = lengths.waste.value;
  const common = { lf, t, e: line.setElongation, w: wrap_rad };
  const givenBack = work(respliceGivenBackRow, common);
  const needed = work(respliceTravelToMeshRow, { ...common, L0: lengths.endless.value, s: line.fitSlack_m });
  return {
    givenBack: computed('shortLength', givenBack),
    stretch: computed(
      'shortLength',
      work(takeUpTravelForStretchRow, { e: line.setElongation, L0: lengths.endless.value, w: wrap_rad }),
    ),
    slack: computed('shortLength', line.fitSlack_m / gain),
    needed: computed('shortLength', needed),
    available,
    possible: givenBack.value <= available.value,
    meshesInPlace: needed.value <= available.value,
  };
}
