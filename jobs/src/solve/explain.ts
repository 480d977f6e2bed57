import { formulaOf, kindUnit, type Worked, type WorkedFormula } from '@loopwright/engine/worked';
import type { Topic } from './topic.ts';

/** A worked formula as data: what each symbol means, in which unit, and where it comes from. */
export interface FormulaForm {
  readonly formula: string;
  readonly expression: string;
  readonly symbols: Readonly<Record<string, { readonly meaning: string; readonly unit: string }>>;
  readonly source: string;
}

/** The same with numbers: those of each symbol, and the expression with them in place. */
export interface ExplainedFormula extends FormulaForm {
  readonly inputs: Readonly<Record<string, number>>;
  readonly value: number;
  readonly withNumbers: string;
}

/** The formulas behind a topic, before anybody gives it numbers. */
export function formulasOf(topic: Topic): readonly FormulaForm[] {
  return topic.formulas.map((id) => form(rowOf(id)));
}

export function explained({ formula, inputs, value }: Worked): ExplainedFormula {
  const row = rowOf(formula);
  return { ...form(row), inputs, value, withNumbers: withNumbers(row, inputs, value) };
}

function rowOf(id: string): WorkedFormula {
  const row = formulaOf(id);
  if (row === undefined) throw new Error(`no worked formula has the id ${id}`);
  return row;
}

function form({ id, expression, result, symbols, source }: WorkedFormula): FormulaForm {
  const all = { ...symbols, [result.symbol]: result };
  const said = Object.entries(all).map(([symbol, { meaning, kind }]) => [symbol, { meaning, unit: kindUnit[kind] }]);
  return { formula: id, expression, symbols: Object.fromEntries(said), source };
}

const names = /[\p{L}_][\p{L}\p{N}_]*/gu;
const shownDigits = 10;

/** `L0 = 13.60248848 m / (1 + 0.008) = 13.49453222 m`: SI, so that a script or a calculator can follow. */
function withNumbers(row: WorkedFormula, inputs: Readonly<Record<string, number>>, value: number): string {
  const start = `${row.result.symbol} = `;
  const right = row.expression.startsWith(start) ? row.expression.slice(start.length) : row.expression;
  const placed = right.replace(names, (name) => {
    const number = inputs[name];
    return number === undefined ? name : number < 0 ? `(${written(number)})` : written(number);
  });
  const unit = kindUnit[row.result.kind];
  return `${start}${placed} = ${written(value)}${unit === '1' ? '' : ` ${unit}`}`;
}

const written = (number: number) => String(Number(number.toPrecision(shownDigits)));
