import type { Measurement, Pulley } from '@loopwright/plant';
import type { Shape } from '@loopwright/sheets';
import { dimension, line, type Spot } from './sketch-shapes.ts';

/** How a sketch shows one measurement. */
export interface SketchDimension {
  readonly shapes: readonly Shape[];
  /** Ids of the pulleys it is about. */
  readonly pulleys: readonly string[];
  /** Whether it is taken from the line through the two end centres. */
  readonly fromCentreLine: boolean;
}

type Place = (pulley: Pulley) => Spot;

/** From which pulley to which, by the end of the name of the measurement; `drive` stands for the take-up too. */
const alongBed: readonly (readonly [suffix: string, from: string, to: string])[] = [
  ['endDistance_m', 'infeed', 'discharge'],
  ['Distance_m', 'infeed', '*'],
  ['SnubBefore_m', '*-snub-before', '*'],
  ['SnubAfter_m', '*', '*-snub-after'],
];

const bottom = 114;

/**
 * The lines that show where a measurement is taken.
 *
 * @param field - the measurement
 * @param pulleys - of the sketch
 * @param place - where a pulley stands in the sketch
 */
export function dimensionOf(field: Measurement, pulleys: readonly Pulley[], place: Place): SketchDimension | undefined {
  const group = field.startsWith('takeUp') ? 'take-up' : 'drive';
  const named = (name: string) => pulleys.find(({ id }) => id === `sketch.${name.replace('*', group)}`);
  if (field.endsWith('Diameter_m')) return acrossPulleys(field, group, named, place);
  if (field.endsWith('Drop_m')) return dropOf(named(field.includes('Snub') ? '*-snub-before' : '*'), place);
  const [, from = '', to = ''] = alongBed.find(([suffix]) => field.endsWith(suffix)) ?? [];
  return distance(named(from), named(to), place);
}

function acrossPulleys(
  field: Measurement,
  group: string,
  named: (name: string) => Pulley | undefined,
  place: Place,
): SketchDimension | undefined {
  const end = field.replace('Diameter_m', '');
  const names = field.includes('Snub')
    ? ['*-snub-before', '*-snub-after']
    : [end === 'infeed' || end === 'discharge' ? end : group];
  const found = names.map(named).filter((pulley) => pulley !== undefined);
  const shapes = found.flatMap((pulley) => {
    const { x, y } = place(pulley);
    const r = pulley.diameter_m / 2;
    const below = y + r + 9;
    return [
      line(
        [
          { x: x - r, y },
          { x: x - r, y: below + 4 },
        ],
        'accent',
      ),
      line(
        [
          { x: x + r, y },
          { x: x + r, y: below + 4 },
        ],
        'accent',
      ),
      ...dimension({ x: x - r, y: below }, { x: x + r, y: below }, 'accent'),
    ];
  });
  return { shapes, pulleys: found.map(({ id }) => id), fromCentreLine: false };
}

function dropOf(pulley: Pulley | undefined, place: Place): SketchDimension | undefined {
  if (pulley === undefined) return undefined;
  const { x, y } = place(pulley);
  const top = y + pulley.y_m;
  const aside = x - pulley.diameter_m / 2 - 26;
  return {
    shapes: [
      line(
        [
          { x, y },
          { x: aside - 4, y },
        ],
        'accent',
      ),
      ...dimension({ x: aside, y: top }, { x: aside, y }, 'accent'),
    ],
    pulleys: [pulley.id],
    fromCentreLine: true,
  };
}

function distance(from: Pulley | undefined, to: Pulley | undefined, place: Place): SketchDimension | undefined {
  if (from === undefined || to === undefined) return undefined;
  const [a, b] = [place(from), place(to)];
  return {
    shapes: [
      line([a, { x: a.x, y: bottom + 4 }], 'accent'),
      line([b, { x: b.x, y: bottom + 4 }], 'accent'),
      ...dimension({ x: a.x, y: bottom }, { x: b.x, y: bottom }, 'accent'),
    ],
    pulleys: [from.id, to.id],
    fromCentreLine: false,
  };
}
