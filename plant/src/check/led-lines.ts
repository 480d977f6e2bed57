import { Refusal } from '@loopwright/engine/refusal';
import { byLine } from '../by-line.ts';
import { byId } from '../empty-plant.ts';
import type { Plant } from '../plant.ts';
import { type LinePulleys, linePulleys } from '../survey/line-pulleys.ts';

/** How the belt of each line is led, by the line's id; a refusal where its survey gives no pulleys. */
export type LedLines = ReadonlyMap<string, LinePulleys | Refusal>;

/**
 * Sorts all pulleys and surveys of a plant by line, once for all rules.
 *
 * @param plant - any plant
 */
export function ledLines(plant: Plant): LedLines {
  const pulleys = byLine(Object.values(plant.pulleys));
  const surveys = byLine(Object.values(plant.surveys));
  return new Map(
    Object.keys(plant.lines).map((line) => {
      const own = { pulleys: byId(pulleys.get(line) ?? []), surveys: byId(surveys.get(line) ?? []) };
      return [line, ledOrRefused(own, line)];
    }),
  );
}

function ledOrRefused(own: Parameters<typeof linePulleys>[0], line: string): LinePulleys | Refusal {
  try {
    return linePulleys(own, line);
  } catch (refusal) {
    if (refusal instanceof Refusal) return refusal;
    throw refusal;
  }
}

/** All pulleys of a line; none when its survey is refused, which is a finding of its own. */
export function pulleysOf(led: LedLines, line: string): LinePulleys['pulleys'] {
  const found = led.get(line);
  return found === undefined || found instanceof Refusal ? [] : found.pulleys;
}
