import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';
import { type CycleMapInput, cycleMap } from '../../engine/src/press/index.ts';
import type * as AllCores from '../src/map-on-all-cores.ts';
import { root } from './terminal.ts';

const platen = {
  area_m2: 0.045,
  capacity_J_m2K: 25_300,
  heater_W: 700,
  nominal_V: 120,
  loss_W_m2K: 8,
  fan_W_m2K: 130,
  sensorLag_s: 3,
  control: { kind: 'pi', band_K: 6, integral_s: 60, tracking_s: 10 },
} as const;
const belt = { name: 'belt', thickness_m: 0.0024, conductivity_W_mK: 0.2, density_kg_m3: 1180, belt: true };

/** The light press with a belt of 2.4 mm; the set points of the last shifts are never reached. */
function mapInput(rows: number, dwells: number): CycleMapInput {
  return {
    layers: [{ ...belt, specificHeat_J_kgK: 1575 }],
    contacts_W_m2K: [1000, 800],
    ambient_degC: 25,
    top: platen,
    bottom: platen,
    supply: { volts_V: 45, leadResistance_ohm: 0.08 },
    recipe: { top_degC: 182, bottom_degC: 188, ready_K: 2, dwell_s: 160, open_degC: 50, pressure_Pa: 2e5 },
    map: {
      shift_K: Array.from({ length: rows }, (_, i) => -20 + (170 * i) / rows),
      dwell_s: Array.from({ length: dwells }, (_, i) => 15 + i),
    },
  };
}

describe('a map of cycles in the terminal', () => {
  it('[TERM-57] on all cores every point is the same bit by bit as on one', async () => {
    const built = pathToFileURL(join(root, 'cli/dist/map-on-all-cores.js')).href;
    const { mapOnAllCores } = (await import(built)) as typeof AllCores;
    const input = mapInput(12, 5);
    const told: number[] = [];
    const shared = await mapOnAllCores(input, { worthwhile_ms: 0, progress: (done) => told.push(done) });
    expect(shared).toEqual([...cycleMap(input)].flat());
    expect(new Set(shared.map(({ status }) => status)).size).toBeGreaterThan(1);
    expect(told).toEqual(Array.from({ length: 12 }, (_, i) => 5 * (i + 1)));
  });

  it('[TERM-57] stopped by Ctrl-C it ends at once and has printed nothing half done', async () => {
    const program = join(root, 'cli/bin/loopwright.js');
    const child = spawn(process.execPath, [program, 'solve', 'cycle-map'], { stdio: ['pipe', 'pipe', 'pipe'] });
    let printed = '';
    child.stdout.on('data', (text: Buffer) => {
      printed += text.toString();
    });
    child.stdin.end(JSON.stringify(mapInput(4800, 1)));
    await once(child.stderr, 'data');
    child.kill('SIGINT');
    const [code, signal] = (await once(child, 'close')) as [number | null, string | null];
    expect({ code, signal, printed }).toEqual({ code: null, signal: 'SIGINT', printed: '' });
  });
});
