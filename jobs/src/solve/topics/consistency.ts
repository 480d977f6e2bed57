import { solveConsistency } from '@loopwright/records/log';
import * as z from 'zod';
import { index } from '../fields.ts';
import { holds, proof, root } from '../record-fields.ts';
import { topic } from '../topic.ts';

export const consistencyTopic = topic({
  id: 'consistency',
  about: 'Whether an earlier state of a log is the beginning of a later one',
  input: z.strictObject({
    first: index('Size of the earlier state'),
    second: index('Size of the later state'),
    proof,
    firstRoot: root('Root of the earlier state'),
    secondRoot: root('Root of the later state'),
  }),
  output: z.strictObject({ holds }),
  formulas: [],
  run: solveConsistency,
  worked: () => [],
});
