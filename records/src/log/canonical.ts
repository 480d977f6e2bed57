import { Refusal } from '@loopwright/engine/refusal';
import canonicalize from 'canonicalize';

/** Deepest nesting of a record; `[]` is 1. */
export const deepest = 32;

/** What makes a value unfit for the canonical form. */
export type DataFault = 'too-deep' | 'number-not-finite' | 'lone-surrogate' | 'not-plain-data';

/** Where a value is unfit, and why; the path reads like `body.thing.marks[3]`. */
export interface FaultPlace {
  readonly code: DataFault;
  readonly path: string;
}

// With the `u` flag a pair counts as one letter, so this finds only halves that stand alone.
const loneSurrogate = /\p{Surrogate}/u;

/**
 * The canonical form of RFC 8785: one text for one value, whatever wrote it.
 *
 * The serialiser of the language writes NaN as `null`, leaves undefined fields out and escapes half a pair; each
 * would sign something else than was meant, so each is refused.
 *
 * @param value - plain data: null, booleans, finite numbers, well-formed strings, arrays, objects without a class
 * @returns the text; as UTF-8 it is what is hashed and signed
 * @throws Refusal `too-deep`, `number-not-finite`, `lone-surrogate`, `not-plain-data`
 * @source RFC 8785
 */
export function canonicalText(value: unknown): string {
  const fault = dataFault(value);
  if (fault !== undefined) throw new Refusal(fault.code, fault.path, fault.code === 'too-deep' ? { max: deepest } : {});
  return canonicalize(value) ?? '';
}

/**
 * The first thing in a value that the canonical form cannot hold, or undefined.
 *
 * @param value - anything
 */
export function dataFault(value: unknown): FaultPlace | undefined {
  return faultIn(value, '', 1);
}

/**
 * The value of a text that is its own canonical form; undefined otherwise. This one comparison refuses names given
 * twice, spaces, `2.0` for `2`, needless escapes and all the rest.
 *
 * @param line - any text
 */
export function canonicalValue(line: string): unknown {
  try {
    const value: unknown = JSON.parse(line);
    return isQuicklyCanonical(value, line) || canonicalText(value) === line ? value : undefined;
  } catch {
    return undefined;
  }
}

// The canonical form differs from the language's own in the order of names alone. A text read with its names in order
// is therefore canonical if the language writes it back unchanged, and that is several times faster to find out. Names
// that look like indices are kept in another order by the language; those take the long way.
function isQuicklyCanonical(value: unknown, line: string): boolean {
  return JSON.stringify(value) === line && isFitAndInOrder(value, 1);
}

function isFitAndInOrder(value: unknown, depth: number): boolean {
  if (typeof value === 'string') return !loneSurrogate.test(value);
  if (typeof value === 'number') return Number.isFinite(value);
  if (typeof value !== 'object' || value === null) return true;
  if (depth > deepest) return false;
  if (Array.isArray(value)) return value.every((each) => isFitAndInOrder(each, depth + 1));
  let before: string | undefined;
  for (const name of Object.keys(value)) {
    if ((before !== undefined && before >= name) || loneSurrogate.test(name)) return false;
    if (!isFitAndInOrder((value as Record<string, unknown>)[name], depth + 1)) return false;
    before = name;
  }
  return true;
}

function faultIn(value: unknown, path: string, depth: number): FaultPlace | undefined {
  if (value === null || typeof value === 'boolean') return undefined;
  if (typeof value === 'string') return loneSurrogate.test(value) ? { code: 'lone-surrogate', path } : undefined;
  if (typeof value === 'number') return Number.isFinite(value) ? undefined : { code: 'number-not-finite', path };
  if (typeof value !== 'object' || !isPlain(value)) return { code: 'not-plain-data', path };
  if (depth > deepest) return { code: 'too-deep', path };
  return Array.isArray(value) ? faultInList(value, path, depth) : faultInFields(value, path, depth);
}

function faultInList(list: readonly unknown[], path: string, depth: number): FaultPlace | undefined {
  for (let i = 0; i < list.length; i++) {
    const fault = faultIn(list[i], `${path}[${i}]`, depth + 1);
    if (fault !== undefined) return fault;
  }
  return undefined;
}

function faultInFields(fields: object, path: string, depth: number): FaultPlace | undefined {
  for (const [name, value] of Object.entries(fields)) {
    const below = path === '' ? name : `${path}.${name}`;
    if (loneSurrogate.test(name)) return { code: 'lone-surrogate', path: below };
    const fault = faultIn(value, below, depth + 1);
    if (fault !== undefined) return fault;
  }
  return undefined;
}

// An object with a class may turn itself into something else when written; a list with holes would lose them.
function isPlain(value: object): boolean {
  const prototype: unknown = Object.getPrototypeOf(value);
  return prototype === Object.prototype || prototype === null || prototype === Array.prototype;
}
