import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type LoggerCurve,
  type LoggerFault,
  type LoggerOptions,
  type LoggerSource,
  loggerFaults,
  loggerReadings,
  readLoggerCsv,
  switchedOn_s,
  temperatureUnits,
  watchCurve,
} from '../../src/curve-watch/index.ts';
import { exact, happens, mains, recipe, set } from './cycles.ts';
import { cycleRows, inUnit, type Row, type Style, written } from './logger-files.ts';

const plain: Style = { separator: ';', decimal: '.', unit: 'degC', time: 's', end: '\n' };

async function readable(source: LoggerSource, options?: LoggerOptions) {
  const result = await readLoggerCsv(source, options);
  if (!result.ok) throw new Error(`fault ${JSON.stringify(result.fault)}`);
  return result;
}

async function fault(source: LoggerSource, options?: LoggerOptions): Promise<LoggerFault> {
  const result = await readLoggerCsv(source, options);
  if (result.ok) throw new Error(`read: ${result.curve.rows} rows`);
  return result.fault;
}

function expectCycle(curve: LoggerCurve, rows: readonly Row[] = cycleRows): void {
  expect(curve.rows).toBe(rows.length);
  rows.forEach(([time_s, top, bottom, belt], i) => {
    expect(Math.abs((curve.times_s[i] ?? Number.NaN) - time_s)).toBeLessThan(1e-3);
    expect(Math.abs((curve.top_degC[i] ?? Number.NaN) - top)).toBeLessThan(1e-3);
    expect(Math.abs((curve.bottom_degC?.[i] ?? Number.NaN) - bottom)).toBeLessThan(1e-3);
    expect(Math.abs((curve.belt_degC?.[i] ?? Number.NaN) - belt)).toBeLessThan(1e-3);
  });
}

const style: fc.Arbitrary<Style> = fc
  .record({
    separator: fc.constantFrom(',' as const, ';' as const, '\t' as const),
    decimal: fc.constantFrom('.' as const, ',' as const),
    unit: fc.constantFrom(...temperatureUnits),
    time: fc.constantFrom(...(['s', 'min', 'ms', 'mm:ss', 'hh:mm:ss', 'iso', 'german', 'am-pm'] as const)),
    end: fc.constantFrom('\n' as const, '\r\n' as const, '\r' as const),
    bom: fc.boolean(),
    quotes: fc.boolean(),
    preamble: fc.boolean(),
  })
  .filter(({ separator, decimal }) => separator !== ',' || decimal === '.');

/** A text cut at any places. */
function* cut(text: string, size: number): Iterable<string> {
  for (let at = 0; at < text.length; at += size) yield text.slice(at, at + size);
}

