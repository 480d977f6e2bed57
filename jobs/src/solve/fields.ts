import * as z from 'zod';

// zod compiles validators with `Function` unless told not to; the page's content-security policy forbids that.
z.config({ jitless: true });

/** A finite number in a unit. Whether it can be computed with, the engine says. */
export function number(unit: string, description: string): z.ZodNumber {
  return z.number().meta({ unit, description: `${description} [${unit}]` });
}

/** A place in a list, counted from 0. */
export function index(description: string): z.ZodNumber {
  return z
    .int()
    .min(0)
    .meta({ unit: '1', description: `${description}, counted from 0` });
}

const turns = z
  .enum(['left', 'right'])
  .meta({ description: 'left: the belt turns counter-clockwise round the pulley' });

const pulley = z.strictObject({
  id: z.string().max(200).meta({ description: 'Name of the pulley' }).optional(),
  x_m: number('m', 'Centre, to the right'),
  y_m: number('m', 'Centre, upwards'),
  surfaceRadius_m: number('m', 'Radius of the surface that the belt touches'),
  turn: turns,
  face: z
    .enum(['running', 'back'])
    .meta({ description: 'Face that touches; without it the running face lies inside the loop' })
    .optional(),
});

/** The loop as every topic about it takes it: pulleys in travel order and the belt's section. */
export const pathFields = {
  pulleys: z.array(pulley).meta({ description: 'In travel order' }),
  belt: z.strictObject({
    thickness_m: number('m', 'Thickness').min(0),
    neutralLineFromRunningFace_m: number('m', 'Distance of the neutral line from the running face'),
  }),
  crossed: z.boolean().default(false).meta({ description: 'True for a belt that crosses itself in a figure-eight' }),
};

/** A direction in the plane of the loop. */
export const direction = z
  .tuple([number('1', 'To the right'), number('1', 'Upwards')])
  .meta({ description: 'Direction in which the take-up lengthens the loop' });

/** A number of a result; null where none exists. */
export function result(unit: string, description: string): z.ZodNullable<z.ZodNumber> {
  return z.nullable(z.number()).meta({ unit, description: `${description} [${unit}]` });
}

export function results(unit: string, description: string): z.ZodArray<z.ZodNullable<z.ZodNumber>> {
  return z.array(result(unit, description));
}
