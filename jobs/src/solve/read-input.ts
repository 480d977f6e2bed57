import { Refusal, type RefusalData } from '@loopwright/engine/refusal';
import { nearest } from '@loopwright/plant';
import type * as z from 'zod';
import { fieldPath, valueAt } from './field-path.ts';

type Issue = z.core.$ZodIssue;
type Reading = { readonly code: string; readonly path: readonly PropertyKey[]; readonly data: RefusalData };

/** Longest piece of a person's own text that is said back. */
const longestEcho = 80;

/**
 * Reads a topic's input by its schema.
 * @throws Refusal for the first thing wrong; an unknown field comes first, since it is usually a misspelt one
 */
export function readInput<S extends z.ZodType>(schema: S, input: unknown): z.output<S> {
  const read = schema.safeParse(input);
  if (read.success) return read.data;
  const issues = read.error.issues;
  const first = issues.find((issue) => issue.code === 'unrecognized_keys') ?? issues[0];
  if (first === undefined) throw new Refusal('wrong-type', '', { expected: 'object' });
  const { code, path, data } = reading(first, input, issues);
  throw new Refusal(code, fieldPath(path), data);
}

function reading(issue: Issue, input: unknown, issues: readonly Issue[]): Reading {
  if (issue.code === 'unrecognized_keys') return unknownField(issue, issues);
  const value = valueAt(input, issue.path);
  const inside = meantBranch(issue, value);
  if (inside !== undefined) return reading(inside, input, issues);
  if (issue.path.length > 0 && value === undefined) return { code: 'missing-field', path: issue.path, data: {} };
  if (issue.code === 'invalid_union' && issue.discriminator !== undefined) return notOneOfKinds(issue, input);
  if (issue.code === 'invalid_value')
    return { code: 'not-one-of', path: issue.path, data: { value: echo(value), allowed: issue.values.join(', ') } };
  if (issue.code === 'too_small' || issue.code === 'too_big') return outside(issue, value);
  return { ...wrongType(issue, value), path: issue.path };
}

/** Of several forms that are allowed, what is wrong with the one meant: for a list the form that looks into it. */
function meantBranch(issue: Issue, value: unknown): Issue | undefined {
  if (issue.code !== 'invalid_union' || issue.discriminator !== undefined || value === undefined) return undefined;
  const firsts = issue.errors.flatMap(([first]) => (first === undefined ? [] : [first]));
  const deep = Array.isArray(value) ? firsts.find(({ path }) => path.length > 0) : undefined;
  const found = deep ?? firsts[0];
  return found === undefined ? undefined : ({ ...found, path: [...issue.path, ...found.path] } as Issue);
}

function unknownField(issue: z.core.$ZodIssueUnrecognizedKeys, issues: readonly Issue[]): Reading {
  const field = issue.keys[0] ?? '';
  const missing = issues.flatMap((other) =>
    other.path.length === issue.path.length + 1 ? [String(other.path.at(-1))] : [],
  );
  const meant = nearest(field, missing);
  return {
    code: 'unknown-field',
    path: [...issue.path, echo(field)],
    data: { field: echo(field), ...(meant === undefined ? {} : { meant }) },
  };
}

function notOneOfKinds(issue: z.core.$ZodIssueInvalidUnion, input: unknown): Reading {
  const value = valueAt(input, issue.path);
  const code = value === undefined ? 'missing-field' : 'not-one-of';
  const allowed = 'options' in issue && Array.isArray(issue.options) ? issue.options.join(', ') : '';
  return { code, path: issue.path, data: value === undefined ? {} : { value: echo(value), allowed } };
}

function outside(issue: z.core.$ZodIssueTooSmall | z.core.$ZodIssueTooBig, value: unknown): Reading {
  const bound = issue.code === 'too_small' ? { min: Number(issue.minimum) } : { max: Number(issue.maximum) };
  if (issue.origin === 'array') {
    const count = Array.isArray(value) ? value.length : 0;
    return { code: issue.code === 'too_small' ? 'too-few' : 'too-many', path: issue.path, data: { count, ...bound } };
  }
  const shown = typeof value === 'number' ? value : echo(value);
  return { code: 'out-of-range', path: issue.path, data: { value: shown, ...bound } };
}

function wrongType(issue: Issue, value: unknown): Omit<Reading, 'path'> {
  const expected = 'expected' in issue ? String(issue.expected) : 'value';
  if (typeof value === 'number' && !Number.isFinite(value))
    return { code: 'not-finite', data: { value: String(value) } };
  if (expected === 'number') return { code: 'not-a-number', data: { value: echo(value) } };
  if (expected === 'int') return { code: 'out-of-range', data: { value: Number(value), step: 1 } };
  return { code: 'wrong-type', data: { value: echo(value), expected } };
}

/** What was given, short enough to be said back; a list or an object only by its brackets. */
function echo(value: unknown): string {
  if (Array.isArray(value)) return '[…]';
  if (value !== null && typeof value === 'object') return '{…}';
  const text = String(value);
  return text.length > longestEcho ? `${text.slice(0, longestEcho)}…` : text;
}