describe('the same curve', () => {
  it('[LOGGER-01] in any mixture of separators, signs, units, times and ends of line is read as the same, without a question', async () => {
    await fc.assert(
      fc.asyncProperty(style, fc.integer({ min: 1, max: 5000 }), async (as, size) => {
        const { curve, questions, notes } = await readable(cut(written(cycleRows, as), size));
        expectCycle(curve);
        expect(questions).toEqual([]);
        expect(notes).toEqual([]);
      }),
      { seed: 42, numRuns: Math.min(150, Number(process.env['LW_RUNS'] ?? 150)) },
    );
  });

  it('[LOGGER-02] without words over the columns it is read by its numbers, with a question for each guess', async () => {
    for (const unit of temperatureUnits) {
      for (const time of ['s', 'min', 'mm:ss'] as const) {
        const { curve, questions } = await readable(written(cycleRows, { ...plain, unit, time, header: false }));
        expectCycle(curve);
        expect(questions.map(({ code }) => code)).toEqual(['temperature-unit', 'time-unit', 'columns']);
      }
    }
    const { questions } = await readable(written(cycleRows, { ...plain, time: 'iso', header: false }));
    expect(questions.map(({ code }) => code)).toEqual(['temperature-unit', 'columns']);
  });

  it('[LOGGER-02] an answer takes the place of a guess and of its question', async () => {
    const text = written(cycleRows, { ...plain, header: false });
    const columns = { time: 1, top: 3, bottom: 2 };
    const { curve, questions } = await readable(text, { answers: { temperature: 'degC', time: 's', columns } });
    expect(questions).toEqual([]);
    expect(curve.top_degC[100]).toBe(cycleRows[100]?.[2]);
    expect(curve.belt_degC).toBeUndefined();
    const inMinutes = await readable(text, { answers: { time: 'min' } });
    expect(inMinutes.curve.times_s[1]).toBeCloseTo(300, 6);
  });

  it('[LOGGER-03] temperature where the time should be: read by its numbers, and asked about', async () => {
    const swapped = cycleRows.map(([time_s, top, bottom]) => `${top};${time_s};${bottom}`);
    const { curve, columns, questions } = await readable(['Time (s);Top °C;Bottom °C', ...swapped].join('\n'));
    expect(columns).toEqual({ time: 2, top: 1, bottom: 3 });
    expect(questions.map(({ code }) => code)).toContain('columns-swapped');
    expect(curve.top_degC[80]).toBe(cycleRows[80]?.[1]);
  });

  it('[LOGGER-03] a counter, a set point and a date beside the clock are no sensors', async () => {
    const lines = cycleRows.map(
      ([time_s, top, bottom], i) =>
        `${i + 1};2026-11-25;${new Date(time_s * 1000).toISOString().slice(11, 19)};182;${top};${bottom}`,
    );
    const { columns } = await readable(['No;Date;Time;Set point;Upper °C;Lower °C', ...lines].join('\n'));
    expect(columns).toEqual({ time: 3, top: 5, bottom: 6 });
    const bare = await readable(
      cycleRows.map(([time_s, top, bottom], i) => `${i + 1};${time_s};${top};${bottom}`).join('\n'),
    );
    expect(bare.columns).toEqual({ time: 2, top: 3, bottom: 4 });
  });
});

describe('what is odd is said', () => {
  const lines = written(cycleRows, plain).trimEnd().split('\n');

  it('[LOGGER-04] gaps are named with their length and left empty', async () => {
    const holed = cycleRows.filter(([time_s]) => time_s <= 300 || time_s >= 420);
    const { curve, notes } = await readable(written(holed, plain));
    expect(curve.gaps).toEqual([{ from_s: 300, to_s: 420 }]);
    expect(notes).toEqual([{ code: 'gap', data: { from_s: 300, to_s: 420, length_s: 120 } }]);
    expectCycle(curve, holed);
  });

  it('[LOGGER-05] rows that stand twice are taken once; the same time with other values is kept; empty cells stay empty', async () => {
    const twice = [...lines.slice(0, 50), lines[49], ...lines.slice(50)].join('\n');
    const doubled = await readable(twice);
    expect(doubled.notes).toEqual([{ code: 'rows-repeated', row: 51, data: { count: 1 } }]);
    expectCycle(doubled.curve);
    const other = [...lines.slice(0, 50), '240;99;99;99', '240;98;98;98', ...lines.slice(50)].join('\n');
    const { notes } = await readable(other);
    expect(notes.find(({ code }) => code === 'same-time')).toMatchObject({ data: { count: 2 } });
    const empty = await readable(['s;Top °C;Bottom °C', '0;20;21', '5;;21.5', '10;---;22', '15;24;23'].join('\n'));
    expect(empty.curve.top_degC).toEqual([20, null, null, 24]);
    expect(empty.notes).toContainEqual({ code: 'cells-missing', row: 3, data: { count: 2 } });
  });

  it('[LOGGER-05] a last row that was cut off is left out; one sensor is enough, and said', async () => {
    const { curve, notes } = await readable(`${lines.join('\n')}\n1050;5`);
    expect(curve.rows).toBe(cycleRows.length);
    expect(notes.map(({ code }) => code)).toEqual(['last-row-cut']);
    const one = await readable(cycleRows.map(([time_s, top]) => `${time_s};${top}`).join('\n'));
    expect(one.notes.map(({ code }) => code)).toEqual(['one-sensor']);
    expect(one.curve.bottom_degC).toBeUndefined();
  });
});

