import {
  arcRow,
  type BeltPath,
  beltPath,
  innerSpanRow,
  neutralRadiusBackRow,
  neutralRadiusRunningRow,
  openSpanRow,
  type PathInput,
} from '@loopwright/engine/loop';
import { type Worked, work } from '@loopwright/engine/worked';
import * as z from 'zod';
import { faceOf, facesUsed } from '../faces-used.ts';
import { pathFields, result, results } from '../fields.ts';
import { topic } from '../topic.ts';

const point = z.tuple([result('m', 'x'), result('m', 'y')]);

export const pathTopic = topic({
  id: 'path',
  about: 'Length, spans and wraps of a belt round its pulleys',
  input: z.strictObject(pathFields),
  output: z.strictObject({
    length_m: result('m', 'Length of the neutral line'),
    spans_m: results('m', 'Straight span from each pulley to the next'),
    wraps_rad: results('rad', 'Wrap of each pulley'),
    neutralRadii_m: results('m', 'Radius of the neutral line on each pulley'),
    dLength_dRadius: results('1', 'Change of length per change of each radius'),
    turning: result('1', 'Revolutions of the belt: 1, -1, or 0 when crossed'),
    tangents: z.array(z.strictObject({ from: point, to: point })).meta({ description: 'Ends of each span' }),
  }),
  formulas: [neutralRadiusRunningRow, neutralRadiusBackRow, openSpanRow, innerSpanRow, arcRow].map(({ id }) => id),
  run: (input: PathInput) => {
    const path = beltPath(input);
    return { ...path, used: facesUsed(input, path.turning) };
  },
  worked: (input: PathInput, result: BeltPath) => input.pulleys.flatMap((_, i) => workedAt(input, result, i)),
});

/** Radius and arc of a pulley, and the span from it to the next. */
function workedAt({ pulleys, belt, crossed }: PathInput, path: BeltPath, i: number): Worked[] {
  const next = (i + 1) % pulleys.length;
  const [from, to] = [pulleys[i], pulleys[next]];
  if (from === undefined || to === undefined) return [];
  const back = faceOf(from, crossed ? 0 : path.turning) === 'back';
  const y = belt.neutralLineFromRunningFace_m;
  const r = path.neutralRadii_m[i] ?? 0;
  const span = from.turn === to.turn ? openSpanRow : innerSpanRow;
  return [
    back
      ? work(neutralRadiusBackRow, { R: from.surfaceRadius_m, t: belt.thickness_m, y })
      : work(neutralRadiusRunningRow, { R: from.surfaceRadius_m, y }),
    work(arcRow, { r, w: path.wraps_rad[i] ?? 0 }),
    work(span, { C: Math.hypot(to.x_m - from.x_m, to.y_m - from.y_m), r1: r, r2: path.neutralRadii_m[next] ?? 0 }),
  ];
}
