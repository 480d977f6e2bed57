import { airAt } from './air.ts';
import { hotFaceDown_W_m2K, hotFaceUp_W_m2K, verticalWall_W_m2K } from './convection.ts';
import { radiation_W_m2K } from './radiation.ts';

/** Outside of a platen or of its cover. */
export interface OuterFace {
  readonly faces: 'up' | 'down' | 'side';
  /** Height of a side; area over perimeter of a face that looks up or down. */
  readonly length_m: number;
  readonly emissivity: number;
}

/**
 * Loss of a bare face to the room by still air and radiation. h = h_air + h_radiation at the film temperature.
 *
 * @param face - which way it looks, length [m], emissivity [1]
 * @param surface_degC - temperature of the face [degC]
 * @param room_degC - temperature of the room [degC]
 * @returns heat transfer coefficient [W/m2K]
 * @validity still air; a draught adds to it
 * @source derived: sum of convection and radiation
 * @verified LOSS-06 loss of a bare platen
 */
export function faceLoss_W_m2K(face: OuterFace, surface_degC: number, room_degC: number): number {
  const air = airAt((surface_degC + room_degC) / 2);
  const wall = { wall_degC: surface_degC, air_degC: room_degC, length_m: face.length_m };
  const convection = { up: hotFaceUp_W_m2K, down: hotFaceDown_W_m2K, side: verticalWall_W_m2K }[face.faces];
  return convection(wall, air) + radiation_W_m2K(face.emissivity, surface_degC, room_degC);
}
