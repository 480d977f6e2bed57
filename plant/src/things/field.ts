import * as z from 'zod';
import { sources } from './source.ts';

// zod compiles validators with `Function` unless told not to; the page's content-security policy forbids that.
z.config({ jitless: true });

/** Quantity kinds a field of the plant may have. A column of a plant file may carry any unit of its kind. */
export type FieldKind =
  | 'length'
  | 'percent'
  | 'force'
  | 'modulus'
  | 'forcePerWidth'
  | 'massPerArea'
  | 'massPerLength'
  | 'speed'
  | 'temperature'
  | 'pressure'
  | 'time'
  | 'voltage'
  | 'power'
  | 'current'
  | 'resistance'
  | 'crossSection'
  | 'heatTransfer'
  | 'heatCapacityPerArea'
  | 'conductivity'
  | 'plain';

const quantity = (kind: FieldKind) => (low: number, high: number) => z.number().min(low).max(high).meta({ kind });

export const length_m = quantity('length');
export const percent = quantity('percent');
export const force_N = quantity('force');
export const modulus_N_mm_pct = quantity('modulus');
export const forcePerWidth_N_mm = quantity('forcePerWidth');
export const massPerArea_kg_m2 = quantity('massPerArea');
export const massPerLength_kg_m = quantity('massPerLength');
export const speed_m_s = quantity('speed');
export const temperature_degC = quantity('temperature');
export const pressure_Pa = quantity('pressure');
export const time_s = quantity('time');
export const voltage_V = quantity('voltage');
export const power_W = quantity('power');
export const current_A = quantity('current');
export const resistance_ohm = quantity('resistance');
export const crossSection_m2 = quantity('crossSection');
export const heatTransfer_W_m2K = quantity('heatTransfer');
export const heatCapacityPerArea_J_m2K = quantity('heatCapacityPerArea');
export const conductivity_W_mK = quantity('conductivity');
export const plain = quantity('plain');

/** What is computed with while nobody has said a number: an example with its range. Never stored. */
export interface Prior {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** A number that may stay open; `prior` is what forms and computations take in its place. */
export const open = (type: z.ZodNumber, prior: Prior): z.ZodOptional<z.ZodNumber> =>
  type.meta({ ...type.meta(), prior: prior.value }).optional();

/** An identifier a person types: letters, digits, `-`, `_`, `.`; no spaces, 1 to 40 characters. */
export const id = z.string().regex(/^[\p{L}\p{N}][\p{L}\p{N}._-]{0,39}$/u);
/** A short text a person reads. */
export const text = z.string().max(300);
/** A calendar day, `2026-03-02`. */
export const day = z.iso.date();
/** A moment in UTC, `2026-11-25T02:04:00Z`. */
export const moment = z.iso.datetime();

/** Every thing says where its numbers come from; single fields may differ. */
export const provenance = {
  source: z.enum(sources),
  sources: z.record(z.string(), z.enum(sources)).optional(),
  note: text.optional(),
};
