import type { FieldKind } from '../things/field.ts';

/** A unit a column may carry: SI value = (value + shift) x times / over. Factors are exact by definition. */
export interface Unit {
  /** As it stands at the end of a heading: `ft_min`. */
  readonly unit: string;
  readonly times: number;
  readonly over: number;
  readonly shift?: number;
}

export type UnitKind = Exclude<FieldKind, 'plain'>;

const unit = (name: string, times = 1, over = 1, shift = 0): Unit => ({ unit: name, times, over, shift });

// 1 in = 0.0254 m, 1 lb = 0.45359237 kg, 1 lbf = 4.4482216152605 N: exact (NIST SP 811, appendix B).
const pound_kg = 0.45359237;
const poundForce_N = 4.4482216152605;
// International Table Btu: exact.
const btu_J = 1055.05585262;

/** The units of each kind; the first is the one inside. Source: NIST SP 811 (2008), appendix B.8. */
export const units: Readonly<Record<UnitKind, readonly Unit[]>> = {
  length: [unit('m'), unit('cm', 1, 100), unit('mm', 1, 1000), unit('in', 254, 10_000), unit('ft', 3048, 10_000)],
  percent: [unit('ratio'), unit('pct', 1, 100)],
  force: [unit('N'), unit('kN', 1000), unit('lbf', poundForce_N)],
  modulus: [unit('N_mm_pct'), unit('lbf_in_pct', poundForce_N, 25.4)],
  forcePerWidth: [unit('N_mm'), unit('kN_m'), unit('lbf_in', poundForce_N, 25.4)],
  massPerArea: [unit('kg_m2'), unit('g_m2', 1, 1000), unit('lb_ft2', pound_kg, 0.09290304)],
  massPerLength: [unit('kg_m'), unit('lb_ft', pound_kg, 0.3048)],
  speed: [unit('m_s'), unit('m_min', 1, 60), unit('mm_s', 1, 1000), unit('ft_s', 0.3048), unit('ft_min', 0.3048, 60)],
  temperature: [unit('degC'), unit('degF', 5, 9, -32), unit('K', 1, 1, -273.15)],
  pressure: [
    unit('Pa'),
    unit('kPa', 1000),
    unit('MPa', 1_000_000),
    unit('mbar', 100),
    unit('bar', 100_000),
    unit('psi', poundForce_N, 0.00064516),
  ],
  time: [unit('s'), unit('min', 60), unit('h', 3600)],
  voltage: [unit('V'), unit('mV', 1, 1000)],
  power: [unit('W'), unit('kW', 1000)],
  current: [unit('A'), unit('mA', 1, 1000)],
  resistance: [unit('ohm'), unit('mohm', 1, 1000)],
  crossSection: [unit('m2'), unit('mm2', 1, 1_000_000)],
  heatTransfer: [unit('W_m2K'), unit('Btu_hft2F', btu_J * 9, 3600 * 0.09290304 * 5)],
  heatCapacityPerArea: [unit('J_m2K'), unit('kJ_m2K', 1000)],
  conductivity: [unit('W_mK'), unit('Btu_in_hft2F', btu_J * 0.0254 * 9, 3600 * 0.09290304 * 5)],
};

/**
 * The number inside for a number as written in a unit.
 *
 * @param value - as written
 * @param from - the unit it is written in
 * @returns the value in the first unit of the kind
 */
export function toInside(value: number, from: Unit): number {
  return ((value + (from.shift ?? 0)) * from.times) / from.over;
}

/**
 * A number inside as a person would write it in a unit; the inverse of `toInside`.
 *
 * @param value - in the first unit of the kind
 * @param to - the unit to write it in
 * @returns the value in that unit
 */
export function fromInside(value: number, to: Unit): number {
  return (value * to.over) / to.times - (to.shift ?? 0);
}
