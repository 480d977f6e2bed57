import { pressUp, pressUpAngleRow, pressUpForceFirstOrderRow, pressUpForceRow } from '@loopwright/engine/loop';
import { work } from '@loopwright/engine/worked';
import * as z from 'zod';
import { number, result } from '../fields.ts';
import { topic } from '../topic.ts';

export const pressUpTopic = topic({
  id: 'press-up',
  about: 'Force of a pressure roller on its carrying rollers, from its press-up or the other way round',
  input: z.strictObject({
    carrierRadius_m: number('m', 'Radius of the carrying rollers'),
    pressureRollerRadius_m: number('m', 'Radius of the pressure rollers'),
    beltThickness_m: number('m', 'Belt thickness'),
    pitch_m: number('m', 'Pitch of the carrying rollers'),
    tension_N: number('N', 'Belt tension'),
    pressUp_m: z.exactOptional(number('m', 'How far the pressure roller is pressed up')),
    force_N: z.exactOptional(number('N', 'Force on each carrying roller')),
  }),
  output: z.strictObject({
    pressUp_m: result('m', 'Press-up'),
    force_N: result('N', 'Force on each carrying roller'),
    angle_rad: result('rad', 'Slope of the belt'),
    freeSpan_m: result('m', 'Free belt between two rollers'),
    firstOrderForce_N: result('N', 'Force by the short formula'),
    extraLength_m_m: result('m/m', 'Extra belt per length of bed'),
  }),
  formulas: [pressUpAngleRow.id, pressUpForceRow.id, pressUpForceFirstOrderRow.id],
  run: pressUp,
  worked: (input, { pressUp_m: u, angle_rad: a }) => {
    const { tension_N: T, pitch_m: p, carrierRadius_m, pressureRollerRadius_m, beltThickness_m } = input;
    const S = carrierRadius_m + pressureRollerRadius_m + beltThickness_m;
    return [
      work(pressUpAngleRow, { S, u, p }),
      work(pressUpForceRow, { T, a }),
      work(pressUpForceFirstOrderRow, { T, u, p }),
    ];
  },
});
