import * as z from 'zod';
import type { Topic } from './topic.ts';

const warning = z.strictObject({
  code: z.string(),
  path: z.string().optional(),
  at: z.number().optional(),
  data: z.record(z.string(), z.unknown()).optional(),
  message: z.string(),
});

const frame = {
  warnings: z.array(warning),
  engine: z.string().meta({ description: 'Version of the engine' }),
  used: z
    .record(z.string(), z.unknown())
    .meta({ description: 'Each default that was taken, by the path of its field' }),
};

const explanation = z
  .array(
    z.strictObject({
      formula: z.string(),
      expression: z.string(),
      symbols: z.record(z.string(), z.strictObject({ meaning: z.string(), unit: z.string() })),
      source: z.string(),
      inputs: z.record(z.string(), z.number()),
      value: z.number(),
      withNumbers: z.string(),
    }),
  )
  .meta({ description: 'Worked formulas with the numbers in place, when asked for' });

const refused = z.strictObject({
  status: z.literal('refused'),
  code: z.string(),
  path: z.string().meta({ description: 'Field, like pulleys[3].x_m; indices count from 0' }),
  data: z.record(z.string(), z.union([z.string(), z.number(), z.boolean(), z.null()])),
  message: z.string(),
  ...frame,
});

const notConverged = z.strictObject({
  status: z.literal('not-converged'),
  reason: z.string(),
  residual: z.nullable(z.number()),
  iterations: z.number(),
  ...frame,
});

/** The schema of every answer of a topic. */
export function answerSchema({ output }: Topic): z.ZodType {
  const solved = z.strictObject({
    status: z.literal('ok'),
    ...output.shape,
    ...frame,
    explain: z.exactOptional(explanation),
  });
  return z.discriminatedUnion('status', [solved, refused, notConverged]);
}

/** JSON Schemas (2020-12) of what a topic takes and what it answers. */
export function topicSchema(topic: Topic): { readonly topic: string; readonly input: object; readonly output: object } {
  return {
    topic: topic.id,
    input: z.toJSONSchema(topic.input, { io: 'input' }),
    output: z.toJSONSchema(answerSchema(topic)),
  };
}
