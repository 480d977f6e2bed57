import { freshTensionRow, marksElongationRow, strandTensionRow, tensionByMarks } from '@loopwright/engine/loop';
import { work } from '@loopwright/engine/worked';
import * as z from 'zod';
import { number, result } from '../fields.ts';
import { topic } from '../topic.ts';

export const tensionByMarksTopic = topic({
  id: 'tension-by-marks',
  about: 'Elongation and tension from two marks on the belt',
  input: z.strictObject({
    marks_m: number('m', 'Distance of the marks on the slack belt'),
    stretched_m: number('m', 'Their distance on the tensioned belt'),
    k1_N_mm_pct: number('N/mm/%', 'Relaxed pull per width at 1 % elongation'),
    width_m: number('m', 'Belt width'),
    readingError_m: number('m', 'Error of a reading').default(0.0005),
    freshFactor: number('1', 'Fresh pull over relaxed pull').default(1.8),
  }),
  output: z.strictObject({
    elongation: result('1', 'Elongation'),
    tension_N: result('N', 'Relaxed tension'),
    range_N: z.tuple([result('N', 'Lowest by the reading error'), result('N', 'Highest by the reading error')]),
    fresh_N: result('N', 'Tension just after fitting'),
  }),
  formulas: [marksElongationRow.id, strandTensionRow.id, freshTensionRow.id],
  run: tensionByMarks,
  worked: (
    { marks_m: m, stretched_m: s, k1_N_mm_pct: k1, width_m: b, freshFactor: c = 1.8 },
    { elongation, tension_N },
  ) => [
    work(marksElongationRow, { s, m }),
    work(strandTensionRow, { k1, e: elongation, b }),
    work(freshTensionRow, { c, F: tension_N }),
  ],
});
