import { at, program } from '../tools/root.mjs';
import { runNode } from '../tools/run.mjs';

const compiled = await runNode(program('typescript/bin/tsc'), ['-b', 'engine'], { timeout_s: 300 });
if (compiled.code !== 0) {
  console.error(`${compiled.output}\nThe engine does not compile. Mend what is named above, then: npm run bench`);
  process.exit(1);
}
const { beltPath, pathKernel, pathKernelOut } = await import(at('engine/dist/loop/index.js'));

const rounds = 15;
const perRound = 40_000;

/** Twelve pulleys of a live-roller loop: two ends, drive and take-up under the bed between snubs, four carriers of the return strand. */
const layout = [
  [0, 0, 50, 1],
  [700, -112, 20, 1],
  [1400, -112, 20, 1],
  [2890, -90, 40, -1],
  [3000, -330, 80, 1],
  [3110, -90, 40, -1],
  [3690, -90, 40, -1],
  [3800, -330, 60, 1],
  [3910, -90, 40, -1],
  [4600, -112, 20, 1],
  [5300, -112, 20, 1],
  [6000, 0, 50, 1],
];

/** Median time of one call in nanoseconds of processor time, with the fastest and slowest round. */
function measure(call) {
  call(perRound);
  const times = Array.from({ length: rounds }, () => {
    const before = process.cpuUsage();
    call(perRound);
    const { user, system } = process.cpuUsage(before);
    return ((user + system) * 1000) / perRound;
  }).sort((a, b) => a - b);
  return { median: times[(rounds - 1) / 2], fastest: times[0], slowest: times[rounds - 1] };
}

/** Length and all derivatives of twelve pulleys; the take-up moves from call to call, so that nothing can be kept. */
function kernelCalls() {
  const columns = [0, 1, 2].map((column) => Float64Array.from(layout, (row) => row[column] / 1000));
  const [xs, ys, radii] = columns;
  layout.forEach(([, , , sign], i) => {
    radii[i] *= sign;
  });
  const out = pathKernelOut(layout.length);
  return (count) => {
    let sum = 0;
    for (let i = 0; i < count; i += 1) {
      ys[7] = -0.33 - 1e-6 * (i % 1000);
      sum += pathKernel(xs, ys, radii, out) + out.wraps_rad[4] + out.dLength_dY[7];
    }
    if (!(sum > 0)) throw new Error('the kernel gave no length');
  };
}

/** The checked path of the same loop, with everything that refuses a wrong layout. */
function pathCalls() {
  const pulleys = layout.map(([x, y, r, sign]) => ({
    x_m: x / 1000,
    y_m: y / 1000,
    surfaceRadius_m: r / 1000,
    turn: sign > 0 ? 'left' : 'right',
  }));
  const belt = { thickness_m: 0, neutralLineFromRunningFace_m: 0 };
  return (count) => {
    for (let i = 0; i < count / 20; i += 1) beltPath({ pulleys, belt });
  };
}

function line(name, { median, fastest, slowest }, goal) {
  const rate = Math.round(1e9 / median).toLocaleString('en');
  const spread = `${fastest.toFixed(0)} to ${slowest.toFixed(0)}`;
  console.log(`${name}\n  ${median.toFixed(0)} ns (${spread}), ${rate} evaluations per second${goal}\n`);
}

console.log(`Processor time on this machine, median of ${rounds} rounds; Node ${process.versions.node}.\n`);
line(
  'Belt length with all derivatives, 12 pulleys',
  measure(kernelCalls()),
  '\n  goal: at most 300 ns (3,333,333 per second), good: 230 ns (4,347,826 per second)',
);
const checked = measure(pathCalls());
line(
  'The same with every check of the layout',
  { median: checked.median * 20, fastest: checked.fastest * 20, slowest: checked.slowest * 20 },
  '',
);
