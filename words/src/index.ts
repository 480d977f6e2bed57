export { isLanguage, type Language, languages } from './language.ts';
export type { MessageKey } from './messages/index.ts';
export type { Shown, ShowOptions } from './shown.ts';
export { type QuantityKind, quantityKinds, type UnitSystem, unitSystems } from './units.ts';
export { joined, type Params, type Voice, voice } from './voice.ts';
