/** Ridges of a rough face: their height and the gaps between them against their width. */
export interface Roughness {
  readonly heightOverWidth: number;
  readonly gapOverWidth: number;
}

/**
 * Time until the ridges of a rough face are pressed flat, so that two faces touch all over.
 * D = (1/w)*[1 + 5*w*(a0/b0)^2*p*t/eta]^(1/5) = 1, w = 1 + w0/b0.
 *
 * @param rough - height a0/b0 and gap w0/b0 of the ridges over their width [1], > 0
 * @param pressure_Pa - pressure p [Pa], > 0
 * @param viscosity_Pa_s - viscosity eta [Pa*s], > 0
 * @returns time [s]
 * @validity constant pressure and temperature; ridges of one size
 * @source Lee & Springer, J. Compos. Mater. 21 (1987) 1017, as given by Mazumdar, Composites Manufacturing, CRC 2002, eq. 7.60 to 7.77
 * @verified FUSE-19 contact of flanks at 1e4 Pa*s
 */
export function contactTime_s(rough: Roughness, pressure_Pa: number, viscosity_Pa_s: number): number {
  const w = 1 + rough.gapOverWidth;
  return ((w ** 5 - 1) * viscosity_Pa_s) / (5 * w * rough.heightOverWidth ** 2 * pressure_Pa);
}
