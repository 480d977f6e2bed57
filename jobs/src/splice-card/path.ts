import { type Belt, type Line, minCounterBend, type Press, type Pulley } from '@loopwright/plant';
import type { Loop } from '../loop/loop.ts';
import { spliceSpan } from '../loop/spans.ts';
import { computed, example, given, type Quantity } from '../quantity.ts';
import type { CardPath } from './card.ts';

/** Platen length of a usual portable press, where the press is not known: common practice, no source. */
const usualPlaten_m = 0.3;

/** What the thread-path drawing needs, in metres and in travel order. */
export function cardPath(line: Line, loop: Loop, press: Press | undefined): CardPath {
  const { path, pulleys } = loop;
  const splice = spliceSpan(path.spans_m, loop.carryingSpan, press?.platenLength_m ?? usualPlaten_m);
  return {
    pulleys: pulleys.map((pulley, i) => ({
      ...pulley,
      face: faceOf(pulley, path.turning),
      wrap_rad: path.wraps_rad[i] ?? 0,
    })),
    spans: path.tangents.map(({ from, to }) => [from[0], from[1], to[0], to[1]] as const),
    length: computed('length', path.length_m, 2 * loop.uncertainty_m),
    drive: loop.drive,
    takeUp: loop.takeUp,
    carryingSpan: loop.carryingSpan,
    spliceSpan: splice,
    spliceSpanLength: computed('length', path.spans_m[splice] ?? 0),
    goodsDirection: goodsDirection(loop),
    ...(line.carrierDiameter_m !== undefined && { carrierDiameter_m: line.carrierDiameter_m }),
    ...(line.carrierPitch_m !== undefined && { carrierPitch_m: line.carrierPitch_m }),
    ...(line.pressureRollerDiameter_m !== undefined && { pressureRollerDiameter_m: line.pressureRollerDiameter_m }),
    fromSurvey: loop.fromSurvey,
  };
}

/** The running face is inside the loop: it touches the pulleys that turn as the loop does. */
function faceOf(pulley: Pulley, turning: number): 'running' | 'back' {
  return (pulley.turn === 'left') === turning > 0 ? 'running' : 'back';
}

/** Goods travel against the strand under the rollers. */
function goodsDirection(loop: Loop): 1 | -1 {
  const strand = loop.path.tangents[loop.carryingSpan];
  return strand && strand.to[0] > strand.from[0] ? -1 : 1;
}

/** Smallest pulleys against the belt's limits; the face tells which limit counts. */
export interface SmallPulley {
  readonly pulley: string;
  readonly counterBend: boolean;
  readonly diameter: Quantity;
  readonly limit: Quantity;
}

/** Every pulley of the loop that is smaller than the belt allows on the face it touches. */
export function smallPulleys(path: CardPath, belt: Belt): readonly SmallPulley[] {
  return path.pulleys.flatMap((pulley) => {
    const counterBend = pulley.face === 'back';
    const limit = limitOf(belt, counterBend);
    if (pulley.diameter_m >= limit.value - 1e-9) return [];
    return [
      {
        pulley: pulley.id,
        counterBend,
        diameter: given('shortLength', pulley.diameter_m, pulley, 'diameter_m'),
        limit,
      },
    ];
  });
}

function limitOf(belt: Belt, counterBend: boolean): Quantity {
  if (!counterBend) return given('shortLength', belt.minPulley_m, belt, 'minPulley_m');
  const limit_m = minCounterBend(belt);
  if (belt.minCounterBend_m === undefined) return example('shortLength', limit_m);
  return given('shortLength', limit_m, belt, 'minCounterBend_m');
}
