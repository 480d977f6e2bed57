import { engineVersion } from '@loopwright/engine/version';
import type { Belt, Line, Plant } from '@loopwright/plant';
import { positionState, revolutionsOf } from '../lines/position-state.ts';
import { computed, given } from '../quantity.ts';
import { type CardLengths, type CardPress, causeCodes, type SpliceCard } from './card.ts';
import { gather } from './gather.ts';
import { type CardOptions, type Ground, groundOf } from './ground.ts';
import { inspectSteps, restartSteps } from './inspect-restart.ts';
import { cardMarks } from './marks.ts';
import { missingOf } from './missing.ts';
import { cardPath } from './path.ts';
import { cardPhase } from './phase.ts';
import { cardPress } from './press.ts';
import { revisionOf } from './revision.ts';
import { expectedStrength } from './strength.ts';
import { cardTakeUp } from './take-up.ts';
import { cardTension } from './tension.ts';
import { timeBudget } from './time-budget.ts';
import { cardWarnings } from './warnings.ts';

/**
 * The card for a torn belt: which belt, how long, which die and phase, which marks, where to thread, whether it
 * meshes in place, which press and recipe, how long it takes, what to beware of. What the plant does not know is
 * listed as missing and never blocks the rest.
 *
 * @param plant - the plant's state
 * @param positionId - where the belt runs
 * @param options - moment, press and hands
 * @returns the card; every computed number with its formula where one row gives it
 * @throws unknown-position, unknown-press, dangling-line, dangling-belt
 */
export function spliceCard(plant: Plant, positionId: string, options: CardOptions): SpliceCard {
  const ground = groundOf(plant, positionId, options);
  const press = cardPress(ground);
  const draft = { ...heading(plant, ground), ...hands(ground, press), ...numbers(ground), press };
  const complete = { ...draft, missing: missingOf(draft) };
  return { ...complete, warnings: cardWarnings(complete) };
}

/** What the card is about: plant, position, its state, and which inputs it was made from. */
function heading(plant: Plant, ground: Ground) {
  const { position, line, lengths, now, people } = ground;
  const revolutions = lengths && revolutionsOf(position, line, lengths.endless.value, now);
  return {
    now,
    people,
    position,
    line,
    engine: engineVersion,
    revision: revisionOf(inputsOf(ground)),
    plant: { id: plant.id, name: plant.name },
    state: positionState(position, revolutions, now),
    ...(revolutions !== undefined && {
      revolutions:
        position.revolutions === undefined
          ? computed('revolutions', revolutions)
          : given('revolutions', revolutions, position, 'revolutions'),
    }),
  };
}

/** Everything the numbers of the card rest on, but not the moment: the same inputs make the same card. */
function inputsOf({ now: _now, lengths: _lengths, loop, ...inputs }: Ground): unknown {
  return { ...inputs, engine: engineVersion, pulleys: loop?.pulleys };
}

/** What the hands do and need, in the order of the work. */
function hands(ground: Ground, press: CardPress) {
  const { belt, line, people, lengths } = ground;
  const budget = timeBudget(lengths?.endless.value, people, press.openAt);
  return {
    time: budget.total,
    timeParts: budget.parts,
    causes: causeCodes,
    gather: gather({ ...ground, square_m: lengths?.square.value }),
    inspect: inspectSteps(belt, line),
    restart: restartSteps(),
    ...(ground.roll && { roll: ground.roll }),
    ...(ground.die && { die: ground.die }),
    ...drying(belt),
    ...jog(line, lengths),
  };
}

function numbers(ground: Ground) {
  const { belt, line, position, loop, noPath, lengths, die, press } = ground;
  const phase = cardPhase(belt, line);
  const marks = cardMarks(belt, line, loop);
  const strength = expectedStrength(belt, die, phase.score.value < phase.threshold.value);
  return {
    belt,
    phase,
    marks,
    width: given('shortLength', line.width_m, line, 'width_m'),
    takeUp: cardTakeUp(position, line, loop, lengths),
    tension: cardTension(position, belt, line, loop, marks),
    ...(lengths && { lengths }),
    ...(loop && { path: cardPath(line, loop, press) }),
    ...(noPath && { noPath }),
    ...(strength && { spliceStrength: strength }),
  };
}

function drying(belt: Belt): Pick<SpliceCard, 'dryTime' | 'dryTemperature'> {
  const { dryTime_s, dryTemperature_degC } = belt;
  return {
    ...(dryTime_s !== undefined && { dryTime: given('time', dryTime_s, belt, 'dryTime_s') }),
    ...(dryTemperature_degC !== undefined && {
      dryTemperature: given('temperature', dryTemperature_degC, belt, 'dryTemperature_degC'),
    }),
  };
}

/** Three turns by jogging equalise the strands. */
function jog(line: Line, lengths: CardLengths | undefined): Pick<SpliceCard, 'jogTime'> {
  return lengths ? { jogTime: computed('time', (3 * lengths.endless.value) / line.speed_m_s) } : {};
}
