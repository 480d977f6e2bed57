export const languages = ['en', 'de', 'es'] as const;
export type Language = (typeof languages)[number];
export const unitSystems = ['metric', 'us'] as const;
export type UnitSystem = (typeof unitSystems)[number];

/** A number with its unit, formatted for one reader: `{ value: "64 302", unit: "mm" }`. */
export interface Shown {
  readonly value: string;
  readonly unit: string;
}
