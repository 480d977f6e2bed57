import { edgeSlivers, firstTipCentreRow, firstTipFlankRow } from '@loopwright/engine/splice';
import { work } from '@loopwright/engine/worked';
import * as z from 'zod';
import { number, result } from '../fields.ts';
import { topic } from '../topic.ts';

export const edgeSliversTopic = topic({
  id: 'edge-slivers',
  about: 'Lateral phase of the fingers that leaves no thin edge finger',
  input: z.strictObject({ width_m: number('m', 'Belt width'), pitch_m: number('m', 'Finger pitch') }),
  output: z.strictObject({
    atTip_m: result('m', 'Score with the belt centre on a tip'),
    atFlank_m: result('m', 'Score with the belt centre on mid-flank'),
    best_m: result('m', 'Better score of the two'),
    setting: z.enum(['tip', 'flank', 'either']),
    threshold_m: result('m', 'Below it an edge finger is too thin'),
  }),
  formulas: [firstTipCentreRow.id, firstTipFlankRow.id],
  run: edgeSlivers,
  worked: ({ width_m: b, pitch_m: p }) => [work(firstTipCentreRow, { b, p }), work(firstTipFlankRow, { b, p })],
});
