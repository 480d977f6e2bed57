import { inRange } from '../in-range.ts';

/** What the fusion of a belt's cover depends on. Names and units are public. */
export interface FusionParameters {
  /** Temperature at which half of the hard segments are molten. */
  readonly meltCentre_degC: number;
  readonly meltWidth_K: number;
  /** Time for two faces in contact to become one at 180 degC, fully molten. */
  readonly weldingTime_s: number;
  readonly weldingEnergy_J_mol: number;
  readonly viscosityAt190_Pa_s: number;
  readonly flowEnergy_J_mol: number;
  /** Width of the gap that the die leaves between two flanks. */
  readonly gap_m: number;
  /** How deep the melt must run into that gap. */
  readonly fillNeeded_m: number;
  /** Chain scission of a dry melt at 210 degC. */
  readonly scissionAt210_1_s: number;
  readonly scissionEnergy_J_mol: number;
  /** Factor on the fluidity, fitted to trial splices. */
  readonly fluidity: number;
  /** Water in the belt by mass; undefined where nobody knows. */
  readonly moisture_share?: number | undefined;
}

/** Those with a default: all but the moisture, which is asked. */
export type FusionParameter = Exclude<keyof FusionParameters, 'moisture_share'>;

/** A parameter's default, the range in which it may be set, what is usual, and where it comes from. */
export interface ParameterRow {
  readonly value: number;
  readonly min: number;
  readonly max: number;
  readonly usual: readonly [low: number, high: number];
  readonly unit: string;
  readonly source: string;
}

const prior = 'engineering prior, no source; calibrate with trial splices';

/** Every parameter with default, limits and source. None of them was measured on a belt splice. */
export const fusionParameterRows: Readonly<Record<FusionParameter, ParameterRow>> = {
  meltCentre_degC: {
    value: 165,
    min: 80,
    max: 260,
    usual: [150, 185],
    unit: 'degC',
    source: 'prior within the melting range 135-220 degC of public material data (from memory); take the DSC peak',
  },
  meltWidth_K: { value: 7, min: 0.5, max: 30, usual: [6, 8], unit: 'K', source: prior },
  weldingTime_s: { value: 20, min: 0.01, max: 1e4, usual: [4, 100], unit: 's', source: prior },
  weldingEnergy_J_mol: {
    value: 100e3,
    min: 1e3,
    max: 400e3,
    usual: [70e3, 130e3],
    unit: 'J/mol',
    source: prior,
  },
  viscosityAt190_Pa_s: {
    value: 5000,
    min: 1,
    max: 1e7,
    usual: [2e3, 2e4],
    unit: 'Pa*s',
    source: 'from memory, 85A-95A grades; seed it from a melt-flow rate',
  },
  flowEnergy_J_mol: {
    value: 100e3,
    min: 1e3,
    max: 400e3,
    usual: [43e3, 131e3],
    unit: 'J/mol',
    source:
      'between 131 kJ/mol (Hentschel & Muenstedt, Polymer 42(7) 2001, 3195-3203, abstract) and 43 kJ/mol of a homogeneous melt (from memory)',
  },
  gap_m: {
    value: 1e-4,
    min: 1e-6,
    max: 5e-3,
    usual: [0.05e-3, 0.2e-3],
    unit: 'm',
    source: 'common practice, no source: gap that a punching die leaves',
  },
  fillNeeded_m: {
    value: 1.5e-3,
    min: 1e-5,
    max: 0.1,
    usual: [1e-3, 2e-3],
    unit: 'm',
    source: prior,
  },
  scissionAt210_1_s: {
    value: 4.24e-4,
    min: 0,
    max: 1,
    usual: [1e-4, 2e-3],
    unit: '1/s',
    source:
      'fitted to Heneczkowski, Polimery 1993 no. 3, 120, dry, read with a sign corrected; DOI 10.14314/polimery.1993.120',
  },
  scissionEnergy_J_mol: {
    value: 150e3,
    min: 1e3,
    max: 400e3,
    usual: [130e3, 230e3],
    unit: 'J/mol',
    source: 'Fambri, Pegoretti, Gavazza & Penati, J. Appl. Polym. Sci. 81 (2001) 1216-1225: 130-230 kJ/mol',
  },
  fluidity: { value: 1, min: 1e-3, max: 1e3, usual: [0.3, 3], unit: '1', source: prior },
};

/**
 * Parameters of fusion with the defaults filled in, each checked against its limits.
 *
 * @param given - those that are known [units in their names]; the others take their default
 * @param path - where they stand in the input, like `fusion`
 * @returns all parameters [units in their names]
 * @throws not-finite, out-of-range
 * @source defaults: see each row of `fusionParameterRows`
 */
export function fusionParameters(given: Partial<FusionParameters> = {}, path = 'fusion'): FusionParameters {
  const known = (name: FusionParameter): number => {
    const { value, min, max, unit } = fusionParameterRows[name];
    return inRange(given[name] ?? value, `${path}.${name}`, { min, max, unit });
  };
  const water = given.moisture_share;
  if (water !== undefined) inRange(water, `${path}.moisture_share`, { min: 0, max: 0.05, unit: '1' });
  return {
    meltCentre_degC: known('meltCentre_degC'),
    meltWidth_K: known('meltWidth_K'),
    weldingTime_s: known('weldingTime_s'),
    weldingEnergy_J_mol: known('weldingEnergy_J_mol'),
    viscosityAt190_Pa_s: known('viscosityAt190_Pa_s'),
    flowEnergy_J_mol: known('flowEnergy_J_mol'),
    gap_m: known('gap_m'),
    fillNeeded_m: known('fillNeeded_m'),
    scissionAt210_1_s: known('scissionAt210_1_s'),
    scissionEnergy_J_mol: known('scissionEnergy_J_mol'),
    fluidity: known('fluidity'),
    moisture_share: water,
  };
}