describe('what cannot be read', () => {
  const head = 'Time (s);Top (°C);Bottom (°C)';
  const rows = ['0;20;20', '5;22;21', '10;24;23', '15;26;25'];
  const with_ = (at: number, line: string): string =>
    [head, ...rows.slice(0, at), line, ...rows.slice(at + 1)].join('\n');

  const cases: readonly (readonly [string, string, Partial<LoggerFault>])[] = [
    ['nothing', '', { code: 'empty' }],
    ['blank lines', '\n\n  \n', { code: 'empty' }],
    ['a program', 'MZ\0\0\0', { code: 'not-text' }],
    ['one endless line', 'x'.repeat(30_000), { code: 'line-too-long' }],
    ['prose', 'Dear all,\nthe press was hot.\n', { code: 'no-columns' }],
    ['300 degC', with_(2, '10;300;23'), { code: 'temperature-impossible', row: 4, column: 2 }],
    ['-60 degC', with_(2, '10;24;-60'), { code: 'temperature-impossible', row: 4, column: 3 }],
    ['a word for a number', with_(2, '10;hot;23'), { code: 'not-a-number', row: 4, column: 2, data: { value: 'hot' } }],
    ['two signs in a number', with_(2, '10;1.234,5;23'), { code: 'not-a-number', row: 4, column: 2 }],
    [
      'a time that is none',
      with_(2, 'ten;24;23'),
      { code: 'time-not-read', row: 4, column: 1, data: { value: 'ten' } },
    ],
    ['time that goes back', with_(2, '3;24;23'), { code: 'time-goes-back', row: 4, column: 1 }],
    ['a column too few', with_(2, '10;24'), { code: 'columns-missing', row: 4, data: { found: 2, wanted: 3 } }],
    ['the same time in all rows', [head, '7;20;20', '7;22;21'].join('\n'), { code: 'time-stands-still' }],
    ['a single row', [head, '0;20;20'].join('\n'), { code: 'too-few-rows' }],
    [
      'day or month first',
      ['Time,Top °C', '03/04/2026 10:00:00,20', '03/04/2026 10:00:05,21'].join('\n'),
      { code: 'date-order' },
    ],
    ['no sensors', ['Time;Humidity %', '00:00:00;40', '00:00:05;41'].join('\n'), { code: 'no-temperature' }],
    [
      'comma twice',
      ['Time,Top,Bottom', '0,0,20,1,20,2', '5,0,22,4,21,3'].join('\n'),
      { code: 'decimal-comma', row: 2 },
    ],
    [
      'a unit that fits nothing',
      ['0;12000;13000', '60;15000;18000', '1200;17000;19000'].join('\n'),
      { code: 'unit-unclear' },
    ],
  ];

  it.each(cases)('[LOGGER-06] %s: refused with its place', async (_, text, expected) => {
    expect(await fault(text)).toMatchObject(expected);
  });

  it('[LOGGER-06] an impossible temperature says what can be', async () => {
    const { data } = await fault(with_(2, '10;300;23'));
    expect(data).toEqual({ value_degC: 300, least_degC: -30, most_degC: 260 });
  });

  it('[LOGGER-07] an aborted reading and a source that breaks read nothing', async () => {
    expect(await fault(written(cycleRows, plain), { signal: { aborted: true } })).toEqual({
      code: 'stopped',
      data: {},
    });
    async function* broken(): AsyncIterable<string> {
      yield written(cycleRows, plain);
      throw new Error('card removed');
    }
    expect(await fault(broken())).toMatchObject({ code: 'source-broke', data: { reason: 'card removed' } });
  });

  it('[LOGGER-08] whatever is put in, the answer is a curve of finite numbers or a fault of the list', async () => {
    const cell = fc.oneof(
      fc.string({ maxLength: 6 }),
      fc.double({ min: -500, max: 500, noNaN: true }).map(String),
      fc.constantFrom('', '12:30', '00:00:05', '2026-11-25T10:00:00Z', '25,5', '-', 'NaN', '1e9', 'Time', 'Top °C'),
    );
    const table = fc.array(fc.array(cell, { maxLength: 5 }), { maxLength: 12 });
    await fc.assert(
      fc.asyncProperty(
        table,
        fc.constantFrom(',', ';', '\t'),
        fc.integer({ min: 1, max: 50 }),
        async (cells, separator, size) => {
          const result = await readLoggerCsv(cut(cells.map((row) => row.join(separator)).join('\n'), size));
          if (!result.ok) {
            expect(loggerFaults).toContain(result.fault.code);
            return;
          }
          const { times_s, top_degC } = result.curve;
          expect(top_degC).toHaveLength(times_s.length);
          expect(times_s.every((time, i) => Number.isFinite(time) && time >= (times_s[i - 1] ?? 0))).toBe(true);
          expect(top_degC.every((value) => value === null || (value >= -30 && value <= 260))).toBe(true);
        },
      ),
      { seed: 42, numRuns: Number(process.env['LW_RUNS'] ?? 2000) },
    );
  });
});

