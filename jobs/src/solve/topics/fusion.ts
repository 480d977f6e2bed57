import { type FusionInput, fusion } from '@loopwright/engine/fusion';
import * as z from 'zod';
import { number, result } from '../fields.ts';
import { fusionUsed } from '../fusion-used.ts';
import { fusionField } from '../press-fields.ts';
import { gradeFields } from '../press-results.ts';
import { topic } from '../topic.ts';

const optional = (unit: string, description: string) => z.exactOptional(number(unit, description));

const limits = z.strictObject({
  bondMin: optional('1', 'Least bond'),
  fillMin: optional('1', 'Least fill over the fill needed'),
  fillMax: optional('1', 'Most fill over the fill needed'),
  damageMax: optional('1', 'Most loss of molar mass'),
  beltMax_degC: optional('degC', 'Hottest belt'),
  voidMax: optional('1', 'Largest void number'),
  openMax_degC: optional('degC', 'Hottest belt at opening'),
});

const strength = z.strictObject({
  best_N_mm: number('N/mm', 'Strength of a splice fused without fault'),
  belt_N_mm: number('N/mm', 'Strength of the belt'),
  molarMassExponent: optional('1', 'Exponent on the molar mass left'),
  hardSegments: z.exactOptional(
    z.strictObject({
      centre_degC: number('degC', 'Peak temperature at which half of the hard segments have mixed'),
      width_K: number('K', 'Width of that transition'),
      without: number('1', 'Share of the strength without any'),
    }),
  ),
});

const node = z.strictObject({
  peak_degC: result('degC', 'Highest temperature'),
  healing: result('1', 'Healing integral Z'),
  bond: result('1', 'Bond D'),
  flow: result('1', 'Flow integral J'),
  fill_m: result('m', 'Fill'),
  molarMassShare: result('1', 'Molar mass left'),
  strengthShare: result('1', 'Share of the strength of a splice without fault'),
});

export const fusionTopic = topic({
  id: 'fusion',
  about: 'What becomes of a splice whose temperatures and pressure are known: bond, fill, damage, grade, strength',
  input: z.strictObject({
    times_s: z.array(number('s', 'Time')).meta({ description: 'Rising' }),
    nodes_degC: z
      .array(z.array(number('degC', 'Temperature')))
      .meta({ description: 'One list a place of the flank, from face to face; one temperature a time' }),
    pressure_Pa: z.union([number('Pa', 'Pressure on the belt'), z.array(number('Pa', 'Pressure at each time'))]),
    fusion: fusionField,
    open_s: optional('s', 'When the press was opened'),
    limits: z.exactOptional(limits.meta({ description: 'Limits of the grade' })),
    strength: z.exactOptional(strength),
  }),
  output: z.strictObject({
    nodes: z.array(node),
    min: node.meta({ description: 'Least of each over all places' }),
    mean: node.meta({ description: 'Mean of each over all places' }),
    voidNumber: result('1', 'Vapour pressure over the pressure on it; null where the moisture is not known'),
    strength: z.nullable(
      z.strictObject({
        min_N_mm: result('N/mm', 'By the weakest place'),
        mean_N_mm: result('N/mm', 'By the mean'),
      }),
    ),
    ...gradeFields,
  }),
  formulas: [],
  run: (input: FusionInput) => ({ ...fusion(input), used: fusionUsed(input.fusion) }),
  worked: () => [],
});
