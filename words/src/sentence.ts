import type { MessageKey } from './messages/index.ts';
import { plainNumber } from './plain-number.ts';
import type { Params, Voice } from './speak.ts';
import { type QuantityKind, quantityKinds } from './units.ts';

/** What a refusal, a warning or a problem carries; any object of this shape will do. */
export type SentenceData = Readonly<Record<string, string | number | boolean | null>>;

/** A refusal or an engine's warning, as it comes. */
export interface Refused {
  readonly code: string;
  readonly path: string;
  readonly data: SentenceData;
}

const keyIn = {
  refusal: (code: string) => `refusal.${code}`,
  note: (code: string) => `note.${code}`,
  problem: (code: string) => `problem.${code}`,
  warning: (code: string) => `warning.${code}`,
} as const;
type Family = keyof typeof keyIn;
const longestEcho = 120;

/** The sentence for a refusal: where, what, allowed, next step. An unknown code still says where and with which values. */
export function sentence(voice: Voice, refused: Refused): string {
  const { code, path, data } = refused;
  return withPlace(path, sentenceWithoutPlace(voice, code, { ...data, ...surveyWords(voice, path, data) }));
}

// A refused survey speaks in the words of its own question, and of its layout.
export function surveyWords(voice: Voice, path: string, data: SentenceData): SentenceData {
  const question = `survey.${path.replace(/_[a-z]+$/, '')}`;
  return voice.has(question) ? { question: voice.say(question), ...layoutWord(voice, data) } : {};
}

function layoutWord(voice: Voice, { layout }: SentenceData): SentenceData {
  const key = `layout.${String(layout)}`;
  return voice.has(key) ? { layout: voice.say(key) } : {};
}

/** A sentence behind its place; without a place it starts with a capital. */
export function withPlace(place: string, said: string): string {
  return place === '' ? said.charAt(0).toLocaleUpperCase('en') + said.slice(1) : `${place}: ${said}`;
}

/** The sentence of a code alone, looked for as a refusal, a note, a problem of a folder, a warning of a card. */
export function sentenceWithoutPlace(
  voice: Voice,
  code: string,
  data: SentenceData,
  first: Family = 'refusal',
): string {
  const params = sentenceParams(voice, data);
  const keys = [keyIn[first], ...Object.values(keyIn)].map((make) => make(code));
  const known = keys.find((key) => voice.has(key));
  if (known !== undefined && voice.has(known)) return voice.say(known, params);
  return voice.say('refusal.unknown', { details: details(code, params) });
}

function details(code: string, params: Params): string {
  const values = Object.entries(params).filter(([name]) => name !== 'unit' && name !== 'kind');
  return [code, ...values.map(([name, value]) => `${name} ${String(value)}`)].join(', ');
}

/** The values of a sentence as text: numbers with their unit, long texts cut, `allowed` and `reason` made. */
function sentenceParams(voice: Voice, data: SentenceData): Params {
  const write = numberWriter(voice, data);
  const params: Record<string, string> = {};
  for (const [name, value] of Object.entries(data)) {
    if (value === null) continue;
    params[name] = typeof value === 'number' ? write(name, value) : echo(String(value));
  }
  const allowed = allowedText(voice, data, write);
  if (allowed !== undefined && params.allowed === undefined) params.allowed = allowed;
  if (typeof data.reason === 'string') params.reason = reasonText(voice, data.reason, data);
  return params;
}

const echo = (text: string) => (text.length > longestEcho ? `${text.slice(0, longestEcho)}…` : text);

// The reason lies deeper than what the person wrote, so its SI values stand in the reader's units.
function reasonText(voice: Voice, reason: string, data: SentenceData): string {
  const { reason: _, ...rest } = data;
  const kind = kindOfUnit[String(data.unit)];
  return withPlace('', sentenceWithoutPlace(voice, reason, kind === undefined ? rest : { ...rest, kind }));
}

type NumberWriter = (name: string, value: number) => string;

const withUnit = new Set(['value', 'min', 'max', 'reached']);

// `unit` is the unit in which the person wrote the number, so it is said back in that; `kind` says the value is SI.
function numberWriter(voice: Voice, data: SentenceData): NumberWriter {
  const kind = kindNamed(data.kind);
  const unit = typeof data.unit === 'string' ? unitText(voice, data.unit) : '';
  const digits = kind === undefined ? undefined : telling(voice, data, kind);
  return (name, value) => {
    const own = kindOfName(name) ?? (isMeasure(name) ? kind : undefined);
    if (own !== undefined) return voice.write(value, own, own === kind && digits !== undefined ? { digits } : {});
    const text = plainNumber(value, voice.language, tellsApart(voice, data) ? 6 : 15);
    if (withUnit.has(name) && unit !== '') return `${text}\u00a0${unit}`;
    return text;
  };
}

