import {
  capstanRatioRow,
  centrifugalTensionRow,
  frictionNeededRow,
  shaftLoadRow,
  slackOfFixedCentresRow,
  slipFromSlackRow,
  slipLimitedPullRow,
  slipReserveRow,
  type TensionRoundLoop,
  type TensionRoundLoopInput,
  tensionRoundLoop,
} from '@loopwright/engine/loop';
import { type Worked, work } from '@loopwright/engine/worked';
import * as z from 'zod';
import { direction, index, number, pathFields, result, results } from '../fields.ts';
import { topic } from '../topic.ts';

const forced = {
  pulley: index('Pulley that the force moves'),
  force_N: number('N', 'Force on that pulley'),
  direction: z.exactOptional(direction),
};

const takeUp = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('screw'), tension_N: number('N', 'Mean tension') }),
  z.strictObject({ kind: z.literal('gravity'), ...forced }),
  z.strictObject({ kind: z.literal('spring'), ...forced }),
]);

export const tensionRoundLoopTopic = topic({
  id: 'tension-round-loop',
  about: 'Tensions, slip reserve and shaft loads round a driven loop',
  input: z.strictObject({
    ...pathFields,
    drive: index('Driven pulley'),
    strand: index('Carrying span, by the pulley that it leaves'),
    loads: z
      .array(
        z.strictObject({
          from_m: number('m', 'Start along the carrying span'),
          to_m: number('m', 'End along the carrying span'),
          pull_N_m: number('N/m', 'Pull per length'),
        }),
      )
      .meta({ description: 'Pull along the carrying span in travel direction; overlapping ones add' }),
    takeUp,
    friction: number('1', 'Friction of belt on drive pulley'),
    beltMass_kg_m: number('kg/m', 'Mass of the belt per length'),
    speed_m_s: number('m/s', 'Belt speed'),
  }),
  output: z.strictObject({
    pull_N: result('N', 'Whole pull at the drive'),
    tight_N: result('N', 'Tension before the drive'),
    slack_N: result('N', 'Tension after the drive'),
    driveWrap_rad: result('rad', 'Wrap of the drive'),
    frictionNeeded: result('1', 'Friction that just holds'),
    pullAtSlip_N: result('N', 'Pull at which slip really starts, with fixed centres'),
    slipReserve: result('1', 'Pull that can be held over the pull'),
    tensions_N: results('N', 'Tension at each pulley; null at the drive'),
    shaftLoads_N: results('N', 'Load on the shaft of each pulley'),
    meanTension_N: result('N', 'Mean tension over the loop'),
    centrifugalTension_N: result('N', 'Tension that the moving mass takes'),
    capstanRatio: result('1', 'Ratio of tensions at which the drive slips'),
    pullShare: result('1', 'Share of the pull by which the slack side lies under the mean'),
  }),
  formulas: [
    centrifugalTensionRow,
    capstanRatioRow,
    frictionNeededRow,
    slackOfFixedCentresRow,
    slipLimitedPullRow,
    slipFromSlackRow,
    slipReserveRow,
    shaftLoadRow,
  ].map(({ id }) => id),
  run: tensionRoundLoop,
  worked: workedTensions,
});

function workedTensions(input: TensionRoundLoopInput, result: TensionRoundLoop): Worked[] {
  const { pull_N: P, tight_N: F1, slack_N: F2, driveWrap_rad: w, centrifugalTension_N: Fc, capstanRatio: E } = result;
  const rows = [
    work(centrifugalTensionRow, { m: input.beltMass_kg_m, v: input.speed_m_s }),
    work(capstanRatioRow, { f: input.friction, w }),
    work(shaftLoadRow, { T1: F1, T2: F2, w }),
  ];
  if (result.frictionNeeded !== null) rows.push(work(frictionNeededRow, { F1, F2, Fc, w }));
  return [...rows, ...workedSlip(input, result, { P, F2, Fc, E })];
}

function workedSlip(
  { takeUp }: TensionRoundLoopInput,
  { pullShare: k, meanTension_N: F0, slipReserve }: TensionRoundLoop,
  { P, F2, Fc, E }: Readonly<Record<'P' | 'F2' | 'Fc' | 'E', number>>,
): Worked[] {
  if (slipReserve === null) return [];
  const atOnce = work(slipFromSlackRow, { F2, Fc, E });
  const rows = [atOnce];
  if (takeUp.kind === 'screw' && k !== null)
    rows.push(work(slackOfFixedCentresRow, { F0, k, P }), work(slipLimitedPullRow, { F0, Fc, E, k }));
  const Ps = Math.min(atOnce.value, rows.at(-1)?.value ?? atOnce.value);
  return [...rows, work(slipReserveRow, { Ps, P })];
}
