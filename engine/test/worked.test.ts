import { describe, expect, it } from 'vitest';
import { formulas } from '../src/worked/formulas.ts';
import { kindUnit, type WorkedFormula } from '../src/worked/worked-formula.ts';

const rows = formulas.map((row): [string, WorkedFormula] => [row.id, row]);

/** Words of an expression, so that `t` is not found in `atan`. */
function words(text: string): string[] {
  return text.match(/[A-Za-z_][A-Za-z_0-9]*/g) ?? [];
}

describe('table of worked formulas', () => {
  it('[WORKED-01] ids are unique and kebab-case', () => {
    const ids = formulas.map(({ id }) => id);
    expect(ids.length).toBeGreaterThan(20);
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) expect(id).toMatch(/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/);
  });

  it.each(rows)('[WORKED-02] %s names its result and every symbol in its text', (_, row) => {
    const [left = '', ...right] = row.expression.split('=');
    expect(left.trim()).toBe(row.result.symbol);
    for (const symbol of Object.keys(row.symbols)) expect(words(right.join('='))).toContain(symbol);
  });

  it.each(rows)('[WORKED-02] %s has a meaning and a kind for every symbol, and a source', (_, row) => {
    for (const { kind, meaning } of [row.result, ...Object.values(row.symbols)]) {
      expect(kindUnit[kind]).toBeTypeOf('string');
      expect(meaning).toMatch(/^[a-z][A-Za-z0-9]*$/);
    }
    expect(row.source.length).toBeGreaterThan(4);
  });

  it.each(rows)('[WORKED-03] %s meets its examples, which lie in its range and name their source', (_, row) => {
    expect(row.examples.length).toBeGreaterThan(0);
    for (const { inputs, expected, tolerance, source } of row.examples) {
      expect(Math.abs(row.compute(inputs) - expected)).toBeLessThanOrEqual(tolerance);
      expect(Object.keys(inputs).sort()).toEqual(Object.keys(row.symbols).sort());
      expect(source.length).toBeGreaterThan(2);
    }
  });

  it.each(rows)('[WORKED-04] %s: range of every symbol is an interval', (_, row) => {
    for (const symbol of Object.keys(row.symbols)) {
      const [low, high] = row.range[symbol] ?? [Number.NaN, Number.NaN];
      expect(low, symbol).toBeLessThan(high);
    }
  });
});
