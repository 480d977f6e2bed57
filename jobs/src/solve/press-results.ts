import * as z from 'zod';

/** What may become of a splice. */
export const grades = ['voids-likely', 'over-fused', 'under-fused', 'not-filled', 'good'] as const;
const reasonCodes = [
  'voids',
  'too-much-flow',
  'damaged',
  'too-hot',
  'bond-too-weak',
  'gap-not-filled',
  'opened-hot',
] as const;

/** What became of a splice, and every limit that it passed. */
export const gradeFields = {
  grade: z.enum(grades),
  reasons: z.array(
    z.strictObject({ code: z.enum(reasonCodes), value: z.number(), limit: z.number(), unit: z.string() }),
  ),
};
