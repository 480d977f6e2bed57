import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { loopwright } from './terminal.ts';

let place: string;
beforeAll(() => {
  place = mkdtempSync(join(tmpdir(), 'loopwright-cycle-'));
});
afterAll(() => rmSync(place, { recursive: true }));

const now = ['--now', '2026-11-25T02:10:00Z'];

describe('cycle', () => {
  it('[TERM-50] the time line of a position in every language; the three belts take 17 to 18 min', () => {
    for (const position of ['QM-01-1', 'QM-03-1', 'QM-04-3']) {
      for (const lang of ['en', 'de', 'es']) {
        const { code, stdout, stderr } = loopwright(['cycle', position, '--lang', lang, ...now]);
        expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
        // Common practice, no source: a complete cycle of a light air-cooled press.
        expect(stdout.split('\n').slice(0, 6).join(' ')).toMatch(/17:\d\d\smin/);
        expect(stdout).not.toMatch(/undefined|NaN|\[object/);
      }
    }
  });

  it('[TERM-51] a long lead and a weak breaker are said first; what is said of today counts', () => {
    const south = loopwright(['cycle', 'QM-01-1', '--press', 'P2', ...now]).stdout;
    expect(south).toMatch(/South will be late by/);
    const weak = loopwright(['cycle', 'QM-01-1', '--outlet', '230V,6A', '--air', '5', ...now]).stdout;
    expect(weak).toMatch(/draws 6\.1\sA.*may draw 4\.8\sA/s);
    expect(weak).toMatch(/Usual air temperature\s+5\s°C/);
  });

  it('[TERM-52] --worked writes the formulas of outlet and lead out', () => {
    const worked = loopwright(['cycle', 'QM-01-1', '--press', 'P2', '--worked', ...now]).stdout;
    expect(worked).toContain('R = 2 · l · r');
    expect(worked).toMatch(/3\.12\sΩ/);
  });

  it('[TERM-53] the curve as CSV and the page as PDF, alone or both, byte for byte the same', () => {
    const file = (name: string) => join(place, name);
    for (const paper of ['a4', 'a5', 'letter']) {
      for (const name of ['one', 'two']) {
        const files = ['--pdf', file(`${name}-${paper}.pdf`), '--csv', file(`${name}.csv`)];
        const { code, stderr } = loopwright(['cycle', 'QM-04-3', '--paper', paper, ...files, ...now]);
        expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
      }
      const [one, two] = ['one', 'two'].map((name) => readFileSync(file(`${name}-${paper}.pdf`)));
      expect(one?.subarray(0, 5).toString()).toBe('%PDF-');
      expect(two && one?.equals(two)).toBe(true);
    }
    const rows = readFileSync(file('one.csv'), 'utf8').trimEnd().split('\n');
    expect(rows[0]?.split(',').slice(0, 2)).toEqual(['time_s', 'topPlaten_degC']);
    expect(rows.length).toBeGreaterThan(100);
    for (const row of rows.slice(1)) expect(row).toMatch(/^(\d+(\.\d+)?,){10}\d+(\.\d+)?$/);
  });

  it('[TERM-54] what cannot be said of an outlet is refused with what can, exit 2, nothing written', () => {
    for (const wrong of ['230', '15V', '230V,-3m', 'nonsense', '230V;16A', '1e999V', '230V,999mm2'])
      expect(loopwright(['cycle', 'QM-01-1', '--outlet', wrong, '--csv', join(place, 'no.csv')])).toMatchObject({
        code: 2,
        stdout: '',
        stderr: expect.stringMatching(/--outlet/),
      });
    expect(loopwright(['cycle', 'QM-01-1', '--air=warm']).code).toBe(2);
    expect(existsSync(join(place, 'no.csv'))).toBe(false);
  });

  it('[TERM-55] without a recipe the page says so and ends well; a curve of nothing is not written', () => {
    const page = loopwright(['cycle', 'QM-04-3', '--press', 'P2', ...now]);
    expect(page.code).toBe(0);
    expect(page.stdout).toContain('No recipe');
    const curve = loopwright(['cycle', 'QM-04-3', '--press', 'P2', '--csv', join(place, 'none.csv'), ...now]);
    expect(curve).toMatchObject({ code: 1, stdout: '', stderr: expect.stringContaining('No recipe') });
    expect(existsSync(join(place, 'none.csv'))).toBe(false);
  });
});

/** The light press with a belt of 2.4 mm, and `rows` by 40 recipes round its own. */
function mapInput(rows: number): string {
  const platen = {
    area_m2: 0.045,
    capacity_J_m2K: 25_300,
    heater_W: 700,
    nominal_V: 120,
    loss_W_m2K: 8,
    fan_W_m2K: 130,
    sensorLag_s: 3,
    control: { kind: 'pi', band_K: 6, integral_s: 60, tracking_s: 10 },
  };
  const belt = { name: 'belt', thickness_m: 0.0024, conductivity_W_mK: 0.2, density_kg_m3: 1180, belt: true };
  return JSON.stringify({
    layers: [{ ...belt, specificHeat_J_kgK: 1575 }],
    contacts_W_m2K: [1000, 800],
    ambient_degC: 25,
    top: platen,
    bottom: platen,
    supply: { volts_V: 120, leadResistance_ohm: 0.08 },
    recipe: { top_degC: 182, bottom_degC: 188, ready_K: 2, dwell_s: 160, open_degC: 50, pressure_Pa: 2e5 },
    map: {
      shift_K: Array.from({ length: rows }, (_, i) => i - 20),
      dwell_s: Array.from({ length: 40 }, (_, i) => 15 + 10 * i),
    },
  });
}

describe('solve cycle-map', () => {
  it('[TERM-56] a long map says on stderr how far it is, and stdout stays JSON', () => {
    const long = loopwright(['solve', 'cycle-map'], { input: mapInput(110) });
    expect(long.code).toBe(0);
    const { cells } = JSON.parse(long.stdout) as { cells: { status: string }[] };
    expect(cells).toHaveLength(4400);
    expect(long.stderr).toMatch(/^(\d+\/4400\n)*$/);
    // Starting takes up to two seconds of a busy machine; beyond that somebody waits and is told.
    if (long.ms > 5000) expect(long.stderr).not.toBe('');
    const short = loopwright(['solve', 'cycle-map'], { input: mapInput(1) });
    expect(short).toMatchObject({ code: 0, stderr: '' });
  });
});
