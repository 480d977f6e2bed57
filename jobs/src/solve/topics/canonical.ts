import { solveCanonical } from '@loopwright/records/log';
import * as z from 'zod';
import { topic } from '../topic.ts';

export const canonicalTopic = topic({
  id: 'canonical',
  about: 'Canonical form of a JSON text, and its hash',
  input: z.strictObject({
    bytes_hex: z.string().meta({ description: 'The raw bytes of the JSON text, in hex' }),
  }),
  output: z.strictObject({
    canonical: z.string().meta({ description: 'Canonical form (RFC 8785)' }),
    sha256: z.string().meta({ description: 'SHA-256 of the canonical form as UTF-8, in hex' }),
  }),
  formulas: [],
  run: solveCanonical,
  worked: () => [],
});
