import { dieFitsBelt, diesFor, pocketTakesThickness, pocketTakesWidth } from '../fits.ts';
import type { Plant } from '../plant.ts';
import type { Line } from '../things/line.ts';
import type { Template } from '../things/tooling.ts';
import { each, type Fault, type PlantCheck } from './plant-check.ts';

/** Whether dies, templates, belts and lines go together. */
export const dieChecks: readonly PlantCheck[] = [
  {
    code: 'die-fits-no-belt',
    level: 'care',
    reads: ['dies', 'belts'],
    find: each('dies', (die, { belts }) =>
      Object.values(belts).some((belt) => dieFitsBelt(die, belt))
        ? undefined
        : { field: 'pitch_m', data: { kind: 'length', pitch: die.pitch_m, fingerLength: die.fingerLength_m } },
    ),
  },
  { code: 'line-without-die', level: 'care', reads: ['lines', 'belts', 'dies'], find: each('lines', withoutDie) },
  { code: 'die-too-narrow', level: 'care', reads: ['lines', 'belts', 'dies'], find: each('lines', dieTooNarrow) },
  {
    code: 'line-without-template',
    level: 'care',
    reads: ['lines', 'belts', 'dies', 'templates'],
    find: each('lines', withoutTemplate),
  },
  {
    code: 'template-wider-than-die',
    level: 'care',
    reads: ['templates', 'dies'],
    find: each('templates', ({ die, pocketWidth_m }, { dies }) => {
      const max = dies[die]?.maxWidth_m;
      if (max === undefined || pocketWidth_m <= max) return undefined;
      return { field: 'pocketWidth_m', data: { kind: 'length', value: pocketWidth_m, max, other: die } };
    }),
  },
  {
    code: 'template-depth-differs',
    level: 'care',
    reads: ['templates', 'dies', 'belts'],
    find: each('templates', depthDiffers),
  },
];

function withoutDie({ belt: beltId }: Line, { belts, dies }: Plant): Fault {
  const belt = belts[beltId];
  if (!belt || Object.values(dies).some((die) => dieFitsBelt(die, belt))) return undefined;
  const { fingerPitch_m: pitch, fingerLength_m: fingerLength } = belt;
  return { field: 'belt', data: { kind: 'length', pitch, fingerLength, other: beltId } };
}

function dieTooNarrow({ belt: beltId, width_m }: Line, { belts, dies }: Plant): Fault {
  const belt = belts[beltId];
  const fitting = belt ? Object.values(dies).filter((die) => dieFitsBelt(die, belt)) : [];
  const widest = fitting.toSorted((a, b) => b.maxWidth_m - a.maxWidth_m)[0];
  if (!widest || widest.maxWidth_m >= width_m) return undefined;
  return { field: 'width_m', data: { kind: 'length', value: width_m, max: widest.maxWidth_m, other: widest.id } };
}

/** Silent where there is no die either: one thing at a time. */
function withoutTemplate({ belt: beltId, width_m }: Line, plant: Plant): Fault {
  const belt = plant.belts[beltId];
  const dies = belt ? diesFor(plant, belt, width_m) : [];
  if (dies.length === 0) return undefined;
  const found = Object.values(plant.templates).some(
    (template) => dies.some((die) => die.id === template.die) && pocketTakesWidth(template, width_m),
  );
  return found ? undefined : { field: 'width_m', data: { kind: 'length', value: width_m, other: beltId } };
}

function depthDiffers(template: Template, { dies, belts }: Plant): Fault {
  const die = dies[template.die];
  const fitting = die ? Object.values(belts).filter((belt) => dieFitsBelt(die, belt)) : [];
  if (fitting.some((belt) => pocketTakesThickness(template, belt.thickness_m))) return undefined;
  const value = template.pocketDepth_m;
  const off = (thickness_m: number) => Math.abs(thickness_m - value);
  const closest = fitting.toSorted((a, b) => off(a.thickness_m) - off(b.thickness_m))[0];
  if (!closest) return undefined;
  return { field: 'pocketDepth_m', data: { kind: 'length', value, max: closest.thickness_m, other: closest.id } };
}
