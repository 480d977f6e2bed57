import { type Kind, kindUnit } from '../../src/worked/worked-formula.ts';

/**
 * Reads the text of a worked formula on its own, knowing nothing of the row's `compute`: the right-hand side over
 * numbers in coherent SI units. Grammar: + - * / ^ mod, brackets, functions of one or two arguments, pi, g, `100 %`.
 */
export function evaluateExpression(expression: string, values: Readonly<Record<string, number>>): number {
  const right = expression.slice(expression.indexOf('=') + 1).replaceAll('100 %', '1');
  const tokens = right.match(/[A-Za-z][A-Za-z0-9]*|\d+(?:\.\d+)?|[-+*/^(),]/g) ?? [];
  const parser = { tokens, at: 0, values: { pi: Math.PI, g: 9.80665, ...values } };
  const value = sum(parser);
  if (parser.at !== tokens.length) throw new Error(`left over in ${expression}: ${tokens.slice(parser.at).join(' ')}`);
  return value;
}

interface Parser {
  readonly tokens: readonly string[];
  at: number;
  readonly values: Readonly<Record<string, number>>;
}

const functions: Readonly<Record<string, (...args: number[]) => number>> = {
  sqrt: (x = Number.NaN) => Math.sqrt(x),
  exp: (x = Number.NaN) => Math.exp(x),
  ln: (x = Number.NaN) => Math.log(x),
  sin: (x = Number.NaN) => Math.sin(x),
  cos: (x = Number.NaN) => Math.cos(x),
  tan: (x = Number.NaN) => Math.tan(x),
  asin: (x = Number.NaN) => Math.asin(x),
  atan: (x = Number.NaN) => Math.atan(x),
  atan2: (y = Number.NaN, x = Number.NaN) => Math.atan2(y, x),
  min: (...args) => Math.min(...args),
  max: (...args) => Math.max(...args),
};

function take(p: Parser, ...wanted: string[]): string | undefined {
  const token = p.tokens[p.at];
  if (token === undefined || !wanted.includes(token)) return undefined;
  p.at += 1;
  return token;
}

function sum(p: Parser): number {
  let value = product(p);
  for (let op = take(p, '+', '-'); op !== undefined; op = take(p, '+', '-')) {
    const next = product(p);
    value = op === '+' ? value + next : value - next;
  }
  return value;
}

function product(p: Parser): number {
  let value = signed(p);
  for (let op = take(p, '*', '/', 'mod'); op !== undefined; op = take(p, '*', '/', 'mod')) {
    const next = signed(p);
    if (op === '*') value *= next;
    else if (op === '/') value /= next;
    else value -= next * Math.floor(value / next);
  }
  return value;
}

function signed(p: Parser): number {
  return take(p, '-') === undefined ? power(p) : -signed(p);
}

function power(p: Parser): number {
  const base = atom(p);
  return take(p, '^') === undefined ? base : base ** signed(p);
}

function atom(p: Parser): number {
  if (take(p, '(') !== undefined) return closed(p, sum(p));
  const token = p.tokens[p.at] ?? '';
  p.at += 1;
  if (/^\d/.test(token)) return Number(token);
  if (take(p, '(') !== undefined) {
    const args = [sum(p)];
    while (take(p, ',') !== undefined) args.push(sum(p));
    const fn = functions[token];
    if (fn === undefined) throw new Error(`unknown function ${token}`);
    return closed(p, fn(...args));
  }
  const value = p.values[token];
  if (value === undefined) throw new Error(`unknown symbol ${token}`);
  return value;
}

function closed(p: Parser, value: number): number {
  if (take(p, ')') === undefined) throw new Error(`bracket not closed before ${p.tokens[p.at] ?? 'the end'}`);
  return value;
}

/** One unit of each kind in coherent SI units, so that the text is checked as an equation between quantities. */
const coherent: Readonly<Partial<Record<string, number>>> = { 'N/mm': 1e3, 'N/mm/%': 1e5, MPa: 1e6, d: 86_400 };

export function coherentUnit(kind: Kind): number {
  return coherent[kindUnit[kind]] ?? 1;
}