describe('a million rows', () => {
  const count = 1_000_000;
  /** Forty rows a second, with one spike up and one down. */
  function* long(): Iterable<string> {
    yield 'Time (s),Top (°C),Bottom (°C)\n';
    for (let from = 0; from < count; from += 1000) {
      let chunk = '';
      for (let i = from; i < from + 1000; i += 1) {
        const top = i === 700_001 ? 233.5 : 100 + 60 * Math.sin(i / 200_000);
        const bottom = i === 300_007 ? 3.25 : 90 + 50 * Math.sin(i / 150_000);
        chunk += `${i / 40},${top.toFixed(2)},${bottom.toFixed(2)}\n`;
      }
      yield chunk;
    }
  }

  it('[LOGGER-09] are read in bounded memory in a few seconds; least and most are kept, progress is told', async () => {
    const told: number[] = [];
    const began = performance.now();
    const { curve, notes } = await readable(long(), { onProgress: ({ rows }) => told.push(rows) });
    const took_s = (performance.now() - began) / 1000;
    expect(curve.rows).toBe(count);
    expect(curve.times_s.length).toBeLessThan(9000);
    expect(Math.max(...curve.top_degC.map(Number))).toBe(233.5);
    expect(Math.min(...(curve.bottom_degC ?? []).map(Number))).toBe(3.25);
    expect(notes.map(({ code }) => code)).toEqual(['thinned']);
    expect(told.length).toBeGreaterThan(900);
    expect(told.at(-1)).toBe(count + 1);
    console.info(`a million rows: ${took_s.toFixed(1)} s`);
    expect(took_s).toBeLessThan(60);
  });

  it('[LOGGER-09] can be stopped on the way', async () => {
    const signal = { aborted: false };
    const stopping: LoggerOptions = {
      signal,
      onProgress: ({ rows }) => {
        signal.aborted = rows > 50_000;
      },
    };
    expect(await fault(long(), stopping)).toEqual({ code: 'stopped', data: {} });
  });
});

describe('a logged curve is watched', () => {
  const watched = async (rows: readonly Row[]) => {
    const { curve } = await readable(written(rows, { ...plain, unit: 'degF', decimal: ',', time: 'mm:ss' }));
    return watchCurve({
      predicted: exact,
      readings: loggerReadings(curve),
      kept: 'logger',
      set,
      dwell_s: recipe.dwell_s,
    });
  };

  it('[LOGGER-10] from switching on, which the curve itself tells', async () => {
    const late = cycleRows.map(([time_s, ...rest]): Row => [time_s + 300, ...rest]);
    const first = cycleRows[0] ?? [0, 25, 25, 25];
    const idle = Array.from({ length: 60 }, (_, i): Row => [i * 5, first[1], first[2], first[3]]);
    const { curve } = await readable(written([...idle, ...late], plain));
    expect(Math.abs(switchedOn_s(curve) - 300)).toBeLessThan(10);
    expect(await watched(cycleRows)).toEqual([]);
    expect(await watched([...idle, ...late])).toEqual([]);
  });

  it('[LOGGER-10] and shows what went otherwise', async () => {
    const sagging = happens(mains(0.88)).readings.map(
      ({ time_s, top_degC = 0, bottom_degC = 0 }): Row => [time_s, top_degC, bottom_degC, inUnit(top_degC, 'degC')],
    );
    expect((await watched(sagging)).map(({ code }) => code)).toContain('slow-ramp');
  });
});
