/**
 * What kind of number a symbol stands for. The kind fixes the unit inside (see `kindUnit`) and
 * lets a shell show it in the reader's own units.
 */
export type Kind =
  | 'length' // m
  | 'shortLength' // m, shown to a tenth of a millimetre
  | 'angle' // rad
  | 'ratio' // 1
  | 'percent' // 1, shown in %
  | 'force' // N
  | 'forcePerWidth' // N/mm
  | 'modulus' // N/mm per 1 % (k1%)
  | 'stress' // MPa
  | 'stiffness' // N (EA)
  | 'bendingStiffness' // N m2
  | 'pressure' // Pa
  | 'temperature' // degC
  | 'temperatureDifference' // K
  | 'voltage' // V
  | 'current' // A
  | 'resistance' // ohm
  | 'resistancePerLength' // ohm/m
  | 'viscosity' // Pa*s
  | 'power' // W
  | 'energy' // J
  | 'heatTransfer' // W/(m2*K)
  | 'heatCapacityPerArea' // J/(m2*K)
  | 'conductivity' // W/(m*K)
  | 'crossSection' // m2
  | 'speed' // m/s
  | 'frequency' // Hz
  | 'massPerLength' // kg/m
  | 'massPerArea' // kg/m2
  | 'time' // s
  | 'days' // 24 h
  | 'revolutions' // 1
  | 'count'; // 1

/** The unit in which a symbol of each kind is computed. */
export const kindUnit: Readonly<Record<Kind, string>> = {
  length: 'm',
  shortLength: 'm',
  angle: 'rad',
  ratio: '1',
  percent: '1',
  force: 'N',
  forcePerWidth: 'N/mm',
  modulus: 'N/mm/%',
  stress: 'MPa',
  stiffness: 'N',
  bendingStiffness: 'N*m2',
  pressure: 'Pa',
  temperature: 'degC',
  temperatureDifference: 'K',
  voltage: 'V',
  current: 'A',
  resistance: 'ohm',
  resistancePerLength: 'ohm/m',
  viscosity: 'Pa*s',
  power: 'W',
  energy: 'J',
  heatTransfer: 'W/(m2*K)',
  heatCapacityPerArea: 'J/(m2*K)',
  conductivity: 'W/(m*K)',
  crossSection: 'm2',
  speed: 'm/s',
  frequency: 'Hz',
  massPerLength: 'kg/m',
  massPerArea: 'kg/m2',
  time: 's',
  days: 'd',
  revolutions: '1',
  count: '1',
};

/** What a symbol of a formula stands for. `meaning` is a key that every language has a word for. */
export interface FormulaSymbol {
  readonly kind: Kind;
  readonly meaning: string;
}

/** A published or derived check of a row: these inputs must give this result. */
export interface FormulaExample<S extends string = string> {
  readonly inputs: Readonly<Record<S, number>>;
  readonly expected: number;
  readonly tolerance: number;
  readonly evidence: 'printed' | 'derived' | 'independent' | 'practice';
  readonly source: string;
}

/**
 * One closed form that a person sees: one row computes the value, shows itself with the numbers in
 * place, fills the handbook page and is tested by its own examples. The expression is text, written
 * with the row's own symbols: `L0 = L / (1 + e)`.
 */
export interface WorkedFormula<S extends string = string> {
  /** Kebab-case, unique in the table. */
  readonly id: string;
  readonly expression: string;
  readonly result: FormulaSymbol & { readonly symbol: string };
  readonly symbols: Readonly<Record<S, FormulaSymbol>>;
  compute(inputs: Readonly<Record<S, number>>): number;
  /** Where the row holds, in the units of `kindUnit`. */
  readonly range: Readonly<Partial<Record<S, readonly [low: number, high: number]>>>;
  readonly source: string;
  readonly examples: readonly FormulaExample<S>[];
}

/** Keeps the symbols of a row as its type, so that a wrong symbol does not compile. */
export function workedFormula<S extends string>(row: WorkedFormula<S>): WorkedFormula<S> {
  return row;
}

/** A computed number with its reason: which row, from which inputs. Plain data. */
export interface Worked {
  readonly formula: string;
  readonly inputs: Readonly<Record<string, number>>;
  readonly value: number;
}

/** Computes a row and keeps the reason with the value. */
export function work<S extends string>(row: WorkedFormula<S>, inputs: Readonly<Record<S, number>>): Worked {
  return { formula: row.id, inputs, value: row.compute(inputs) };
}
