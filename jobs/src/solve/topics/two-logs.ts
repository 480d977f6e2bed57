import { solveTwoLogs, type TwoLogsQuestion, verdicts } from '@loopwright/records/log';
import * as z from 'zod';
import { count, lines, publicKey } from '../record-fields.ts';
import { topic } from '../topic.ts';

export const twoLogsTopic = topic({
  id: 'two-logs',
  about: 'Where two copies of the log of one device part',
  input: z.strictObject({
    a: lines('One copy'),
    b: lines('The other copy'),
    publicKey_hex: publicKey,
    plant: z.string().meta({ description: 'Id of the plant that the log must belong to' }),
  }),
  output: z.strictObject({
    verdict: z.enum(verdicts).meta({ description: 'fork, prefix, ok, or why one copy is not whole in itself' }),
    at: count('First line at which they differ; without a difference the shorter length'),
    log: z.enum(['a', 'b']).optional().meta({ description: 'The copy that is not whole in itself' }),
  }),
  formulas: [],
  run: (input: TwoLogsQuestion, { verify }) => solveTwoLogs(input, verify),
  worked: () => [],
});
