/** A size of copper conductor and its resistance. */
export interface Conductor {
  readonly id: string;
  readonly resistance_ohm_km: number;
  /** Temperature at which the source states it. */
  readonly at_degC: number;
  readonly source: string;
}

const metric = 'IEC 60228, class 5, plain copper, largest resistance at 20 degC';
const american = 'NEC chapter 9 table 8, stranded uncoated copper at 75 degC (from memory)';
const kilofoot_km = 0.3048;

function awg(size: number, ohm_kft: number): Conductor {
  return { id: `${size} AWG`, resistance_ohm_km: ohm_kft / kilofoot_km, at_degC: 75, source: american };
}

function square(section_mm2: number, resistance_ohm_km: number): Conductor {
  return { id: `${section_mm2} mm2`, resistance_ohm_km, at_degC: 20, source: metric };
}

/** Flexible leads as they are sold; the printed resistances are upper limits. */
export const conductors: readonly Conductor[] = [
  square(0.75, 26),
  square(1, 19.5),
  square(1.5, 13.3),
  square(2.5, 7.98),
  square(4, 4.95),
  square(6, 3.3),
  square(10, 1.91),
  awg(14, 3.14),
  awg(12, 1.98),
  awg(10, 1.24),
  awg(8, 0.778),
];

/**
 * Resistance of a copper conductor at 20 degC from the one stated at another temperature.
 * r20 = r/(1 + 0.00393*(T - 20)).
 *
 * @param conductor - resistance [ohm/km] and the temperature at which it is stated [degC]
 * @returns resistance of one conductor at 20 degC [ohm/km]
 * @validity copper
 * @source temperature coefficient from memory
 * @verified SUP-04 14 AWG at 20 degC
 */
export function resistanceAt20_ohm_km(conductor: Pick<Conductor, 'resistance_ohm_km' | 'at_degC'>): number {
  return conductor.resistance_ohm_km / (1 + 0.00393 * (conductor.at_degC - 20));
}
