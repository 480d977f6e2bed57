import { takeUpOnTightSide } from '../loop/spans.ts';
import { cycleWarnings } from '../press-cycle/cycle-warnings.ts';
import { computed, example, given, type Quantity } from '../quantity.ts';
import type { CardWarning, CardWarningCode, SpliceCard } from './card.ts';
import { checkOverdue, isAhead } from './choose.ts';
import { smallPulleys } from './path.ts';

/** Pull at slip over pull below which a wet or dirty pulley makes the belt slip: common practice, no source. */
const wantedReserve = 1.15;
/** Travel left for re-tensioning, as a share of the loop, below which the take-up soon ends: common practice, no source. */
const retensionReserve = 0.002;
/** How far the fingers stay inside the platen at each end: 1.5 x the height between the platens, about 8 mm. */
const platenMargin_m = 0.008;

type Draft = Omit<SpliceCard, 'warnings'>;
type Rule = (card: Draft) => readonly CardWarning[];

const warn = (code: CardWarningCode, level: CardWarning['level'], data: CardWarning['data'] = {}): CardWarning[] => [
  { code, level, data },
];
const orNone = (quantity: Quantity | undefined): Quantity | string => quantity ?? 'none';

/** One rule a row; a rule that has nothing to say gives an empty list. */
const rules: readonly Rule[] = [
  areas,
  sourcesDisagree,
  notInPlace,
  slip,
  elongationWindow,
  smallPulley,
  narrowPulley,
  takeUpExhausted,
  takeUpSide,
  thinEdge,
  roll,
  pressCheck,
  pressSize,
  pressPressure,
  pressCycle,
];

/** What a person must know besides the steps: what stops the job first, then what needs care, then notes. */
export function cardWarnings(card: Draft): readonly CardWarning[] {
  const order = { stop: 0, care: 1, note: 2 } as const;
  return rules.flatMap((rule) => rule(card)).sort((a, b) => order[a.level] - order[b.level]);
}

function areas({ line }: Draft): readonly CardWarning[] {
  return [
    ...(line.explosiveArea ? warn('explosive-area', 'stop') : []),
    ...(line.wet ? warn('wet-area', 'care') : []),
    ...(line.antistaticArea ? warn('antistatic-area', 'care') : []),
    ...(line.foodArea ? warn('food-area', 'care') : []),
  ];
}

function sourcesDisagree({ lengths }: Draft): readonly CardWarning[] {
  return !lengths || lengths.sourcesAgree ? [] : warn('sources-disagree', 'stop', { difference: lengths.difference });
}

function notInPlace({ takeUp, line }: Draft): readonly CardWarning[] {
  if (takeUp.meshesInPlace !== false || !takeUp.neededToMesh || !takeUp.setAt) return [];
  return warn('not-in-place', line.takeUpKind === 'none' ? 'care' : 'stop', {
    needed: takeUp.neededToMesh,
    available: takeUp.setAt,
    pull: orNone(takeUp.pullNeeded),
  });
}

function slip({ tension, line }: Draft): readonly CardWarning[] {
  const { slipReserve, pullAtSlip, pull, elongationForNoSlip } = tension;
  if (!slipReserve || !pullAtSlip) return [];
  const needed = orNone(elongationForNoSlip);
  if (slipReserve.value < 1) {
    const set = given('percent', line.setElongation, line, 'setElongation');
    return warn('slip', 'stop', { pull, limit: pullAtSlip, set, needed });
  }
  if (slipReserve.value >= wantedReserve) return [];
  return warn('slip-reserve-low', 'care', { reserve: slipReserve, wanted: example('ratio', wantedReserve), needed });
}

function elongationWindow({ line, belt }: Draft): readonly CardWarning[] {
  const set = given('percent', line.setElongation, line, 'setElongation');
  const low = given('percent', belt.minElongation, belt, 'minElongation');
  const high = given('percent', belt.maxElongation, belt, 'maxElongation');
  if (set.value < low.value - 1e-9) return warn('elongation-under-window', 'care', { set, low, high });
  if (set.value > high.value + 1e-9) return warn('elongation-over-window', 'care', { set, low, high });
  return [];
}

function smallPulley({ path, belt }: Draft): readonly CardWarning[] {
  return path
    ? smallPulleys(path, belt).flatMap(({ pulley, counterBend, diameter, limit }) =>
        warn(counterBend ? 'counter-bend-under-limit' : 'pulley-under-limit', 'care', { pulley, diameter, limit }),
      )
    : [];
}

