import { curveOfRows } from './curve-of-rows.ts';
import type { LoggerFault, LoggerFaultCode, LoggerOptions, LoggerResult } from './logger-codes.ts';
import { headLines, sniffTable, type Table } from './sniff-table.ts';
import { lineSplitter } from './split-row.ts';
import { type RowTaker, takeRows } from './take-rows.ts';

/** A whole text, or pieces of it as they come: decoded, cut anywhere. */
export type LoggerSource = string | Iterable<string> | AsyncIterable<string>;

const defaultKeep = 4000;
const longestLine = 20_000;
const piece = 65_536;

/**
 * Reads the CSV of a logger that lay in the press: comma, semicolon or tab, decimal point or comma, with words over the
 * columns or without, times as numbers, clock or date, degrees Celsius, Fahrenheit or kelvin. What it has to guess comes
 * back as a question; gaps are named and left empty; a fault says where it is and reads nothing.
 *
 * @param source - text, or its pieces; a million rows take bounded memory
 * @param options - answers to questions, points to keep, progress, abort
 */
export async function readLoggerCsv(source: LoggerSource, options: LoggerOptions = {}): Promise<LoggerResult> {
  const reader = loggerReader(options);
  try {
    for await (const chunk of piecesOf(source)) {
      const fault = options.signal?.aborted ? stopped : reader.take(chunk);
      if (fault !== undefined) return { ok: false, fault };
      options.onProgress?.(reader.done());
    }
  } catch (cause) {
    const data = { reason: cause instanceof Error ? cause.message.slice(0, 120) : '' };
    return { ok: false, fault: { code: 'source-broke', row: reader.done().rows, data } };
  }
  return options.signal?.aborted ? { ok: false, fault: stopped } : reader.end();
}

const stopped: LoggerFault = { code: 'stopped', data: {} };

function piecesOf(source: LoggerSource): Iterable<string> | AsyncIterable<string> {
  return typeof source === 'string' ? slices(source) : source;
}

function* slices(text: string): Iterable<string> {
  for (let at = 0; at < text.length; at += piece) yield text.slice(at, at + piece);
}

interface LoggerReader {
  readonly take: (chunk: string) => LoggerFault | undefined;
  readonly done: () => { readonly rows: number; readonly chars: number };
  readonly end: () => LoggerResult;
}

function loggerReader({ answers, keep = defaultKeep }: LoggerOptions): LoggerReader {
  const splitter = lineSplitter();
  const head: string[] = [];
  let [row, chars] = [0, 0];
  let opened: { readonly table: Table; readonly taker: RowTaker } | undefined;

  const open = (): LoggerFault | undefined => {
    const table = sniffTable(head, answers);
    if ('code' in table) return table;
    const taker = takeRows(table, keep);
    opened = { table, taker };
    for (const [i, line] of head.entries()) {
      const fault = i < table.skip ? undefined : taker.take(line, i + 1);
      if (fault !== undefined) return fault;
    }
    return undefined;
  };

  const takeLine = (line: string): LoggerFault | undefined => {
    row += 1;
    if (opened !== undefined) return opened.taker.take(line, row);
    head.push(line);
    return head.length >= headLines ? open() : undefined;
  };

  return {
    take: (chunk) => {
      chars += chunk.length;
      if (chunk.includes('\0')) return { code: 'not-text', row: row + 1, data: {} };
      for (const line of splitter.take(chunk)) {
        const fault = takeLine(line);
        if (fault !== undefined) return fault;
      }
      const data = { longest: longestLine };
      return splitter.rest().length > longestLine ? { code: 'line-too-long', row: row + 1, data } : undefined;
    },
    done: () => ({ rows: row, chars }),
    end: () => {
      const rest = splitter.rest();
      const cut = rest === '' ? undefined : takeLine(rest);
      const fault = opened === undefined ? open() : undefined;
      const last = cut ?? fault;
      if (opened === undefined || (last !== undefined && !isCutOff(last, { rest, row })))
        return { ok: false, fault: last ?? { code: 'empty', data: {} } };
      const result = curveOfRows(opened.taker.taken(), opened.table, answers);
      return last !== undefined && result.ok
        ? { ...result, notes: [...result.notes, { code: 'last-row-cut', row: row, data: {} }] }
        : result;
    },
  };
}

const cuts: readonly LoggerFaultCode[] = ['columns-missing', 'not-a-number', 'time-not-read'];

/** A last row that ends without an end of line was being written when the logger stopped. */
function isCutOff({ code, row }: LoggerFault, last: { readonly rest: string; readonly row: number }): boolean {
  return last.rest !== '' && row === last.row && cuts.includes(code);
}
