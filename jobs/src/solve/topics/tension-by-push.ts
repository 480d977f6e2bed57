import { tensionByPush, tensionByPushFirstOrderRow, tensionByPushRow } from '@loopwright/engine/loop';
import { work } from '@loopwright/engine/worked';
import * as z from 'zod';
import { number, result } from '../fields.ts';
import { topic } from '../topic.ts';

export const tensionByPushTopic = topic({
  id: 'tension-by-push',
  about: 'Tension of a span from a push at its middle',
  input: z.strictObject({
    span_m: number('m', 'Free span'),
    force_N: number('N', 'Push at mid-span'),
    deflection_m: number('m', 'How far the belt gave way'),
    tensileStiffness_N: number('N', 'Pull per elongation, EA'),
    bendingStiffness_Nm2: number('N m2', 'Bending stiffness').default(0),
    loop_m: z.exactOptional(number('m', 'Loop length, when the pulleys turn freely')),
  }),
  output: z.strictObject({
    tension_N: result('N', 'With stretch and stiffness'),
    firstOrder_N: result('N', 'Without them'),
  }),
  formulas: [tensionByPushRow.id, tensionByPushFirstOrderRow.id],
  run: tensionByPush,
  worked: (input) => {
    const { span_m: l, force_N: Q, deflection_m: d, tensileStiffness_N: EA, bendingStiffness_Nm2: B = 0 } = input;
    const k = input.loop_m === undefined ? 1 : l / input.loop_m;
    return [work(tensionByPushRow, { Q, l, d, EA, k, B }), work(tensionByPushFirstOrderRow, { Q, l, d })];
  },
});
