import { spawnSync } from 'node:child_process';
import { mkdirSync } from 'node:fs';
import { at } from '../../tools/root.mjs';

const source = at('bench/peer/cycle-cvode.c');
const program = at('.cache/bench/cycle-cvode');
const libraries = ['cvode', 'nvecserial', 'sunlinsolband', 'sunmatrixband'].map((name) => `-lsundials_${name}`);

/** Compiles the peer; undefined where SUNDIALS or a C compiler is missing. */
export function buildPeer() {
  mkdirSync(at('.cache/bench'), { recursive: true });
  const built = spawnSync('cc', ['-O3', '-march=native', '-o', program, source, ...libraries, '-lm']);
  return built.status === 0 ? program : undefined;
}

/** The cells of a stack and everything else of a cycle as the numbers that the peer reads. */
function description(input, grid, { repeats = 0, tolerances, times_s = [], map = [0, 0, 0] }) {
  const last = grid.count - 1;
  const belt = input.layers.flatMap(({ belt }, index) => (belt ? [grid.layers[index]] : []));
  const middle = grid.layers[input.probes[0].layer];
  const { control, ...platen } = input.top;
  const conductances = Array.from(
    { length: last },
    (_, i) => 1 / (grid.parts[i].half_m2K_W + grid.parts[i].contact_m2K_W + grid.parts[i + 1].half_m2K_W),
  );
  const cells = grid.layers.flatMap(({ first, count }, index) => {
    const layer = input.layers[index];
    const one = [
      layer.specificHeat_J_kgK,
      layer.specificHeatSlope_J_kgK2 ?? 0,
      layer.specificHeatCap_J_kgK ?? 0,
      layer.melt?.heat_J_kg ?? 0,
    ];
    return Array.from({ length: count }, (_, i) => [grid.parts[first + i].mass_kg_m2, ...one]).flat();
  });
  const { recipe, supply } = input;
  return [
    control.kind === 'pi' ? 1 : 0,
    last - 1,
    belt[0].first,
    belt.at(-1).first + belt.at(-1).count,
    middle.first + (middle.count - 1) / 2,
    ...conductances,
    ...cells,
    165,
    50,
    platen.capacity_J_m2K,
    platen.capacitySlope_1_K,
    platen.loss_W_m2K,
    platen.fan_W_m2K,
    input.ambient_degC,
    platen.sensorLag_s,
    control.band_K,
    control.integral_s ?? 0,
    control.tracking_s ?? 0,
    recipe.top_degC,
    recipe.bottom_degC,
    recipe.ready_K,
    recipe.dwell_s,
    recipe.open_degC,
    supply.volts_V,
    supply.leadResistance_ohm,
    platen.heater_W / platen.nominal_V ** 2,
    platen.area_m2,
    recipe.pressure_Pa,
    repeats,
    tolerances.length,
    ...tolerances,
    times_s.length,
    ...times_s,
    ...map,
  ].join(' ');
}

/** One answer of the peer for each tolerance. */
export function runPeer(peer, input, grid, options) {
  const ran = spawnSync(peer, { input: description(input, grid, options), encoding: 'utf8' });
  if (ran.status !== 0) throw new Error(`the peer stopped with ${ran.status}: ${ran.stderr}`);
  return ran.stdout
    .trim()
    .split('\n')
    .map((line) => {
      const [tolerance, time_us, steps, ready_s, open_s, healing, flow, ...middle_degC] = line.split(' ').map(Number);
      return { tolerance, time_us, steps, ready_s, open_s, healing, flow, middle_degC };
    });
}
