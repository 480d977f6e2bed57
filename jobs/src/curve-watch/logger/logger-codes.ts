/** Units that a logger's temperatures can be in, and its times where they are plain numbers. */
export const temperatureUnits = ['degC', 'degF', 'K'] as const;
export type TemperatureUnit = (typeof temperatureUnits)[number];
export const timeUnits = ['ms', 's', 'min', 'h', 'day', 'mm:ss', 'hh:mm'] as const;
export type TimeUnit = (typeof timeUnits)[number];

/** Why a file cannot be read. Each says where, what stands there, what may, and what to do next. */
export const loggerFaults = [
  'empty',
  'not-text',
  'line-too-long',
  'no-columns',
  'decimal-comma',
  'no-time',
  'no-temperature',
  'date-order',
  'columns-missing',
  'not-a-number',
  'time-not-read',
  'time-goes-back',
  'time-stands-still',
  'temperature-impossible',
  'unit-unclear',
  'too-few-rows',
  'stopped',
  'source-broke',
] as const;
export type LoggerFaultCode = (typeof loggerFaults)[number];

export interface LoggerFault {
  readonly code: LoggerFaultCode;
  /** Line of the file, from 1. */
  readonly row?: number;
  /** Column of the line, from 1. */
  readonly column?: number;
  /** Text as it stands in the file, or numbers in SI. */
  readonly data: Readonly<Record<string, string | number>>;
}

/** What was done with what is odd but can be read. Nothing of it is silent. */
export const loggerNotes = [
  'rows-repeated',
  'same-time',
  'cells-missing',
  'last-row-cut',
  'gap',
  'one-sensor',
  'thinned',
] as const;
export type LoggerNoteCode = (typeof loggerNotes)[number];

export interface LoggerNote {
  readonly code: LoggerNoteCode;
  readonly row?: number;
  readonly data: Readonly<Record<string, number>>;
}

/** What the file does not say, and how it was read meanwhile; an answer goes into `LoggerOptions.answers`. */
export type LoggerQuestion =
  | { readonly code: 'temperature-unit'; readonly guess: TemperatureUnit; readonly hottest: number }
  | { readonly code: 'time-unit'; readonly guess: TimeUnit; readonly length_s: number }
  | { readonly code: 'columns'; readonly columns: LoggerColumns }
  | { readonly code: 'columns-swapped'; readonly columns: LoggerColumns };

/** Which column is what, from 1. */
export interface LoggerColumns {
  readonly time: number;
  readonly top: number;
  readonly bottom?: number;
  readonly belt?: number;
}

/** A stretch in which nothing was logged [s]. Nothing is put in its place. */
export interface LoggerGap {
  readonly from_s: number;
  readonly to_s: number;
}

/** A logger's curve from its first row; a cell without a number is null. Least and most of every stretch are kept. */
export interface LoggerCurve {
  readonly times_s: readonly number[];
  readonly top_degC: readonly (number | null)[];
  readonly bottom_degC?: readonly (number | null)[];
  readonly belt_degC?: readonly (number | null)[];
  /** Rows of the file that hold a reading. */
  readonly rows: number;
  readonly gaps: readonly LoggerGap[];
}

export type LoggerResult =
  | {
      readonly ok: true;
      readonly curve: LoggerCurve;
      readonly columns: LoggerColumns;
      readonly notes: readonly LoggerNote[];
      readonly questions: readonly LoggerQuestion[];
    }
  | { readonly ok: false; readonly fault: LoggerFault };

export interface LoggerOptions {
  /** What somebody answered, or knows of this logger. */
  readonly answers?: {
    readonly temperature?: TemperatureUnit;
    readonly time?: TimeUnit;
    readonly columns?: LoggerColumns;
  };
  /** Points kept, about; default 4000. */
  readonly keep?: number;
  readonly onProgress?: (done: { readonly rows: number; readonly chars: number }) => void;
  /** Of an `AbortController`: once it is aborted the answer is the fault `stopped`. */
  readonly signal?: { readonly aborted: boolean };
}
