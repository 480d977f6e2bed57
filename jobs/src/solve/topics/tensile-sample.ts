import { characteristicRow, fractileFactorRow, tensileSample } from '@loopwright/engine/splice';
import { work } from '@loopwright/engine/worked';
import * as z from 'zod';
import { number, result } from '../fields.ts';
import { topic } from '../topic.ts';

export const tensileSampleTopic = topic({
  id: 'tensile-sample',
  about: 'Characteristic strength from tensile pulls',
  input: z.strictObject({
    pulls_N_mm: z.array(number('N/mm', 'Strength of one pull')).min(2),
    beltBroke: z
      .array(z.boolean())
      .meta({ description: 'True where the belt broke and not the splice: that pull is a lower bound' })
      .optional(),
  }),
  output: z.strictObject({
    mean: result('N/mm', 'Mean'),
    standardDeviation: result('N/mm', 'Standard deviation'),
    factor: result('1', 'Fractile factor for this number of pulls'),
    characteristic: result('N/mm', '5 % fractile'),
  }),
  formulas: [fractileFactorRow.id, characteristicRow.id],
  run: tensileSample,
  worked: ({ pulls_N_mm }, { mean: m, factor: k, standardDeviation: s }) => [
    work(fractileFactorRow, { n: pulls_N_mm.length }),
    work(characteristicRow, { m, k, s }),
  ],
});
