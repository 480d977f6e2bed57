import {
  beltPressureRow,
  leakedBagRow,
  type PressureInput,
  pressure,
  squeezePressureRow,
  warmedBagRow,
} from '@loopwright/engine/press';
import * as z from 'zod';
import { number, result } from '../fields.ts';
import { topic } from '../topic.ts';

export const pressureTopic = topic({
  id: 'pressure',
  about: 'Pressure on belt and edge strips under a bag, with or without a stiff plate between',
  input: z.strictObject({
    gaugePressure_Pa: number('Pa', 'Pressure in the bag over ambient'),
    bagWidth_m: number('m', 'Width of the bag'),
    beltWidth_m: number('m', 'Width of the belt'),
    stripsWidth_m: number('m', 'Both edge strips together; 0 for none'),
    plate: z.exactOptional(
      z
        .strictObject({
          beltThickness_m: number('m', 'Thickness of the belt'),
          beltModulus_MPa: number('MPa', 'Modulus of the belt across its thickness'),
          stripsThickness_m: number('m', 'Thickness of the strips'),
          stripsModulus_MPa: number('MPa', 'Modulus of the strips across their thickness'),
        })
        .meta({ description: 'A stiff plate; without it belt and strips are taken as equally high and stiff' }),
    ),
    shut: z.exactOptional(
      z
        .strictObject({
          filled_degC: number('degC', 'Air in the bag when it was filled'),
          now_degC: number('degC', 'Air in the bag now'),
          after_s: z.exactOptional(number('s', 'Time since it was shut')),
          leakTime_s: z.exactOptional(number('s', 'Time in which a leak takes the pressure to 1/e')),
        })
        .meta({ description: 'A bag shut off from its pump' }),
    ),
  }),
  output: z.strictObject({
    gauge_Pa: result('Pa', 'In the bag'),
    belt_Pa: result('Pa', 'On the belt'),
    strips_Pa: result('Pa', 'On the strips; null without'),
    ratio: result('1', 'On the belt over the gauge'),
  }),
  formulas: [beltPressureRow, squeezePressureRow, warmedBagRow, leakedBagRow].map(({ id }) => id),
  run: (input: PressureInput) => {
    const { worked: _, ...found } = pressure(input);
    return found;
  },
  worked: (input) => pressure(input).worked,
});
