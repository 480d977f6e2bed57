import { inRange } from '../../in-range.ts';
import type { Warning } from '../../refusal.ts';
import { type Worked, work } from '../../worked/worked-formula.ts';
import { beltPressure_Pa, beltPressureRow } from '../bag-pressure.ts';
import { leakedBag_Pa, warmedBag_Pa } from './closed-bag.ts';
import { platePressures } from './plate-pressure.ts';
import { leakedBagRow, squeezePressureRow, warmedBagRow } from './sharing-formulas.ts';

/** A stiff plate between the bag and what carries it. */
export interface StiffPlate {
  readonly beltThickness_m: number;
  readonly beltModulus_MPa: number;
  readonly stripsThickness_m: number;
  readonly stripsModulus_MPa: number;
}

export interface PressureInput {
  readonly gaugePressure_Pa: number;
  readonly bagWidth_m: number;
  readonly beltWidth_m: number;
  /** Both edge strips together; 0 for none. */
  readonly stripsWidth_m: number;
  /** Left out, belt and strips are taken as equally high and equally stiff. */
  readonly plate?: StiffPlate | undefined;
  /** For a bag that is shut off from its pump. */
  readonly shut?:
    | {
        readonly filled_degC: number;
        readonly now_degC: number;
        readonly after_s?: number;
        readonly leakTime_s?: number;
      }
    | undefined;
}

export interface Pressure {
  /** In the bag, after warming and leaking where it is shut. */
  readonly gauge_Pa: number;
  readonly belt_Pa: number;
  /** Null without strips. */
  readonly strips_Pa: number | null;
  /** Pressure on the belt over the gauge's. */
  readonly ratio: number | null;
  readonly worked: readonly Worked[];
  readonly warnings: readonly Warning[];
}

/**
 * From the gauge of the bag to the pressure on the belt, by whatever carries the bag's force.
 *
 * p_belt = p*w_bag/min(b + w_strips, w_bag); under a stiff plate sum of b*E*max(0, d - g)/h = p*w_bag;
 * shut bag: (p + p_atm)*T/T0 - p_atm, times exp(-t/tau).
 *
 * @param input - gauge pressure [Pa], widths, thicknesses [m], moduli [MPa], temperatures [degC], times [s]
 * @returns pressures in bag, on belt and on strips [Pa], ratio [1], worked formulas
 * @throws not-finite, out-of-range
 * @validity steady; the modulus of a warm belt is far below that of a cold one
 * @source derived: balance of forces; ideal gas
 * @verified SHARE-02 pressure under a plate with strips 0.1 mm too tall
 */
export function pressure(input: PressureInput): Pressure {
  const bag = bagPressure(input);
  const carried = input.plate ? underPlate(input, bag.gauge_Pa, input.plate) : spread(input, bag.gauge_Pa);
  const { belt_Pa } = carried;
  return {
    gauge_Pa: bag.gauge_Pa,
    belt_Pa,
    strips_Pa: input.stripsWidth_m > 0 ? carried.strips_Pa : null,
    ratio: bag.gauge_Pa > 0 ? belt_Pa / bag.gauge_Pa : null,
    worked: [...bag.worked, carried.worked],
    warnings:
      belt_Pa === 0 && bag.gauge_Pa > 0
        ? [{ code: 'strips-carry-all', path: 'plate.stripsThickness_m', data: {} }]
        : [],
  };
}

interface Carried {
  readonly belt_Pa: number;
  readonly strips_Pa: number;
  readonly worked: Worked;
}

function spread(input: PressureInput, gaugePressure_Pa: number): Carried {
  const { bagWidth_m: wb, beltWidth_m: b, stripsWidth_m: ws } = input;
  const belt_Pa = beltPressure_Pa({ ...input, gaugePressure_Pa });
  return { belt_Pa, strips_Pa: belt_Pa, worked: work(beltPressureRow, { pg: gaugePressure_Pa, wb, b, ws }) };
}

function underPlate(input: PressureInput, gauge_Pa: number, plate: StiffPlate): Carried {
  const width = { min: 0.001, max: 5, unit: 'm' };
  const wb = inRange(input.bagWidth_m, 'bagWidth_m', width);
  const belt = {
    width_m: inRange(input.beltWidth_m, 'beltWidth_m', width),
    height_m: height(plate, 'beltThickness_m'),
    modulus_MPa: modulus(plate, 'beltModulus_MPa'),
  };
  const strips = {
    width_m: inRange(input.stripsWidth_m, 'stripsWidth_m', { ...width, min: 0 }),
    height_m: height(plate, 'stripsThickness_m'),
    modulus_MPa: modulus(plate, 'stripsModulus_MPa'),
  };
  const { travel_m, belt_Pa, strips_Pa } = platePressures(gauge_Pa * wb, belt, strips);
  const g = strips.width_m > 0 ? Math.max(0, strips.height_m - belt.height_m) : 0;
  const worked = work(squeezePressureRow, { E: belt.modulus_MPa, d: travel_m, g, h: belt.height_m });
  return { belt_Pa, strips_Pa, worked };
}

function height(plate: StiffPlate, name: 'beltThickness_m' | 'stripsThickness_m'): number {
  return inRange(plate[name], `plate.${name}`, { min: 1e-4, max: 0.1, unit: 'm' });
}

function modulus(plate: StiffPlate, name: 'beltModulus_MPa' | 'stripsModulus_MPa'): number {
  return inRange(plate[name], `plate.${name}`, { min: 0.01, max: 1e5, unit: 'MPa' });
}

function bagPressure({ gaugePressure_Pa, shut }: PressureInput): { gauge_Pa: number; worked: Worked[] } {
  const p0 = inRange(gaugePressure_Pa, 'gaugePressure_Pa', { min: 0, max: 5e6, unit: 'Pa' });
  if (!shut) return { gauge_Pa: p0, worked: [] };
  const { after_s = 0, leakTime_s = Number.POSITIVE_INFINITY } = shut;
  const filled = { gaugePressure_Pa, temperature_degC: shut.filled_degC };
  const warmed = Math.max(0, warmedBag_Pa(filled, shut.now_degC));
  const inputs = { p0, dT: shut.now_degC - shut.filled_degC, T0: shut.filled_degC + 273.15 };
  const warm = work(warmedBagRow, inputs);
  if (leakTime_s === Number.POSITIVE_INFINITY) return { gauge_Pa: warmed, worked: [warm] };
  const gauge_Pa = leakedBag_Pa(warmed, after_s, leakTime_s);
  return { gauge_Pa, worked: [warm, work(leakedBagRow, { p0: warmed, t: after_s, tau: leakTime_s })] };
}
