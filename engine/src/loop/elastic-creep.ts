import { computeInRange } from '../worked/compute-in-range.ts';
import { elasticCreepRow } from './tension-formulas.ts';

export interface CreepInput {
  readonly tight_N: number;
  readonly slack_N: number;
  readonly tensileStiffness_N: number;
}

/**
 * Elastic creep of a belt on its drive: the share of speed lost though nothing slips. s = (F1 - F2)/EA.
 *
 * @param input.tight_N - tight side [N], 0 to 1e7
 * @param input.slack_N - slack side [N], 0 to 1e7
 * @param input.tensileStiffness_N - EA [N], 1 to 1e9
 * @returns share of the speed [1]
 * @throws not-finite, out-of-range
 * @validity below slip
 * @source Firbank, Int. J. Mech. Sci. 12 (1970) 1053; Gerbert, J. Mech. Des. 118 (1996) 432
 * @verified T4.5 creep
 */
export function elasticCreep(input: CreepInput): number {
  return computeInRange(
    elasticCreepRow,
    { T1: input.tight_N, T2: input.slack_N, EA: input.tensileStiffness_N },
    { T1: 'tight_N', T2: 'slack_N', EA: 'tensileStiffness_N' },
  );
}
