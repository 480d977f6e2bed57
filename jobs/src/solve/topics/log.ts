import { type LogQuestion, solveLog, verdicts } from '@loopwright/records/log';
import * as z from 'zod';
import { count, lines, publicKey } from '../record-fields.ts';
import { topic } from '../topic.ts';

export const logTopic = topic({
  id: 'log',
  about: 'Whether the log of a device is whole, and where it first fails',
  input: z.strictObject({
    lines: lines('The log'),
    publicKey_hex: publicKey,
    plant: z.string().meta({ description: 'Id of the plant that the log must belong to' }),
    checkpoints: z
      .array(z.unknown())
      .default([])
      .meta({ description: 'Signed checkpoints of the log, from elsewhere; without one a cut end cannot be seen' }),
  }),
  output: z.strictObject({
    verdict: z.enum(verdicts).meta({ description: 'ok, or the first failure' }),
    at: count('Line of the failure; of a checkpoint its size; truncated: the size of the log').optional(),
    witnessed: count('Events that a checkpoint vouches for; truncated: how many it speaks of'),
    field: z.string().optional().meta({ description: 'bad-envelope, bad-checkpoint: the field that is wrong' }),
    size: count('Events up to the first failure'),
    head: z.string().meta({ description: 'Id of the last of them; 64 zeros without one' }),
    root: z.string().meta({ description: 'Root of the tree over them' }),
  }),
  formulas: [],
  run: (input: LogQuestion, { verify }) => solveLog(input, verify),
  worked: () => [],
});
