import { inRange } from '../../in-range.ts';
import type { EndParts } from '../march/end.ts';
import { endCurve } from '../march/slab.ts';
import type { HeatCurve } from '../stack/enthalpy.ts';

/** What is done to a face of a wall. */
export type Boundary =
  | { readonly kind: 'fixed'; readonly temperature_degC: number }
  | { readonly kind: 'convection'; readonly coefficient_W_m2K: number; readonly fluid_degC: number }
  | { readonly kind: 'flux'; readonly flux_W_m2: number }
  | {
      /** A plate of one temperature, heated and losing heat. */
      readonly kind: 'platen';
      readonly capacity_J_m2K: number;
      readonly capacitySlope_1_K?: number | undefined;
      readonly flux_W_m2: number;
      readonly start_degC: number;
      readonly contact_W_m2K?: number | null | undefined;
      readonly loss_W_m2K?: number | undefined;
      readonly ambient_degC?: number | undefined;
    };

const temperature = { min: -200, max: 2000, unit: 'degC' };
const coefficient = { min: 0, max: 1e9, unit: 'W/(m2*K)' };
const flux = { min: -1e9, max: 1e9, unit: 'W/m2' };
const capacity = { min: 0, max: 1e9, unit: 'J/(m2*K)' };

const bare: EndParts = {
  held: false,
  capacity_J_m2K: 0,
  capacitySlope_1_K: 0,
  loss_W_m2K: 0,
  ambient_degC: 0,
  flux_W_m2: 0,
  start_degC: 0,
  set_degC: 0,
  gain_1_K: 0,
  integralRate_1_Ks: 0,
  trackingRate_1_s: 0,
  sensorLag_s: 1,
};

/**
 * End of a slab for what is done to a face; a bare surface starts in balance with the cell behind it.
 *
 * @param boundary - temperature, convection, flux or platen
 * @param path - where it stands in the input
 * @param cell_degC - temperature of the cell behind the face [degC]
 * @param half_m2K_W - resistance of that cell's half [m2*K/W]
 * @returns end of a slab
 * @throws not-finite, out-of-range
 * @source derived: balance of heat at a surface without mass
 */
export function boundaryEnd(boundary: Boundary, path: string, cell_degC: number, half_m2K_W: number): EndParts {
  switch (boundary.kind) {
    case 'fixed': {
      const start_degC = inRange(boundary.temperature_degC, `${path}.temperature_degC`, temperature);
      return { ...bare, held: true, start_degC };
    }
    case 'convection': {
      const loss_W_m2K = inRange(boundary.coefficient_W_m2K, `${path}.coefficient_W_m2K`, coefficient);
      const ambient_degC = inRange(boundary.fluid_degC, `${path}.fluid_degC`, temperature);
      const start_degC = (cell_degC + half_m2K_W * loss_W_m2K * ambient_degC) / (1 + half_m2K_W * loss_W_m2K);
      return { ...bare, loss_W_m2K, ambient_degC, start_degC };
    }
    case 'flux': {
      const flux_W_m2 = inRange(boundary.flux_W_m2, `${path}.flux_W_m2`, flux);
      return { ...bare, flux_W_m2, start_degC: cell_degC + half_m2K_W * flux_W_m2 };
    }
    case 'platen':
      return {
        ...bare,
        capacity_J_m2K: inRange(boundary.capacity_J_m2K, `${path}.capacity_J_m2K`, capacity),
        capacitySlope_1_K: boundary.capacitySlope_1_K ?? 0,
        flux_W_m2: inRange(boundary.flux_W_m2, `${path}.flux_W_m2`, flux),
        start_degC: inRange(boundary.start_degC, `${path}.start_degC`, temperature),
        loss_W_m2K: inRange(boundary.loss_W_m2K ?? 0, `${path}.loss_W_m2K`, coefficient),
        ambient_degC: inRange(boundary.ambient_degC ?? 0, `${path}.ambient_degC`, temperature),
      };
  }
}

/**
 * Heat capacity of what is done to a face, as a curve of 1 kg/m2.
 *
 * @param boundary - temperature, convection, flux or platen
 * @returns curve; none but a platen and a fixed temperature have any
 * @source derived: plain look-up
 */
export function boundaryCurve(boundary: Boundary): HeatCurve {
  if (boundary.kind !== 'platen') return endCurve({ ...bare, held: boundary.kind === 'fixed' });
  const { capacity_J_m2K, capacitySlope_1_K = 0 } = boundary;
  return endCurve({ held: false, capacity_J_m2K, capacitySlope_1_K });
}
