import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formulaOf, formulas } from '../../src/worked/formulas.ts';
import { kindUnit, type WorkedFormula } from '../../src/worked/worked-formula.ts';
import { coherentUnit, evaluateExpression } from './evaluate-expression.ts';

const options = { seed: 42, numRuns: Math.max(50, Math.round(Number(process.env['LW_RUNS'] ?? 2000) / 20)) };

/** Rows whose text names a table or a quantile that the small grammar does not know. */
const readable = formulas.filter((row) => !row.expression.includes(';'));

function fromText(row: WorkedFormula, inputs: Readonly<Record<string, number>>): number {
  const values = Object.fromEntries(
    Object.entries(row.symbols).map(([symbol, { kind }]) => [
      symbol,
      (inputs[symbol] ?? Number.NaN) * coherentUnit(kind),
    ]),
  );
  return evaluateExpression(row.expression, values) / coherentUnit(row.result.kind);
}

function tolerance(value: number): number {
  return 1e-9 * Math.max(1e-9, Math.abs(value));
}

describe('worked formulas', () => {
  it('[TENSION-01] ids are kebab-case and unique, and each row is found by its id', () => {
    expect(new Set(formulas.map((row) => row.id)).size).toBe(formulas.length);
    for (const row of formulas) {
      expect(row.id).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
      expect(formulaOf(row.id)).toBe(row);
    }
    expect(formulaOf('no-such-row')).toBeUndefined();
  });

  it('[TENSION-01] at least the rows of loop and press are readable as text', () => {
    expect(readable.length).toBeGreaterThan(50);
  });

  it.each(formulas.map((row) => [row.id, row] as const))('[TENSION-02] %s gives its examples', (_, row) => {
    expect(row.examples.length).toBeGreaterThan(0);
    for (const example of row.examples) {
      expect(Math.abs(row.compute(example.inputs) - example.expected)).toBeLessThanOrEqual(example.tolerance);
    }
  });

  it.each(formulas.map((row) => [row.id, row] as const))('[TENSION-02] %s: examples lie in its range', (_, row) => {
    for (const { inputs } of row.examples) {
      for (const [symbol, [low, high]] of Object.entries(row.range) as [string, readonly [number, number]][]) {
        expect(inputs[symbol], symbol).toBeGreaterThanOrEqual(low);
        expect(inputs[symbol], symbol).toBeLessThanOrEqual(high);
      }
    }
  });

  it.each(readable.map((row) => [row.id, row] as const))(
    '[TENSION-03] %s: its text computes what it does',
    (_, row) => {
      expect(row.expression.startsWith(`${row.result.symbol} = `)).toBe(true);
      for (const { inputs } of row.examples) {
        const value = row.compute(inputs);
        expect(Math.abs(fromText(row, inputs) - value)).toBeLessThanOrEqual(tolerance(value));
      }
      const stretches = fc.array(fc.integer({ min: 900, max: 1100 }), {
        minLength: Object.keys(row.symbols).length,
        maxLength: Object.keys(row.symbols).length,
      });
      fc.assert(
        fc.property(stretches, (permille) => {
          const inputs = stretched(row, permille);
          const value = row.compute(inputs);
          const text = fromText(row, inputs);
          if (!Number.isFinite(value)) return !Number.isFinite(text);
          return Math.abs(text - value) <= 1e-8 * Math.max(1e-6, Math.abs(value));
        }),
        options,
      );
    },
  );

  it.each(formulas.map((row) => [row.id, row] as const))('[TENSION-03] %s: every symbol has a known unit', (_, row) => {
    for (const { kind } of [row.result, ...Object.values(row.symbols)]) expect(kindUnit[kind]).toBeDefined();
  });
});

function stretched(row: WorkedFormula, permille: readonly number[]): Record<string, number> {
  const inputs = row.examples[0]?.inputs ?? {};
  return Object.fromEntries(
    Object.keys(row.symbols).map((symbol, i) => {
      const [low, high] = row.range[symbol] ?? [-Number.MAX_VALUE, Number.MAX_VALUE];
      const value = ((inputs[symbol] ?? 0) * (permille[i] ?? 1000)) / 1000;
      return [symbol, Math.min(high, Math.max(low, value))];
    }),
  );
}
