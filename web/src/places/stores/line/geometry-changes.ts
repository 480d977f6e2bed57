import type { Pulley, Survey } from '@loopwright/plant';
import type { Change } from '../../../store/plant-store.ts';
import { definitionOf, removalOf } from '../keep.ts';
import type { KnownGeometry } from './geometry.ts';
import type { Led } from './loop-now.ts';

/**
 * What has to be written down so that the plant says what the editor says. Coordinates stand before a survey, so a
 * survey takes the pulleys of the line away; coordinates leave the survey, which then waits.
 *
 * @param known - what the plant says now
 * @param line - with its take-up as it should be
 * @param led - the survey or the pulleys
 */
export function geometryChanges(known: KnownGeometry, line: KnownGeometry['line'], led: Led): readonly Change[] {
  return [
    ...(same(known.line, line) ? [] : definitionOf('lines', line)),
    ...('survey' in led ? surveyChanges(known, led.survey) : pulleyChanges(known, led.pulleys)),
  ];
}

function surveyChanges({ survey: before, pulleys }: KnownGeometry, survey: Survey): readonly Change[] {
  return [
    ...(same(before, survey) ? [] : definitionOf('surveys', survey)),
    ...pulleys.flatMap(({ id }) => removalOf('pulleys', id)),
  ];
}

function pulleyChanges({ pulleys: before }: KnownGeometry, pulleys: readonly Pulley[]): readonly Change[] {
  const beforeById = new Map(before.map((pulley) => [pulley.id, pulley]));
  const stay = new Set(pulleys.map(({ id }) => id));
  return [
    ...pulleys
      .filter((pulley) => !same(beforeById.get(pulley.id), pulley))
      .flatMap((pulley) => definitionOf('pulleys', pulley)),
    ...before.filter(({ id }) => !stay.has(id)).flatMap(({ id }) => removalOf('pulleys', id)),
  ];
}

/** Equal whatever the order in which the fields were written. */
function same(a: object | undefined, b: object): boolean {
  return a !== undefined && ordered(a) === ordered(b);
}

function ordered(thing: object): string {
  return JSON.stringify(thing, (_key, value: unknown) =>
    typeof value === 'object' && value !== null && !Array.isArray(value)
      ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)))
      : value,
  );
}
