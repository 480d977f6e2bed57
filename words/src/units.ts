/** Unit systems a reader may choose; records keep SI. */
export const unitSystems = ['metric', 'us'] as const;
export type UnitSystem = (typeof unitSystems)[number];

/** What kind of number is shown; fixes the unit a value comes in and the units it is shown in. */
export const quantityKinds = [
  'length',
  'shortLength',
  'angle',
  'ratio',
  'percent',
  'force',
  'forcePerWidth',
  'modulus',
  'stress',
  'stiffness',
  'bendingStiffness',
  'pressure',
  'temperature',
  'temperatureDifference',
  'speed',
  'frequency',
  'massPerLength',
  'massPerArea',
  'time',
  'minutes',
  'days',
  'revolutions',
  'count',
  'mass',
  'energy',
  'power',
  'current',
  'voltage',
  'resistance',
  'resistancePerLength',
  'viscosity',
  'area',
  'crossSection',
  'heatTransfer',
  'heatCapacityPerArea',
  'conductivity',
] as const;
export type QuantityKind = (typeof quantityKinds)[number];

/** True for a kind that has a unit here; a record may come from a newer version. */
export function isQuantityKind(kind: string): kind is QuantityKind {
  return quantityKinds.some((each) => each === kind);
}

/** How a kind is shown: shown = value * factor + offset, rounded to `digits` decimals. */
export interface Unit {
  /** Symbol, or the key of a word where languages differ (`unit.` in front). */
  readonly symbol: string;
  readonly factor: number;
  readonly offset: number;
  readonly digits: number;
  /** Significant digits a small value keeps at least, beyond `digits` if need be. */
  readonly significant: number;
}

const unit = (symbol: string, factor: number, digits: number, offset = 0): Unit => ({
  symbol,
  factor,
  offset,
  digits,
  significant: 1,
});
/** For kinds whose values may be small against their usual size: friction 0.025 stays 0.025. */
const fine = (symbol: string, factor: number, digits: number): Unit => ({
  ...unit(symbol, factor, digits),
  significant: 2,
});

// Exact by definition: NIST SP 811 (2008), appendix B.
const inch_m = 0.0254;
const foot_m = 0.3048;
const pound_kg = 0.45359237;
const poundForce_N = pound_kg * 9.80665;
const psi_Pa = poundForce_N / inch_m ** 2;
const btu_J = 1055.05585262;
/** Btu per hour, square foot and degree Fahrenheit. */
const btuTransfer_W_m2K = btu_J / (3600 * foot_m ** 2 * (5 / 9));

const both = (row: Unit): Readonly<Record<UnitSystem, Unit>> => ({ metric: row, us: row });

/**
 * One row a kind: the unit per system, exact factors from the unit inside, and decimals that match what
 * a technician can read: a tape to 0.5 mm (0.02 in), a gauge to 0.1 bar (1.5 psi), a display to 1 degree.
 */
export const unitTable: Readonly<Record<QuantityKind, Readonly<Record<UnitSystem, Unit>>>> = {
  length: { metric: unit('mm', 1000, 0), us: unit('in', 1 / inch_m, 2) },
  shortLength: { metric: unit('mm', 1000, 1), us: unit('in', 1 / inch_m, 3) },
  angle: both(unit('°', 180 / Math.PI, 1)),
  ratio: both(fine('', 1, 2)),
  percent: both(unit('%', 100, 2)),
  force: { metric: fine('N', 1, 0), us: fine('lbf', 1 / poundForce_N, 0) },
  forcePerWidth: { metric: fine('N/mm', 1, 1), us: fine('lbf/in', (1000 * inch_m) / poundForce_N, 1) },
  modulus: {
    metric: unit('unit.modulus-metric', 1, 1),
    us: unit('unit.modulus-us', (1000 * inch_m) / poundForce_N, 1),
  },
  stress: { metric: fine('MPa', 1, 2), us: fine('psi', 1e6 / psi_Pa, 0) },
  stiffness: { metric: unit('N', 1, 0), us: unit('lbf', 1 / poundForce_N, 0) },
  bendingStiffness: { metric: fine('N·m²', 1, 3), us: fine('lbf·in²', 1 / (poundForce_N * inch_m ** 2), 1) },
  pressure: { metric: unit('bar', 1e-5, 1), us: unit('psi', 1 / psi_Pa, 0) },
  temperature: { metric: unit('°C', 1, 0), us: unit('°F', 1.8, 0, 32) },
  temperatureDifference: { metric: unit('K', 1, 0), us: unit('°F', 1.8, 0) },
  speed: { metric: fine('m/s', 1, 2), us: fine('ft/min', 60 / foot_m, 0) },
  frequency: both(unit('Hz', 1, 1)),
  massPerLength: { metric: fine('kg/m', 1, 2), us: fine('lb/ft', foot_m / pound_kg, 2) },
  massPerArea: { metric: fine('kg/m²', 1, 1), us: fine('lb/ft²', foot_m ** 2 / pound_kg, 2) },
  time: both(unit('s', 1, 0)),
  minutes: both(unit('min', 1 / 60, 0)),
  days: both(unit('unit.days', 1, 0)),
  revolutions: both(unit('unit.revolutions', 1, 0)),
  count: both(unit('', 1, 0)),
  mass: { metric: unit('kg', 1, 1), us: unit('lb', 1 / pound_kg, 1) },
  energy: both(unit('Wh', 1 / 3600, 0)),
  power: both(unit('W', 1, 0)),
  current: both(unit('A', 1, 1)),
  voltage: both(unit('V', 1, 0)),
  resistance: both(unit('Ω', 1, 2)),
  resistancePerLength: { metric: fine('Ω/km', 1000, 2), us: fine('Ω/kft', 1000 * foot_m, 2) },
  viscosity: both(fine('Pa·s', 1, 0)),
  crossSection: both(unit('mm²', 1e6, 1)),
  heatTransfer: { metric: fine('W/m²K', 1, 0), us: fine('Btu/h·ft²·°F', 1 / btuTransfer_W_m2K, 1) },
  heatCapacityPerArea: both(fine('kJ/m²K', 1e-3, 1)),
  conductivity: { metric: fine('W/mK', 1, 2), us: fine('Btu·in/h·ft²·°F', 1 / (btuTransfer_W_m2K * inch_m), 1) },
  area: { metric: unit('cm²', 1e4, 1), us: unit('in²', 1 / inch_m ** 2, 1) },
};
