import { solveInclusion } from '@loopwright/records/log';
import * as z from 'zod';
import { index } from '../fields.ts';
import { holds, proof, root } from '../record-fields.ts';
import { topic } from '../topic.ts';

export const inclusionTopic = topic({
  id: 'inclusion',
  about: 'Whether an entry stands at a place of a log with this size and root',
  input: z.strictObject({
    entry_hex: z.string().meta({ description: 'The entry itself, in hex; it is hashed here' }),
    index: index('Place of the entry'),
    size: index('Size of the log, from a signed checkpoint'),
    proof,
    root: root('Root of the log, from the same checkpoint'),
  }),
  output: z.strictObject({ holds }),
  formulas: [],
  run: solveInclusion,
  worked: () => [],
});
