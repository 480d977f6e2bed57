import { loggerFaults, loggerNotes, readLoggerCsv, temperatureUnits, timeUnits } from '@loopwright/jobs/curve-watch';
import { languages, loggerWords, voice } from '@loopwright/words';
import { describe, expect, it } from 'vitest';

const bare = /logger\.[a-z]|\{|\}|undefined/;
const dash = /(^| )–( |\.|,|$)/;
/** What faults and notes carry, all of it at once. */
const data = {
  value: 'hot',
  longest: 20_000,
  columns: 2,
  found: 2,
  wanted: 3,
  before: 12,
  count: 3,
  kept: 4000,
  least: 1,
  most: 2,
  reason: 'card removed',
  from_s: 300,
  to_s: 420,
  length_s: 120,
};
const possible = { value_degC: 300, least_degC: -30, most_degC: 260 };

describe.each(languages)('words of a logger’s file, %s', (language) => {
  const words = loggerWords(voice(language, 'metric'));

  it('[SLOG-01] every fault and note is said with its place and its numbers', () => {
    const faults = loggerFaults.map((code) =>
      words.fault({ code, row: 7, column: 2, data: code === 'temperature-impossible' ? possible : data }),
    );
    const notes = loggerNotes.map((code) => words.note({ code, data }));
    for (const said of [faults, notes]) {
      expect(said.filter((text) => bare.test(text) || dash.test(text))).toEqual([]);
      expect(new Set(said).size).toBe(said.length);
    }
    for (const text of faults) expect(text).toMatch(/7.*2/);
  });

  it('[SLOG-02] what is guessed is asked, with what comes of it; each unit has its tile', async () => {
    const rows = ['0;72;73', '10;190;191', '20;360;361', '30;100;100'].join('\n');
    const result = await readLoggerCsv(rows);
    if (!result.ok) throw new Error(JSON.stringify(result.fault));
    const asked = result.questions.map(words.question);
    expect(asked).toHaveLength(3);
    expect(asked[0]).toContain('°F');
    expect(asked[0]).toContain('183\u00a0°C');
    expect(asked.filter((text) => bare.test(text) || dash.test(text))).toEqual([]);
    const swapped = words.question({ code: 'columns-swapped', columns: { time: 2, top: 1 } });
    expect(swapped).toMatch(/2/);
    expect(words.question({ code: 'columns', columns: { time: 1, top: 2 } })).not.toMatch(dash);
    const units = [...temperatureUnits, ...timeUnits].map(words.unit);
    expect(new Set(units).size).toBe(units.length);
  });
});
