import { Refusal } from '@loopwright/engine/refusal';
import type { Plant } from '../plant.ts';
import type { Line } from '../things/line.ts';
import { type LedLines, pulleysOf } from './led-lines.ts';
import { each, type Fault, type Finding, type PlantCheck } from './plant-check.ts';

/** Whether a line's own numbers fit its belt, and whether it has what a line has. */
export const lineChecks: readonly PlantCheck[] = [
  {
    code: 'elongation-outside-window',
    level: 'care',
    reads: ['lines', 'belts'],
    find: each('lines', ({ belt: beltId, setElongation: value }, { belts }): Fault => {
      const belt = belts[beltId];
      if (!belt || (value >= belt.minElongation && value <= belt.maxElongation)) return undefined;
      const { minElongation: min, maxElongation: max } = belt;
      return { field: 'setElongation', data: { kind: 'percent', value, min, max, other: beltId } };
    }),
  },
  {
    code: 'line-without-path',
    level: 'care',
    reads: ['lines', 'pulleys', 'surveys'],
    find: each('lines', ({ id }, _, led): Fault => {
      const found = led.get(id);
      return found instanceof Refusal || pulleysOf(led, id).length > 0 ? undefined : { data: {} };
    }),
  },
  { code: 'survey-refused', level: 'error', reads: ['lines', 'surveys'], find: refusedSurveys },
  { code: 'drives-not-one', level: 'error', reads: ['lines', 'pulleys', 'surveys'], find: each('lines', drives) },
];

/** A line without any pulley is another finding. */
function drives({ id }: Line, _: Plant, led: LedLines): Fault {
  const all = pulleysOf(led, id);
  const value = all.filter(({ role }) => role === 'drive').length;
  return all.length === 0 || value === 1 ? undefined : { data: { value } };
}

function refusedSurveys({ surveys }: Plant, led: LedLines): readonly Finding[] {
  return [...led].flatMap(([line, found]): Finding[] => {
    if (!(found instanceof Refusal)) return [];
    // Of several surveys of a line the last one counts.
    const ids = Object.values(surveys).flatMap((survey) => (survey.line === line ? [survey.id] : []));
    const id = ids.sort().at(-1) ?? line;
    return [{ kind: 'surveys', id, field: found.path, data: { ...found.data, reason: found.code, line } }];
  });
}
