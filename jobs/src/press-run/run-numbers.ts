import type { RunNumber } from '@loopwright/records/run';
import type { CycleNumber } from '../press-cycle/cycle-number.ts';
import type { Quantity } from '../quantity.ts';
import type { SpliceCard } from '../splice-card/card.ts';

/**
 * A number as a record keeps it: with its range, its source, and the formula and inputs that gave it.
 *
 * @param name - under which it is found
 * @param quantity - as the card has it
 */
export function runNumber(name: string, quantity: Quantity): RunNumber {
  const { kind, value, low, high, source, worked } = quantity;
  return {
    name,
    kind,
    value,
    source,
    ...(low !== undefined && { low }),
    ...(high !== undefined && { high }),
    ...(worked && { formula: worked.formula, inputs: { ...worked.inputs } }),
  };
}

/** The numbers of a card that a run works with, under their names in the record. */
export function cardNumbers(card: SpliceCard): readonly RunNumber[] {
  const { lengths, phase, marks, takeUp, press, tension, roll } = card;
  const named: Readonly<Record<string, Quantity | undefined>> = {
    width: card.width,
    'endless-length': lengths?.endless,
    'tip-to-tip': lengths?.tipToTip,
    'square-length': lengths?.square,
    'finger-length': lengths?.fingerLength,
    waste: lengths?.waste,
    'first-tip': phase.firstTip,
    'second-end-fence': phase.secondEndFenceMove,
    'marks-before': marks.before,
    'marks-after': marks.after,
    elongation: marks.elongation,
    'strand-tension': marks.strandTension,
    'fresh-tension': marks.freshTension,
    'take-up-stands': takeUp.standsAt,
    'take-up-set': takeUp.setAt,
    'strip-height': press.stripHeight,
    'belt-pressure': press.beltPressure,
    'gauge-pressure': press.gaugePressure,
    'pressure-without-strips': press.pressureWithoutStrips,
    'retension-after': tension.retensionAfter,
    'dry-time': card.dryTime,
    'dry-temperature': card.dryTemperature,
    'jog-time': card.jogTime,
    ...cycleGiven(press.cycle?.status === 'ok' ? press.cycle.numbers : []),
  };
  const numbers = Object.entries(named).flatMap(([name, each]) => (each ? [runNumber(name, each)] : []));
  return [...numbers, ...(roll && lengths ? [rollLeft(roll.left_m, lengths.square.value)] : [])];
}

/** What the cycle took for mains and air is what somebody can compare at the outlet. */
function cycleGiven(numbers: readonly CycleNumber[]): Record<string, Quantity | undefined> {
  const of = (field: string): Quantity | undefined => numbers.find((each) => each.field === field)?.quantity;
  return { mains: of('lines.outletVoltage'), air: of('lines.airTemperature') };
}

function rollLeft(before_m: number, square_m: number): RunNumber {
  const value = Math.max(0, before_m - square_m);
  return { name: 'roll-left', kind: 'length', value, source: 'computed', inputs: { before_m, square_m } };
}
