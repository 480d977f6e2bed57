import type { RefusalData } from '@loopwright/engine/refusal';

/** Why an input cannot be answered, without the sentence. */
export interface Problem {
  readonly code: string;
  readonly path: string;
  readonly data: RefusalData;
}

/** Makes the sentence for a person; given by the shell, because sentences live outside this package. */
export type Say = (problem: Problem) => string;

export interface AnswerWarning {
  readonly code: string;
  readonly path?: string;
  readonly at?: number;
  readonly data?: RefusalData;
  readonly message: string;
}

/** What stands in every answer. */
interface AnswerFrame {
  readonly warnings: readonly AnswerWarning[];
  /** Version of the engine that computed it. */
  readonly engine: string;
  /** Each default that was taken, by the path of its field. */
  readonly used: Readonly<Record<string, unknown>>;
}

export type Refused = AnswerFrame & { readonly status: 'refused'; readonly message: string } & Problem;

/** A solver that did not settle says so, with what was left, instead of a number. */
export type NotConverged = AnswerFrame & {
  readonly status: 'not-converged';
  readonly reason: string;
  readonly residual: number | null;
  readonly iterations: number;
};

export type Solved = AnswerFrame & { readonly status: 'ok' } & Readonly<Record<string, unknown>>;

export type Answer = Solved | Refused | NotConverged;
