import { tensionBySound, tensionBySoundHingedRow, tensionBySoundRow } from '@loopwright/engine/loop';
import { work } from '@loopwright/engine/worked';
import * as z from 'zod';
import { number, result } from '../fields.ts';
import { topic } from '../topic.ts';

export const tensionBySoundTopic = topic({
  id: 'tension-by-sound',
  about: 'Tension of a plucked span from its pitch',
  input: z.strictObject({
    frequency_Hz: number('Hz', 'Lowest frequency of the plucked span'),
    span_m: number('m', 'Free span'),
    beltMass_kg_m: number('kg/m', 'Mass of the belt per length'),
    bendingStiffness_Nm2: number('N m2', 'Bending stiffness').default(0),
    speed_m_s: number('m/s', 'Belt speed').default(0),
  }),
  output: z.strictObject({
    string_N: result('N', 'As a string without stiffness'),
    hinged_N: result('N', 'As a stiff strip on hinges'),
    clamped_N: result('N', 'As a stiff strip held fast at both ends'),
    moving_N: result('N', 'As a moving string'),
  }),
  formulas: [tensionBySoundRow.id, tensionBySoundHingedRow.id],
  run: tensionBySound,
  worked: ({ frequency_Hz: f, span_m: l, beltMass_kg_m: m, bendingStiffness_Nm2: B = 0 }) => [
    work(tensionBySoundRow, { m, l, f }),
    work(tensionBySoundHingedRow, { m, l, f, B }),
  ],
});
