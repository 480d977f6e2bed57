import type { TemperatureUnit } from '../../src/curve-watch/index.ts';
import { happens } from './cycles.ts';

/** One curve: time [s], both sensors and the belt [degC]. */
export type Row = readonly [time_s: number, top: number, bottom: number, belt: number];

/** A press cycle as a logger keeps it: every five seconds, two decimals. */
export const cycleRows: readonly Row[] = happens().readings.map(({ time_s, top_degC = 0, bottom_degC = 0 }) => [
  time_s,
  two(top_degC),
  two(bottom_degC),
  two((top_degC + bottom_degC) / 2 - 1),
]);

function two(value: number): number {
  return Math.round(value * 100) / 100;
}

export interface Style {
  readonly separator: ',' | ';' | '\t';
  readonly decimal: '.' | ',';
  readonly unit: TemperatureUnit;
  readonly time: 's' | 'min' | 'ms' | 'mm:ss' | 'hh:mm:ss' | 'iso' | 'german' | 'am-pm';
  readonly end: '\n' | '\r\n' | '\r';
  readonly bom?: boolean;
  readonly quotes?: boolean;
  readonly header?: boolean;
  readonly preamble?: boolean;
}

const units = { degC: '°C', degF: '°F', K: 'K' } as const;

export const inUnit = (degC: number, unit: TemperatureUnit): number =>
  unit === 'degC' ? degC : unit === 'K' ? degC + 273.15 : degC * 1.8 + 32;

const pad = (value: number, digits = 2): string => String(value).padStart(digits, '0');

function clock(seconds: number): string {
  return `${pad(Math.floor(seconds / 3600))}:${pad(Math.floor(seconds / 60) % 60)}:${pad(seconds % 60)}`;
}

function timeText(seconds: number, { time, decimal }: Style): string {
  const number = (value: number): string => String(Number(value.toFixed(9))).replace('.', decimal);
  switch (time) {
    case 's':
      return number(seconds);
    case 'min':
      return number(seconds / 60);
    case 'ms':
      return number(seconds * 1000);
    case 'mm:ss':
      return `${pad(Math.floor(seconds / 60))}:${pad(seconds % 60)}`;
    case 'hh:mm:ss':
      return clock((23 * 3600 + 55 * 60 + seconds) % 86_400);
    case 'iso':
      return new Date(Date.UTC(2026, 10, 25, 23, 55) + seconds * 1000).toISOString();
    case 'german': {
      const at = new Date(Date.UTC(2026, 10, 25, 23, 55) + seconds * 1000).toISOString();
      return `${at.slice(8, 10)}.${at.slice(5, 7)}.${at.slice(0, 4)} ${at.slice(11, 19)}`;
    }
    case 'am-pm': {
      const at = (11 * 3600 + 55 * 60 + seconds) % 86_400;
      const hour = Math.floor(at / 3600);
      return `${hour % 12 === 0 ? 12 : hour % 12}:${clock(at).slice(3)} ${hour < 12 ? 'AM' : 'PM'}`;
    }
  }
}

/** The same curve in the way of some logger. */
export function written(rows: readonly Row[], style: Style): string {
  const { separator, decimal, unit, end, bom, quotes, header = true, preamble } = style;
  const cell = (text: string): string => (quotes ? `"${text}"` : text);
  const line = (cells: readonly string[]): string => cells.map(cell).join(separator);
  const timeHead = { s: 'Time (s)', min: 'Zeit [min]', ms: 'time ms', 'mm:ss': 'Tiempo (mm:ss)' } as const;
  const heads = [
    style.time in timeHead ? timeHead[style.time as keyof typeof timeHead] : 'Time',
    `Top [${units[unit]}]`,
    `Bottom [${units[unit]}]`,
    `Belt [${units[unit]}]`,
  ];
  const body = rows.map(([time_s, ...temperatures]) =>
    line([
      timeText(time_s, style),
      ...temperatures.map((value) => inUnit(value, unit).toFixed(4).replace('.', decimal)),
    ]),
  );
  const before = preamble ? ['Logger no. 7', 'Interval 5 s', ''] : [];
  return `${bom ? '\uFEFF' : ''}${[...before, ...(header ? [line(heads)] : []), ...body].join(end)}${end}`;
}
