import {
  reinforcementCapacityRow,
  type SpliceStrength,
  type SpliceStrengthInput,
  spliceStrength,
  spliceStrengthRow,
  weldCapacityRow,
} from '@loopwright/engine/splice';
import { type Worked, work } from '@loopwright/engine/worked';
import * as z from 'zod';
import { number, result } from '../fields.ts';
import { topic } from '../topic.ts';

export const spliceStrengthTopic = topic({
  id: 'splice-strength',
  about: 'Estimated strength of a finger splice; uncalibrated until pulls confirm it',
  input: z.strictObject({
    fingerLength_m: number('m', 'Finger length, tip to root'),
    pitch_m: number('m', 'Finger pitch'),
    thickness_m: number('m', 'Fused thickness'),
    tipWidth_m: number('m', 'Width of a finger tip'),
    developmentLength_m: number('m', 'Length over which a cut yarn hands its load over'),
    beltStrength_N_mm: number('N/mm', 'Strength of the belt'),
    weldShear_MPa: number('MPa', 'Shear strength of the weld'),
    edgeFactor: number('1', 'Loss at thin edge fingers').default(1),
    temperatureFactor: number('1', 'Loss by warmth').default(1),
    double: z.boolean().default(false).meta({ description: 'Two layers of fingers, staggered' }),
  }),
  output: z.strictObject({
    reinforcement_N_mm: result('N/mm', 'Limit by the cut yarns'),
    weld_N_mm: result('N/mm', 'Limit by the weld'),
    strength_N_mm: result('N/mm', 'Estimate'),
    efficiency: result('1', 'Share of the belt strength, before the two factors'),
    governs: z.enum(['reinforcement', 'weld']),
    calibrated: z.boolean(),
  }),
  formulas: [reinforcementCapacityRow.id, weldCapacityRow.id, spliceStrengthRow.id],
  run: spliceStrength,
  worked: workedStrength,
});

function workedStrength(input: SpliceStrengthInput, result: SpliceStrength): Worked[] {
  const { fingerLength_m: l, pitch_m: p, thickness_m, tipWidth_m, developmentLength_m: d } = input;
  const { reinforcement_N_mm: A, weld_N_mm: B } = result;
  const capacities = [
    work(reinforcementCapacityRow, { t: tipWidth_m, p, d, l, f: input.beltStrength_N_mm }),
    work(weldCapacityRow, { l, t: thickness_m, tau: input.weldShear_MPa, p }),
  ];
  const factors = { k: input.edgeFactor ?? 1, c: input.temperatureFactor ?? 1 };
  // Staggered layers are the mean of this and the whole belt, which is no row of its own.
  return input.double ? capacities : [...capacities, work(spliceStrengthRow, { ...factors, A, B })];
}