const measures = new Set(['value', 'min', 'max', 'reached', 'pitch', 'fingerLength', 'width', 'thickness', 'limit']);
const isMeasure = (name: string) => measures.has(name);

const kindOfUnit: Readonly<Record<string, QuantityKind>> = {
  m: 'shortLength',
  rad: 'angle',
  N: 'force',
  'm/s': 'speed',
};

const kindNamed = (name: unknown): QuantityKind | undefined => quantityKinds.find((kind) => kind === name);

const kindOfSuffix: readonly (readonly [suffix: string, kind: QuantityKind])[] = [
  ['_N_mm_pct', 'modulus'],
  ['_N_mm', 'forcePerWidth'],
  ['_kg_m2', 'massPerArea'],
  ['_kg_m', 'massPerLength'],
  ['_m_s', 'speed'],
  ['_m', 'shortLength'],
  ['_rad', 'angle'],
  ['_N', 'force'],
  ['_s', 'time'],
  ['_Pa', 'pressure'],
  ['_degC', 'temperature'],
];

const kindOfName = (name: string) => kindOfSuffix.find(([suffix]) => name.endsWith(suffix))?.[1];

// Decimals that still tell a value from the limit it misses: never "got 30.0 mm, must be at least 30.0 mm".
function telling(voice: Voice, data: SentenceData, kind: QuantityKind): number | undefined {
  const { value } = data;
  const bounds = [data.min, data.max].filter((bound) => typeof bound === 'number' && bound !== value);
  if (typeof value !== 'number') return undefined;
  const alike = (digits?: number) =>
    bounds.some((bound) => {
      const options = digits === undefined ? {} : { digits };
      return voice.write(Number(bound), kind, options) === voice.write(value, kind, options);
    });
  return alike() ? [1, 2, 3, 4, 5, 6].find((digits) => !alike(digits)) : undefined;
}

// Six digits do, unless the value would read like the limit it misses.
function tellsApart(voice: Voice, { value, min, max }: SentenceData): boolean {
  const text = (number: unknown) => (typeof number === 'number' ? plainNumber(number, voice.language) : undefined);
  return [min, max].every((bound) => bound === value || text(bound) === undefined || text(bound) !== text(value));
}

function unitText(voice: Voice, unit: string): string {
  if (unit === 'N/mm/%') return voice.say('unit.modulus-metric');
  if (unit === 'd') return voice.say('unit.days', { count: 2 });
  const signs: Readonly<Record<string, string>> = {
    '1': '',
    degC: '°C',
    degF: '°F',
    ohm: 'Ω',
    'N*m2': 'N·m²',
    'kg/m2': 'kg/m²',
    'm/s2': 'm/s²',
  };
  return signs[unit] ?? unit;
}

const unbounded = (bound: unknown): bound is undefined | null => typeof bound !== 'number' || Math.abs(bound) > 1e300;

function allowedText(voice: Voice, data: SentenceData, write: NumberWriter): string | undefined {
  const { value, min, max, step } = data;
  const limits = [
    rangeText(voice, { value, min, max, above: data.above }, write),
    step === 1 ? voice.say('limits.whole') : undefined,
  ];
  const said = limits.filter((limit) => limit !== undefined);
  if (said.length > 0) return said.join(', ');
  return 'min' in data || 'max' in data ? voice.say('limits.finite') : undefined;
}

type Bounds = Readonly<Record<'value' | 'min' | 'max' | 'above', string | number | boolean | null | undefined>>;

// A value refused although it equals its limit shows that the limit itself is not allowed; `above` says so.
function rangeText(voice: Voice, { value, min, max, above }: Bounds, write: NumberWriter): string | undefined {
  const low = unbounded(min) ? undefined : write('min', Number(min));
  const high = unbounded(max) ? undefined : write('max', Number(max));
  if (low !== undefined && (high === undefined || value === min))
    return `${above === true || value === min ? '>' : '≥'}\u00a0${low}`;
  if (high !== undefined && (low === undefined || value === max)) return `${value === max ? '<' : '≤'}\u00a0${high}`;
  if (low === undefined || high === undefined) return undefined;
  return voice.say('limits.between' satisfies MessageKey, { min: bare(low, high), max: high });
}

// "0.3 to 20 mm" names the unit once.
function bare(low: string, high: string): string {
  const unit = high.slice(high.indexOf('\u00a0'));
  return high.includes('\u00a0') && low.endsWith(unit) ? low.slice(0, -unit.length) : low;
}
