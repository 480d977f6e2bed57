import type { PowerLaw } from './slot-fill.ts';

/** A layer of melt pressed between two plates under constant load. */
export interface SqueezedLayer {
  /** Distance of the plates at the start. */
  readonly thickness_m: number;
  /** Force over area, constant. */
  readonly pressure_Pa: number;
  readonly time_s: number;
}

/**
 * Thickness left of a disc of melt pressed between plates. 1/H^2 = 1/H0^2 + 4*p*t/(3*eta*R^2).
 *
 * @param layer - thickness [m], pressure [Pa], time [s]
 * @param radius_m - radius R of the disc [m], > 0
 * @param viscosity_Pa_s - viscosity [Pa*s], > 0
 * @returns thickness left [m]
 * @validity Newtonian, R well above H; no slip at the plates
 * @source Stefan 1874 (from memory), derived anew
 * @verified FUSE-12 disc
 */
export function squeezedDisc_m(layer: SqueezedLayer, radius_m: number, viscosity_Pa_s: number): number {
  const { thickness_m, pressure_Pa, time_s } = layer;
  return (thickness_m ** -2 + (4 * pressure_Pa * time_s) / (3 * viscosity_Pa_s * radius_m ** 2)) ** -0.5;
}

/**
 * Thickness left of a long strip of melt that flows across its width. 1/H^2 = 1/H0^2 + 2*p*t/(eta*w^2).
 *
 * @param layer - thickness [m], pressure [Pa], time [s]
 * @param width_m - width w of the strip [m], > 0
 * @param viscosity_Pa_s - viscosity [Pa*s], > 0
 * @returns thickness left [m]
 * @validity Newtonian, w well above H, strip much longer than wide
 * @source derived: lubrication flow
 * @verified FUSE-12 strip
 */
export function squeezedStrip_m(layer: SqueezedLayer, width_m: number, viscosity_Pa_s: number): number {
  const { thickness_m, pressure_Pa, time_s } = layer;
  return (thickness_m ** -2 + (2 * pressure_Pa * time_s) / (viscosity_Pa_s * width_m ** 2)) ** -0.5;
}

/**
 * Thickness left of a disc of shear-thinning melt.
 * H^(-(n+1)/n) = H0^(-(n+1)/n) + ((n+1)/n)*K*t, K = [p*pi*R^2*(n+3)/(2*pi*m*R^(n+3))]^(1/n)*n/(2n+1).
 *
 * @param layer - thickness [m], pressure [Pa], time [s]
 * @param radius_m - radius R of the disc [m], > 0
 * @param melt - consistency m [Pa*s^n], exponent n [1], both > 0
 * @returns thickness left [m]
 * @validity as squeezedDisc_m
 * @source Scott 1931 (from memory), derived anew
 * @verified FUSE-12 disc with a power law
 */
export function squeezedDiscPowerLaw_m(layer: SqueezedLayer, radius_m: number, melt: PowerLaw): number {
  const { consistency: m, exponent: n } = melt;
  const drive = (layer.pressure_Pa * (n + 3)) / (2 * m * radius_m ** (n + 1));
  return squeezed_m(layer, n, (drive ** (1 / n) * n) / (2 * n + 1));
}

/**
 * Thickness left of a long strip of shear-thinning melt.
 * H^(-(n+1)/n) = H0^(-(n+1)/n) + ((n+1)/n)*K*t, K = [p*w*(n+2)/(4m*(w/2)^(n+2))]^(1/n)*n/(2*(2n+1)).
 *
 * @param layer - thickness [m], pressure [Pa], time [s]
 * @param width_m - width w of the strip [m], > 0
 * @param melt - consistency m [Pa*s^n], exponent n [1], both > 0
 * @returns thickness left [m]
 * @validity as squeezedStrip_m
 * @source Scott 1931 (from memory), derived anew
 * @verified FUSE-12 strip with a power law
 */
export function squeezedStripPowerLaw_m(layer: SqueezedLayer, width_m: number, melt: PowerLaw): number {
  const { consistency: m, exponent: n } = melt;
  const drive = (layer.pressure_Pa * width_m * (n + 2)) / (4 * m * (width_m / 2) ** (n + 2));
  return squeezed_m(layer, n, (drive ** (1 / n) * n) / (2 * (2 * n + 1)));
}

function squeezed_m({ thickness_m, time_s }: SqueezedLayer, n: number, rate: number): number {
  const power = (n + 1) / n;
  return (thickness_m ** -power + power * rate * time_s) ** (-1 / power);
}
