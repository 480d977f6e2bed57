import type { Today } from '@loopwright/jobs';
import type { Voice } from '@loopwright/words';
import { Stop } from './stop.ts';

interface Part {
  readonly unit: string;
  readonly field: keyof Today;
  /** From what is typed to the unit inside. */
  readonly factor: number;
  readonly min: number;
  readonly max: number;
}

const parts: readonly Part[] = [
  { unit: 'V', field: 'volts_V', factor: 1, min: 90, max: 500 },
  { unit: 'A', field: 'breaker_A', factor: 1, min: 1, max: 125 },
  { unit: 'm', field: 'lead_m', factor: 1, min: 0, max: 500 },
  { unit: 'mm2', field: 'leadSection_m2', factor: 1e-6, min: 0.2, max: 50 },
];

const number = /^(-?\d+(?:\.\d+)?)\s*([a-z]+2?)$/i;

/** Outlet and air of today from `--outlet 230V,16A,30m,1.5mm2` and `--air 5`, any part of it. */
export function todayAsked({ outlet, air }: { readonly outlet?: string; readonly air?: string }, speech: Voice): Today {
  const said = (outlet ?? '').split(',').filter((part) => part.trim() !== '');
  const entries = said.map((part) => partOf(part.trim(), outlet ?? '', speech));
  return { ...Object.fromEntries(entries), ...(air === undefined ? {} : { air_degC: airOf(air, speech) }) };
}

function partOf(typed: string, whole: string, speech: Voice): readonly [keyof Today, number] {
  const [, digits = '', unit = ''] = number.exec(typed.replace('²', '2')) ?? [];
  const part = parts.find((each) => each.unit.toLowerCase() === unit.toLowerCase());
  if (part === undefined) throw new Stop(speech.say('terminal.not-an-outlet', { value: whole }), 2);
  const value = Number(digits);
  if (value >= part.min && value <= part.max) return [part.field, value * part.factor];
  const allowed = `${part.min}–${part.max} ${part.unit}`;
  throw new Stop(speech.say('terminal.outlet-range', { value: typed, allowed }), 2);
}

function airOf(typed: string, speech: Voice): number {
  const value = /^-?\d+(\.\d+)?$/.test(typed.trim()) ? Number(typed) : Number.NaN;
  if (value >= -20 && value <= 60) return value;
  throw new Stop(speech.say('terminal.not-an-air', { value: typed }), 2);
}