function narrowPulley({ path, width }: Draft): readonly CardWarning[] {
  return (path?.pulleys ?? []).flatMap((pulley) =>
    pulley.faceWidth_m !== undefined && pulley.faceWidth_m < width.value - 1e-9
      ? warn('belt-wider-than-pulley', 'care', {
          pulley: pulley.id,
          width,
          face: given('shortLength', pulley.faceWidth_m, pulley, 'faceWidth_m'),
        })
      : [],
  );
}

function takeUpExhausted({ takeUp, lengths }: Draft): readonly CardWarning[] {
  const { leftAfter } = takeUp;
  if (!leftAfter || !lengths || leftAfter.value >= (retensionReserve * lengths.endless.value) / 2) return [];
  return warn('take-up-exhausted', 'care', { left: leftAfter });
}

function takeUpSide({ path }: Draft): readonly CardWarning[] {
  if (!path || path.takeUp < 0 || path.drive < 0) return [];
  const { drive, takeUp, carryingSpan, pulleys } = path;
  return takeUpOnTightSide(drive, takeUp, carryingSpan, pulleys.length) ? warn('take-up-on-tight-side', 'care') : [];
}

function thinEdge({ phase: { score, threshold } }: Draft): readonly CardWarning[] {
  return score.value < threshold.value - 1e-9 ? warn('thin-edge-finger', 'care', { score, threshold }) : [];
}

function roll({ roll: chosen, lengths, dryTime, dryTemperature }: Draft): readonly CardWarning[] {
  if (!chosen) return [];
  const left = given('length', chosen.left_m, chosen, 'left_m');
  const short = lengths !== undefined && chosen.left_m < lengths.square.value;
  return [
    ...(short ? warn('roll-too-short', 'stop', { roll: chosen.id, left, needed: lengths.square }) : []),
    ...(chosen.sealed
      ? []
      : warn('roll-not-sealed', 'care', {
          roll: chosen.id,
          time: orNone(dryTemperature && dryTime),
          temperature: orNone(dryTemperature),
        })),
  ];
}

function pressCheck({ press: { press, checkAge_days }, now }: Draft): readonly CardWarning[] {
  if (!press) return [];
  const overdue = checkOverdue(press, now);
  if (checkAge_days !== undefined && isAhead(checkAge_days))
    return warn('press-check-ahead', 'stop', { press: press.name, days: computed('days', -checkAge_days) });
  if (overdue === undefined || checkAge_days === undefined)
    return warn('press-check-unknown', 'care', { press: press.name });
  if (!overdue) return [];
  const age = computed('days', checkAge_days);
  const interval = given('days', press.checkInterval_days, press, 'checkInterval_days');
  return warn('press-check-overdue', 'stop', { press: press.name, age, interval });
}

/** The fingers must lie inside the platens, off their cooler edges; the first dimension that does not fit is named. */
function pressSize({ press: { press }, belt, line }: Draft): readonly CardWarning[] {
  if (!press) return [];
  const dimensions = [
    [belt.fingerLength_m + 2 * platenMargin_m, press.platenLength_m, 'platenLength_m'],
    [line.width_m, press.platenWidth_m, 'platenWidth_m'],
  ] as const;
  const short = dimensions.find(([needed_m, available_m]) => available_m < needed_m - 1e-9);
  if (!short) return [];
  const [needed_m, available_m, field] = short;
  return warn('press-too-small', 'stop', {
    press: press.name,
    needed: computed('shortLength', needed_m),
    available: given('shortLength', available_m, press, field),
  });
}

function pressPressure({ press: { press, gaugePressure } }: Draft): readonly CardWarning[] {
  if (!press || !gaugePressure || gaugePressure.value <= press.maxPressure_Pa * (1 + 1e-9)) return [];
  const maximum = given('pressure', press.maxPressure_Pa, press, 'maxPressure_Pa');
  return warn('bag-pressure-over-press', 'stop', { press: press.name, needed: gaugePressure, maximum });
}

/** What the computed cycle warns of; an opened roll has its own words. */
function pressCycle({ press: { press, cycle } }: Draft): readonly CardWarning[] {
  if (!press || !cycle) return [];
  return cycleWarnings(cycle, press.name).filter(({ code }) => code !== 'moisture-not-known');
}
