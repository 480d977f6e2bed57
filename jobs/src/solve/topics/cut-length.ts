import {
  type CutLength,
  type CutLengthInput,
  cutLength,
  elongationWithToleranceRow,
  endlessLengthRow,
  respliceLengthRow,
  strandTensionRow,
  stripTipToTipRow,
} from '@loopwright/engine/loop';
import { type Worked, work } from '@loopwright/engine/worked';
import * as z from 'zod';
import { direction, index, number, pathFields, result } from '../fields.ts';
import { topic } from '../topic.ts';

const afterResplice = z.strictObject({
  endlessLength_m: result('m', 'Slack length of the shorter loop'),
  stripTipToTip_m: result('m', 'The same with one finger length'),
  takeUp_m: result('m', 'Take-up travel at the set elongation'),
  givenBack_m: result('m', 'Travel that the take-up gives back'),
  possible: z.boolean().meta({ description: 'The take-up can still set the elongation' }),
  meshesInPlace: z.boolean(),
  pullNeeded_m: result('m', 'Loop length that must be pulled in to mesh'),
  elongationFullyIn: result('1', 'Elongation with the take-up fully in'),
});

export const cutLengthTopic = topic({
  id: 'cut-length',
  about: 'Length to cut for a set elongation, and what the take-up then does',
  input: z.strictObject({
    ...pathFields,
    takeUp: z.strictObject({
      pulley: index('Pulley that moves'),
      direction,
      reference_m: number('m', 'Travel at which the elongation is set, from the coordinates given'),
      max_m: number('m', 'Whole travel, from the coordinates given'),
    }),
    setElongation: number('1', 'Elongation at the reference travel, 0.008 = 0.8 %'),
    fingerLength_m: number('m', 'Finger length, tip to root'),
    cutOffset_m: number('m', 'Correction known from earlier splices').default(0),
    fitSlack_m: number('m', 'Loop length that hands need to mesh the ends').default(0),
    lengthTolerance: z.exactOptional(
      number('1', 'Tolerance of the cut length, as a share either way; without it, a common trade table'),
    ),
    k1_N_mm_pct: number('N/mm/%', 'Relaxed pull per width at 1 % elongation'),
    width_m: number('m', 'Belt width'),
    resplice: z.exactOptional(
      z
        .strictObject({ trim_m: number('m', 'Trimmed from each end') })
        .meta({ description: 'The same belt cut and spliced again' }),
    ),
  }),
  output: z.strictObject({
    endlessLength_m: result('m', 'Slack length of the loop'),
    stripTipToTip_m: result('m', 'Strip after punching: endless length, one finger and the offset'),
    pathAtReference_m: result('m', 'Path length at the reference travel'),
    elongationAt: z.array(
      z.strictObject({ takeUp_m: result('m', 'Travel'), elongation: result('1', 'Elongation there') }),
    ),
    slackTakeUp_m: result('m', 'Travel at which the belt just lies slack'),
    takeUpAtOnePercent_m: result('m', 'Travel at 1 % elongation'),
    meshesInPlace: z.boolean(),
    pullNeeded_m: result('m', 'Loop length that must be pulled in to mesh'),
    elongationRange: z.tuple([result('1', 'With the longest belt'), result('1', 'With the shortest belt')]),
    strandTension_N: result('N', 'Relaxed pull of one strand'),
    afterResplice: afterResplice.optional(),
  }),
  formulas: [endlessLengthRow, stripTipToTipRow, elongationWithToleranceRow, strandTensionRow, respliceLengthRow].map(
    ({ id }) => id,
  ),
  run: cutLength,
  worked: (input: CutLengthInput, result: CutLength) => workedCut(input, result),
});

function workedCut(input: CutLengthInput, result: CutLength): Worked[] {
  const { setElongation: e, fingerLength_m: lf, cutOffset_m: c = 0, lengthTolerance, k1_N_mm_pct, width_m } = input;
  const t = lengthTolerance ?? Number(result.used.lengthTolerance);
  const { endlessLength_m: L0 } = result;
  const rows = [
    work(endlessLengthRow, { L: result.pathAtReference_m, e }),
    work(stripTipToTipRow, { L0, lf, c }),
    work(elongationWithToleranceRow, { e0: e, t }),
    work(elongationWithToleranceRow, { e0: e, t: -t }),
    work(strandTensionRow, { k1: k1_N_mm_pct, e, b: width_m }),
  ];
  return input.resplice ? [...rows, work(respliceLengthRow, { L0, lf, t: input.resplice.trim_m })] : rows;
}
