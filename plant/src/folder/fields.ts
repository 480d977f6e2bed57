import type * as z from 'zod';
import type { FieldKind } from '../things/field.ts';
import { type UnitKind, units } from './units.ts';

/** How a cell of a field is read. */
export type CellForm = 'number' | 'yes-no' | 'text';

/** One field of a schema as the reader and the writer of plant files see it. */
export interface Field {
  /** As in the schema: `thickness_m`. */
  readonly key: string;
  /** Without the unit: `thickness`. */
  readonly name: string;
  readonly form: CellForm;
  /** Present when columns of this field carry a unit. */
  readonly unitKind?: UnitKind;
  readonly required: boolean;
  readonly min?: number;
  readonly max?: number;
  /** What may stand there, when that is a list. */
  readonly allowed?: readonly string[];
  readonly maxLength?: number;
  /** A text that must have this form. */
  readonly textForm?: 'day' | 'moment' | 'id';
  /** What stands there when nobody says anything. */
  readonly byDefault?: string | number | boolean;
  /** What is computed with while it stays open; never stored. */
  readonly prior?: number;
}

/**
 * The columns a schema's table may have; `sources` is left out, because columns `source:<field>` carry it.
 *
 * @param schema - of one kind of thing
 */
export function fieldsOf(schema: z.ZodObject): readonly Field[] {
  return Object.entries(schema.shape)
    .filter(([key]) => key !== 'sources')
    .map(([key, type]) => field(key, type as z.ZodType));
}

function field(key: string, type: z.ZodType): Field {
  const whenAbsent = type.safeParse(undefined);
  const inner = unwrapped(type);
  const kind = inner.meta()?.['kind'] as FieldKind | undefined;
  const unitKind = kind === undefined || kind === 'plain' ? undefined : kind;
  return {
    key,
    name: unitKind ? withoutUnit(key, unitKind) : key,
    form: inner.type === 'boolean' ? 'yes-no' : isNumber(inner) ? 'number' : 'text',
    ...(unitKind ? { unitKind } : {}),
    required: !whenAbsent.success,
    ...limits(inner),
    ...defaultOf(whenAbsent.data),
    ...priorOf(inner),
  };
}

type Simple = z.ZodNumber | z.ZodString | z.ZodEnum | z.ZodBoolean | z.ZodLiteral;

function unwrapped(type: z.ZodType): Simple {
  let inner = type;
  while ('unwrap' in inner && typeof inner.unwrap === 'function') inner = inner.unwrap() as z.ZodType;
  return inner as Simple;
}

function isNumber(type: Simple): boolean {
  return type.type === 'number' || (type.type === 'literal' && typeof [...type.values][0] === 'number');
}

function defaultOf(value: unknown): Partial<Field> {
  const known = typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean';
  return known ? { byDefault: value } : {};
}

function priorOf(type: Simple): Partial<Field> {
  const prior = type.meta()?.['prior'];
  return typeof prior === 'number' ? { prior } : {};
}

const textForms: Readonly<Record<string, Field['textForm']>> = { date: 'day', datetime: 'moment', regex: 'id' };

/** Of the texts only an id is held by a pattern. */
function textFormOf({ format, def }: z.ZodString): Partial<Field> {
  const pattern = def.checks?.some((check) => Reflect.get(check._zod.def, 'format') === 'regex') ? 'regex' : '';
  const form = textForms[format ?? pattern];
  return form === undefined ? {} : { textForm: form };
}

function limits(type: Simple): Partial<Field> {
  switch (type.type) {
    case 'number':
      return { ...present('min', type.minValue), ...present('max', type.maxValue) };
    case 'string':
      return { ...present('maxLength', type.maxLength), ...textFormOf(type) };
    case 'enum':
      return { allowed: type.options.map(String) };
    case 'literal':
      return { allowed: [...type.values].map(String) };
    default:
      return {};
  }
}

function present<K extends string>(key: K, value: number | null): Partial<Record<K, number>> {
  return value === null ? {} : ({ [key]: value } as Record<K, number>);
}

function withoutUnit(key: string, kind: UnitKind): string {
  const suffix = `_${units[kind][0]?.unit}`;
  return key.endsWith(suffix) ? key.slice(0, -suffix.length) : key;
}
