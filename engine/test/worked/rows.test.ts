import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formulas } from '../../src/worked/formulas.ts';
import type { WorkedFormula } from '../../src/worked/worked-formula.ts';
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

describe('text of worked formulas', () => {
  it('[WORKED-05] nearly all rows are readable as text', () => {
    expect(readable.length).toBeGreaterThan(50);
  });

  it.each(readable.map((row) => [row.id, row] as const))('[WORKED-05] %s: its text computes what it does', (_, row) => {
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
