import { faceLoss_W_m2K } from '../losses/platen-loss.ts';
import { type LossLaw, lossLaw } from '../march/loss-law.ts';
import type { BareFace, Platen } from './cycle-input.ts';

const coldest_degC = -50;
const hottest_degC = 360;
const apart_K = 2;

/**
 * Loss of a bare face whichever of face and room is warmer: where the room is, a face that looks up loses as a warm one that looks
 * down.
 */
function bareLoss_W_m2(face: BareFace, face_degC: number, room_degC: number): number {
  if (face_degC === room_degC) return 0;
  const turned = { up: 'down', down: 'up', side: 'side' } as const;
  const faces = face_degC < room_degC ? turned[face.faces] : face.faces;
  return faceLoss_W_m2K({ ...face, faces }, face_degC, room_degC) * (face_degC - room_degC);
}

/**
 * Loss of all bare faces of a platen over its temperature, per area of the platen.
 * q = sum of A_f*h_f(T)*(T - T_a)/A.
 *
 * @param platen - faces and area [m2]
 * @param ambient_degC - still air and surroundings [degC]
 * @returns tabulated loss; undefined for a platen without bare faces
 * @validity faces of the platen's temperature, still air; the fan's share is not in it
 * @source derived: sum over the faces
 * @verified LOSS-12 tabulated loss
 */
export function facesLaw(
  { faces, area_m2 }: Pick<Platen, 'faces' | 'area_m2'>,
  ambient_degC: number,
): LossLaw | undefined {
  if (faces === undefined || faces.length === 0) return undefined;
  const loss = (temperature_degC: number): number =>
    faces.reduce((sum, face) => sum + face.area_m2 * bareLoss_W_m2(face, temperature_degC, ambient_degC), 0) / area_m2;
  // The air's temperature is a node: there the slope of the loss turns.
  const below = Math.ceil((ambient_degC - coldest_degC) / apart_K);
  const lowest_degC = ambient_degC - below * apart_K;
  const intervals = Math.ceil((hottest_degC - lowest_degC) / apart_K);
  return lossLaw(loss, { lowest_degC, highest_degC: lowest_degC + intervals * apart_K, apart_K });
}
