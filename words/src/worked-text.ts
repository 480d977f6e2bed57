import { joined, type Voice } from './speak.ts';
import type { QuantityKind } from './units.ts';

/** What a worked formula must tell so that it can be written out; any object of this shape will do. */
export interface FormulaSource {
  readonly id: string;
  readonly expression: string;
  readonly result: SymbolSource & { readonly symbol: string };
  readonly symbols: Readonly<Record<string, SymbolSource>>;
  readonly source: string;
}
export interface SymbolSource {
  readonly kind: QuantityKind;
  readonly meaning: string;
}

/** A worked formula in the reader's language and units, numbers in place. */
export interface WorkedText {
  readonly title: string;
  readonly expression: string;
  readonly withNumbers: string;
  readonly symbols: readonly { readonly symbol: string; readonly meaning: string; readonly value: string }[];
  readonly source: string;
}

/**
 * Writes a formula out for one reader: `L0 = 64 800 mm / (1 + 0.90 %) = 64 222 mm`.
 * @param inputs - value of each symbol, in the inside unit of its kind
 * @param value - the result, in the inside unit of its kind
 */
export function workedText(
  voice: Voice,
  formula: FormulaSource,
  inputs: Readonly<Record<string, number>>,
  value: number,
): WorkedText {
  const written = writtenValues(voice, formula, inputs);
  const result = inFormula(voice, formula.result.kind, value, formula.expression);
  return {
    title: word(voice, `formula.${formula.id}`, formula.id),
    expression: printed(formula.expression),
    withNumbers: printed(`${formula.result.symbol} = ${numbersInPlace(rightSide(formula), written)} = ${result}`),
    symbols: [
      ...Object.entries(formula.symbols).map(([symbol, { kind, meaning }]) => ({
        symbol,
        meaning: word(voice, `meaning.${meaning}`, meaning),
        value: inputs[symbol] === undefined ? '' : inList(voice, kind, inputs[symbol]),
      })),
      {
        symbol: formula.result.symbol,
        meaning: word(voice, `meaning.${formula.result.meaning}`, formula.result.meaning),
        value: inList(voice, formula.result.kind, value),
      },
    ],
    source: formula.source,
  };
}

/** An expression as a book prints it: `4 * m * l^2` becomes `4 · m · l²`. */
function printed(expression: string): string {
  return expression
    .replace(/ ?\* ?/g, ' · ')
    .replace(/\^2(?![\d.])/g, '²')
    .replace(/\^3(?![\d.])/g, '³')
    .replaceAll(' - ', ' − ')
    .replace(/(?<![\p{L}\p{N}_])pi(?![\p{L}\p{N}_])/gu, 'π')
    .replace(/(?<![\p{L}\p{N}_])sqrt\(/gu, '√(');
}

function rightSide(formula: FormulaSource): string {
  const start = `${formula.result.symbol} = `;
  return formula.expression.startsWith(start) ? formula.expression.slice(start.length) : formula.expression;
}

function writtenValues(voice: Voice, formula: FormulaSource, inputs: Readonly<Record<string, number>>) {
  const entries = Object.entries(formula.symbols).flatMap(([symbol, { kind }]) => {
    const input = inputs[symbol];
    return input === undefined ? [] : [[symbol, inFormula(voice, kind, input, formula.expression)] as const];
  });
  return new Map(entries);
}

// Below ten degrees a tenth of a degree is more than one per cent.
const smallAngle_rad = Math.PI / 18;

// A clock reading cannot be computed with, and an exponent wants radians.
function inFormula(voice: Voice, kind: QuantityKind, value: number, expression: string): string {
  if (kind === 'time') return joined({ value: voice.number(value, Number.isInteger(value) ? 0 : 1), unit: 's' });
  if (kind === 'angle' && wantsRadians(expression)) return `${voice.number(value, 4)}\u00a0rad`;
  return voice.write(value, kind, kind === 'angle' && Math.abs(value) < smallAngle_rad ? { digits: 2 } : {});
}

const wantsRadians = (expression: string) => /\bexp\b|e\^/.test(expression) || !/a?(sin|cos|tan)\b/.test(expression);

function inList(voice: Voice, kind: QuantityKind, value: number): string {
  return voice.write(value, kind);
}

const word = (voice: Voice, key: string, otherwise: string) => (voice.has(key) ? voice.say(key) : otherwise);

const tokens = /\d+(?:\.\d+)?(?:[eE][+-]?\d+)?|\p{L}[\p{L}\p{N}_%'′]*/gu;

/**
 * Puts written values in the place of the symbols of an expression. A symbol counts only as a whole name: `e` is
 * not replaced inside `exp` or `e_max`. A value is bracketed where its minus sign or its own slash would mislead.
 */
export function numbersInPlace(expression: string, written: ReadonlyMap<string, string>): string {
  return expression.replace(tokens, (token, at: number) => {
    const symbol = symbolIn(token, written);
    if (symbol === undefined) return token;
    const rest = token.slice(symbol.length);
    const before = expression.slice(0, at);
    const after = rest + expression.slice(at + token.length);
    return glue(before) + bracketed(written.get(symbol) ?? symbol, before, after) + rest;
  });
}

// A trailing exponent, per cent sign or prime may stand at the symbol without belonging to its name: `v²`.
function symbolIn(token: string, written: ReadonlyMap<string, string>): string | undefined {
  if (written.has(token)) return token;
  const bare = token.replace(/[\p{No}%'′]+$/u, '');
  return bare !== token && written.has(bare) ? bare : undefined;
}

// `2T` is a product; with a number in place of T it must not read as one number.
const glue = (before: string) => (/[\d)]$/.test(before) ? '\u00a0· ' : '');

function bracketed(value: string, before: string, after: string): string {
  const powered = /^\s*(\^|[⁰¹²³⁴-⁹])/.test(after);
  const beside = /\/\s*$/.test(before) || /^\s*\//.test(after);
  const compound = /[/ ]/.test(value.replace(/^\S+\u00a0/, ''));
  const hasUnit = /\u00a0|°|%/.test(value);
  const negative = value.startsWith('\u2212') && /\S\s*$/.test(before) && !/\(\s*$/.test(before);
  return (powered && hasUnit) || (beside && compound) || negative ? `(${value})` : value;
}
