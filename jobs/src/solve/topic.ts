import type { CycleMapInput, MapPoint } from '@loopwright/engine/press';
import type { Warning } from '@loopwright/engine/refusal';
import type { Worked } from '@loopwright/engine/worked';
import type { Verify } from '@loopwright/records/log';
import type * as z from 'zod';

/** What a topic's function gives back: the fields of its result, and beside them what the engine has to add. */
export interface Outcome {
  readonly warnings?: readonly (Warning | PlacedWarning)[] | undefined;
  /** Defaults that only the computation could know, by the path of their field. */
  readonly used?: Readonly<Record<string, unknown>> | undefined;
  /** Set by a solver that did not settle. */
  readonly notConverged?: NotSettled | undefined;
}

/** A warning at a place of a list, such as a line of a log. */
export interface PlacedWarning {
  readonly code: string;
  readonly at: number;
}

export interface NotSettled {
  readonly reason: string;
  readonly residual: number;
  readonly iterations: number;
}

/** What a topic may use beside its input; the shell hands it in. */
export interface Tools {
  readonly verify: Verify;
  /** Told how far a long computation is. */
  readonly progress?: ((done: number, of: number) => void) | undefined;
  /** Computes a map of cycles some quicker way, such as on all cores; its points must be the same. */
  readonly mapCycles?: MapCycles | undefined;
}

/** All points of a map of cycles. */
export type MapCycles = (input: CycleMapInput, tools: Pick<Tools, 'progress'>) => Promise<readonly MapPoint[]>;

/** One row of the table of topics: a public question with its public form. */
export interface Topic<I = unknown, O extends object = object> {
  readonly id: string;
  readonly about: string;
  readonly input: z.ZodType<I>;
  readonly output: z.ZodObject;
  /** Worked formulas behind it. */
  readonly formulas: readonly string[];
  /** May take its time: whoever checks signatures asks the machine for it. */
  run(input: I, tools: Tools): (O & Outcome) | Promise<O & Outcome>;
  /** The formulas with the numbers of one answer in place. */
  worked(input: I, result: O): readonly Worked[];
}

/** A row whose functions know the type of their own input; outside, rows are all alike. */
export function topic<I, O extends object>(row: Topic<I, O>): Topic {
  return {
    ...row,
    input: row.input as z.ZodType<unknown>,
    run: (input, tools) => row.run(input as I, tools),
    worked: (input, result) => row.worked(input as I, result as O),
  };
}
