import { at } from '../../tools/root.mjs';
import { constant, general } from './example.mjs';
import { buildPeer, runPeer } from './peer.mjs';

// One measurement in a process of its own: `cycle` or `first` with the name of a case, or `map`. Prints JSON.
const engine = (file) => import(at('engine/dist/press', file));
const [what, name] = process.argv.slice(2);
const inputs = { constant, general };
const accuracy = { middle_K: 0.02, event_s: 0.1 };
const exact_K = 1e-10;
const tolerances_K = [2e-2, 1e-2, 7e-3, 5e-3, 3e-3, 2e-3, 1e-3, 5e-4, 2e-4, 1e-4];
const times_s = Array.from({ length: 200 }, (_, i) => 5 * (i + 1));
// A brief run shows that everything works; its times mean nothing.
const brief = process.env.LW_BENCH === 'brief';
const rounds = brief ? 1 : 25;
const warmUp = brief ? 1 : 8000;
const perRound = brief ? 1 : 150;

function cpu_us(work) {
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return user + system;
}

function median(numbers) {
  const sorted = numbers.toSorted((a, b) => a - b);
  return sorted[(sorted.length - 1) / 2];
}

async function gridOf(input) {
  const { stackGrid } = await engine('stack/grid.js');
  const { cellCounts } = await engine('cycle/cell-counts.js');
  const plate = { specificHeat_J_kgK: 1 };
  return stackGrid(input.layers, input.contacts_W_m2K, cellCounts(input.layers), { top: plate, bottom: plate });
}

function offOf(one, reference) {
  const middle = one.middle_degC.map((value, i) => {
    const other = reference.middle_degC[i];
    return times_s[i] > Math.min(one.open_s, reference.open_s) ? 0 : Math.abs(value - other);
  });
  return {
    middle_K: Math.max(...middle),
    ready_s: Math.abs(one.ready_s - reference.ready_s),
    open_s: Math.abs(one.open_s - reference.open_s),
  };
}

const isExact = ({ middle_K, ready_s, open_s }) =>
  middle_K <= accuracy.middle_K && ready_s <= accuracy.event_s && open_s <= accuracy.event_s;

function seenBy(cycle, input, exactness) {
  const { status, marks, probes, steps } = cycle({ ...input, times_s }, exactness);
  if (status !== 'ok') throw new Error(`no cycle: ${status}`);
  return { ...marks, steps, middle_degC: probes[0].values_degC };
}

/** The march without what the peer is spared too: checks, grid, tables, the answer's form. */
async function marchOf(input) {
  const { preparePress } = await engine('cycle/prepare-press.js');
  const { startRun } = await engine('cycle/press-run.js');
  const { recipePlan } = await engine('cycle/recipe-plan.js');
  const { runPlan } = await engine('cycle/run-plan.js');
  const press = preparePress(input);
  const plan = recipePlan(input.recipe);
  return () => runPlan(startRun(input, press), plan);
}

async function measureCycle(input) {
  const { cycle } = await engine('index.js');
  const grid = await gridOf(input);
  const peer = buildPeer();
  const march = await marchOf(input);
  const references = peer && runPeer(peer, input, grid, { times_s, tolerances: [exact_K, ...tolerances_K] });
  const reference = references ? references[0] : seenBy(cycle, input, { tolerance_K: 1e-6, refine: 1 });
  const mine = seenBy(cycle, input);
  const ours = { unknowns: grid.count, steps: mine.steps, off: offOf(mine, reference) };
  if (!isExact(ours.off)) throw new Error(`ours is not as exact as it should be: ${JSON.stringify(ours.off)}`);
  const found = references?.slice(1).find((one) => isExact(offOf(one, reference)));
  for (let i = 0; i < warmUp; i += 1) {
    cycle(input);
    march();
  }
  const turns = Array.from({ length: rounds }, () => ({
    theirs: found && runPeer(peer, input, grid, { repeats: 30, tolerances: [found.tolerance] })[0].time_us,
    whole: cpu_us(() => repeat(() => cycle(input))) / perRound,
    march: cpu_us(() => repeat(march)) / perRound,
  }));
  ours.whole_us = median(turns.map(({ whole }) => whole));
  ours.march_us = median(turns.map(({ march }) => march));
  const theirs = found && {
    tolerance_K: found.tolerance,
    steps: found.steps,
    off: offOf(found, reference),
    march_us: median(turns.map(({ theirs }) => theirs)),
    ratioToWhole: median(turns.map(({ theirs, whole }) => theirs / whole)),
    ratioToMarch: median(turns.map(({ theirs, march }) => theirs / march)),
  };
  return { ours, theirs };
}

function repeat(work) {
  for (let i = 0; i < perRound; i += 1) work();
}

async function measureFirst() {
  const { cycle } = await engine('index.js');
  return { first_ms: cpu_us(() => cycle(inputs[name])) / 1000 };
}

const steps = (count, from, to) => Array.from({ length: count }, (_, i) => from + (i * (to - from)) / (count - 1));

async function measureMap() {
  const { cycleMap } = await engine('index.js');
  const { mapOnAllCores } = await import(at('cli/dist/map-on-all-cores.js'));
  const { probes, ...rest } = constant;
  const map = { shift_K: steps(40, -20, 20), dwell_s: steps(40, 20, 580), pressure_Pa: [1e5, 2e5, 3e5] };
  const input = { ...rest, map };
  const alone = () => [...cycleMap(input)].flat();
  const points = alone();
  const times = Array.from({ length: brief ? 1 : 5 }, () => cpu_us(alone));
  const began = performance.now();
  const shared = await mapOnAllCores(input, { worthwhile_ms: 0 });
  const allCores_s = (performance.now() - began) / 1000;
  const peer = buildPeer();
  const grid = await gridOf(constant);
  const found = peer && (await toleranceOf(peer, grid));
  const [theirs] = peer ? runPeer(peer, constant, grid, { tolerances: [found], map: [40, 40, 3] }) : [];
  const same = JSON.stringify(points) === JSON.stringify(shared);
  return { ours_s: median(times) / 1e6, allCores_s, same, theirs_s: theirs && theirs.time_us / 1e6 };
}

async function toleranceOf(peer, grid) {
  const [reference, ...all] = runPeer(peer, constant, grid, { times_s, tolerances: [exact_K, ...tolerances_K] });
  return all.find((one) => isExact(offOf(one, reference))).tolerance;
}

const measurements = { cycle: () => measureCycle(inputs[name]), first: measureFirst, map: measureMap };
console.log(JSON.stringify(await measurements[what]()));
