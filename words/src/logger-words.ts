import type { MessageKey } from './messages/en.ts';
import type { Params, Voice } from './speak.ts';
import type { QuantityKind } from './units.ts';

/** What is wrong with a logger's file, or odd about it; text as in the file, numbers in SI. */
export interface SaidLoggerFault {
  readonly code: string;
  readonly row?: number;
  readonly column?: number;
  readonly data: Readonly<Record<string, string | number>>;
}

/** What the file does not say. */
export interface SaidLoggerQuestion {
  readonly code: string;
  readonly guess?: string;
  readonly hottest?: number;
  readonly length_s?: number;
  readonly columns?: Readonly<{ time: number; top: number; bottom?: number; belt?: number }>;
}

/** The words of reading a logger for one reader. */
export interface LoggerWords {
  readonly title: string;
  readonly fault: (fault: SaidLoggerFault) => string;
  readonly note: (note: SaidLoggerFault) => string;
  readonly question: (question: SaidLoggerQuestion) => string;
  /** A unit of temperature or time, as a tile. */
  readonly unit: (code: string) => string;
}

const clocks: Readonly<Record<string, string>> = { 'mm:ss': 'clock-seconds', 'hh:mm': 'clock-minutes' };

/**
 * The words of what a logger's file says, does not say, and cannot be.
 *
 * @param voice - language and units of the reader
 */
export function loggerWords(voice: Voice): LoggerWords {
  const unit = (code: string): string => voice.say(`logger.unit.${clocks[code] ?? code}` as MessageKey);
  const said = (key: string, fault: SaidLoggerFault): string =>
    located(voice, fault, voice.say(key as MessageKey, written(voice, fault.data)));
  return {
    title: voice.say('logger.title'),
    fault: (fault) => said(`logger.fault.${fault.code}`, fault),
    note: (note) => said(`logger.note.${note.code}`, note),
    question: ({ code, guess, hottest, length_s, columns = { time: 0, top: 0 } }) =>
      voice.say(`logger.question.${code}` as MessageKey, {
        ...columns,
        ...(guess !== undefined && { unit: unit(guess) }),
        ...(hottest !== undefined && { hottest: voice.write(hottest, 'temperature') }),
        ...(length_s !== undefined && { length: voice.write(length_s, 'time') }),
      }),
    unit,
  };
}

function located(voice: Voice, { row, column }: SaidLoggerFault, said: string): string {
  if (row === undefined) return said.charAt(0).toUpperCase() + said.slice(1);
  return column === undefined
    ? voice.say('logger.at-row', { row: voice.number(row), said })
    : voice.say('logger.at-cell', { row: voice.number(row), column: voice.number(column), said });
}

const kinds = { _s: 'time', _degC: 'temperature' } as const satisfies Record<string, QuantityKind>;

function written(voice: Voice, data: SaidLoggerFault['data']): Params {
  const entries = Object.entries(data).map(([name, value]): [string, string] => {
    if (typeof value === 'string') return [name, value];
    const suffix = (['_s', '_degC'] as const).find((each) => name.endsWith(each));
    return suffix === undefined
      ? [name, voice.number(value)]
      : [name.slice(0, -suffix.length), voice.write(value, kinds[suffix])];
  });
  return Object.fromEntries(entries);
}
