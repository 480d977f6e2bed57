import type { Air } from './air.ts';

const g_m_s2 = 9.80665;

/** A wall in still air. */
export interface StillWall {
  readonly wall_degC: number;
  readonly air_degC: number;
  /** Height of a vertical wall; area over perimeter of a horizontal one. */
  readonly length_m: number;
}

/**
 * Rayleigh number of a wall in still air. Ra = g*beta*|Tw - Ta|*L^3/(nu*a).
 *
 * @param wall - temperatures [degC], length [m]
 * @param air - properties at the film temperature
 * @returns Rayleigh number [1]
 * @source from memory: Incropera, DeWitt, Bergman & Lavine, chapter 9
 * @verified LOSS-02 Rayleigh number of a vertical wall
 */
export function rayleigh(wall: StillWall, air: Air): number {
  const buoyancy = g_m_s2 * air.expansion_1_K * Math.abs(wall.wall_degC - wall.air_degC);
  return (buoyancy * wall.length_m ** 3) / (air.kinematicViscosity_m2_s * air.diffusivity_m2_s);
}

/**
 * Heat transfer of a vertical wall in still air, laminar and turbulent.
 * Nu = {0.825 + 0.387*Ra^(1/6)/[1 + (0.492/Pr)^(9/16)]^(8/27)}^2, h = Nu*k/L.
 *
 * @param wall - temperatures [degC], height [m]
 * @param air - properties at the film temperature
 * @returns heat transfer coefficient [W/m2K]
 * @validity all Ra
 * @source Churchill & Chu 1975 (from memory)
 * @verified LOSS-02 vertical wall
 */
export function verticalWall_W_m2K(wall: StillWall, air: Air): number {
  const root = 0.825 + (0.387 * rayleigh(wall, air) ** (1 / 6)) / prandtlTerm(air) ** (8 / 27);
  return (root ** 2 * air.conductivity_W_mK) / wall.length_m;
}

/**
 * Heat transfer of a vertical wall in still laminar air.
 * Nu = 0.68 + 0.670*Ra^(1/4)/[1 + (0.492/Pr)^(9/16)]^(4/9), h = Nu*k/L.
 *
 * @param wall - temperatures [degC], height [m]
 * @param air - properties at the film temperature
 * @returns heat transfer coefficient [W/m2K]
 * @validity Ra up to 1e9; the factor is 0.670 in the original, some pages print 0.663
 * @source Churchill & Chu 1975 (from memory)
 * @verified LOSS-02 vertical wall, laminar
 */
export function verticalWallLaminar_W_m2K(wall: StillWall, air: Air): number {
  const nusselt = 0.68 + (0.67 * rayleigh(wall, air) ** 0.25) / prandtlTerm(air) ** (4 / 9);
  return (nusselt * air.conductivity_W_mK) / wall.length_m;
}

function prandtlTerm(air: Air): number {
  return 1 + (0.492 / air.prandtl) ** (9 / 16);
}

/**
 * Heat transfer of a hot horizontal face that looks up. Nu = 0.54*Ra^(1/4), from 1e7 on 0.15*Ra^(1/3); h = Nu*k/L.
 *
 * @param wall - temperatures [degC], area over perimeter [m]
 * @param air - properties at the film temperature
 * @returns heat transfer coefficient [W/m2K]
 * @validity Ra 1e4 to 1e11
 * @source from memory: Incropera, DeWitt, Bergman & Lavine, chapter 9
 * @verified LOSS-03 hot face up
 */
export function hotFaceUp_W_m2K(wall: StillWall, air: Air): number {
  const ra = rayleigh(wall, air);
  const nusselt = ra < 1e7 ? 0.54 * ra ** 0.25 : 0.15 * ra ** (1 / 3);
  return (nusselt * air.conductivity_W_mK) / wall.length_m;
}

/**
 * Heat transfer of a hot horizontal face that looks down. Nu = 0.52*Ra^(1/5), h = Nu*k/L.
 *
 * @param wall - temperatures [degC], area over perimeter [m]
 * @param air - properties at the film temperature
 * @returns heat transfer coefficient [W/m2K]
 * @validity Ra 1e4 to 1e9; the older 0.27*Ra^(1/4) agrees within 2 % at the size of a platen
 * @source from memory: Incropera, DeWitt, Bergman & Lavine, chapter 9
 * @verified LOSS-03 hot face down
 */
export function hotFaceDown_W_m2K(wall: StillWall, air: Air): number {
  return (0.52 * rayleigh(wall, air) ** 0.2 * air.conductivity_W_mK) / wall.length_m;
}

/**
 * Mean heat transfer of a plate with air blown along it, laminar from its edge.
 * Nu = 0.664*Re^(1/2)*Pr^(1/3), h = Nu*k/L.
 *
 * @param speed_m_s - speed of the air [m/s], > 0
 * @param length_m - length along the flow [m], > 0
 * @param air - properties at the film temperature
 * @returns heat transfer coefficient [W/m2K]
 * @validity Re up to 5e5
 * @source from memory: Incropera, DeWitt, Bergman & Lavine, chapter 7
 * @verified LOSS-04 blown plate
 */
export function blownPlate_W_m2K(speed_m_s: number, length_m: number, air: Air): number {
  const reynolds = (speed_m_s * length_m) / air.kinematicViscosity_m2_s;
  return (0.664 * Math.sqrt(reynolds) * Math.cbrt(air.prandtl) * air.conductivity_W_mK) / length_m;
}
