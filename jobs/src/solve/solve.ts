import { Refusal, type Warning } from '@loopwright/engine/refusal';
import { engineVersion } from '@loopwright/engine/version';
import { nobleVerifier, type Verify } from '@loopwright/records/log';
import type { Answer, AnswerWarning, Problem, Say } from './answer.ts';
import { defaultsUsed } from './defaults-used.ts';
import { explained } from './explain.ts';
import { plainResult } from './plain-result.ts';
import { readInput } from './read-input.ts';
import type { MapCycles, NotSettled, PlacedWarning, Topic } from './topic.ts';

export interface SolveOptions {
  /** Makes the sentences of refusals and warnings. */
  readonly say: Say;
  /** True to add the worked formulas behind the answer, numbers in place. */
  readonly explain?: boolean;
  /** Checks signatures; without it by code of our own, many times slower. */
  readonly verify?: Verify;
  /** Told how far a long computation is. */
  readonly progress?: (done: number, of: number) => void;
  /** Computes a map of cycles some quicker way than on this thread alone. */
  readonly mapCycles?: MapCycles;
}

/**
 * Answers one question of a topic. Whatever is wrong with the input comes back as a refusal, never as an exception.
 * @param topic - row of the table of topics
 * @param input - anything; usually what a JSON text held
 */
export async function solve(topic: Topic, input: unknown, options: SolveOptions): Promise<Answer> {
  const { say, explain = false, verify = nobleVerifier(), progress, mapCycles } = options;
  try {
    const read = readInput(topic.input, input);
    const {
      warnings = [],
      used = {},
      notConverged,
      ...result
    } = await topic.run(read, { verify, progress, mapCycles });
    const frame = {
      warnings: warnings.map((each) => warned(each, say)),
      engine: engineVersion,
      used: plainResult({ ...defaultsUsed(input, read), ...used }) as Record<string, unknown>,
    };
    if (notConverged !== undefined) return { ...unsettled(notConverged), ...frame };
    const reasons = explain ? { explain: topic.worked(read, result).map(explained) } : {};
    return { status: 'ok', ...(plainResult(result) as object), ...frame, ...reasons };
  } catch (cause) {
    if (!(cause instanceof Refusal)) throw cause;
    return refusedAnswer(cause, say);
  }
}

/** The answer to something that cannot be computed with. */
export function refusedAnswer(problem: Problem, say: Say): Answer {
  const { code, path } = problem;
  const data = plainResult(problem.data) as Problem['data'];
  const message = say({ code, path, data });
  return { status: 'refused', code, path, data, message, warnings: [], engine: engineVersion, used: {} };
}

function unsettled({ reason, residual, iterations }: NotSettled) {
  return {
    status: 'not-converged',
    reason,
    residual: Number.isFinite(residual) ? residual : null,
    iterations,
  } as const;
}

function warned(warning: Warning | PlacedWarning, say: Say): AnswerWarning {
  if ('at' in warning) {
    const { code, at } = warning;
    return { code, at, message: say({ code, path: '', data: { at } }) };
  }
  const { code, path, data } = warning;
  return { code, ...(path === undefined ? {} : { path }), data, message: say({ code, path: path ?? '', data }) };
}
