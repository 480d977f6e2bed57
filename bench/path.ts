import { pathKernel, pathKernelOut } from '../engine/src/loop/path-kernel.ts';

interface BenchLine {
  readonly name: string;
  readonly value: number;
  readonly unit: string;
  readonly goal: string;
}

const evaluations = 500_000;

/** CPU time of one evaluation, the median of several rounds; every evaluation gets another layout. */
function nanoseconds(): number {
  const count = 12;
  const angle = (i: number) => (i / count) * 2 * Math.PI;
  const xs = Float64Array.from({ length: count }, (_, i) => 2 * Math.cos(angle(i)));
  const ys = Float64Array.from({ length: count }, (_, i) => Math.sin(angle(i)));
  const radii = Float64Array.from({ length: count }, (_, i) => 0.05 + 0.01 * (i % 3));
  const out = pathKernelOut(count);
  const rounds = Array.from({ length: 9 }, () => {
    const start = process.cpuUsage();
    let sum = 0;
    for (let i = 0; i < evaluations; i++) {
      xs[0] = 2 + i * 1e-9;
      sum += pathKernel(xs, ys, radii, out);
    }
    if (!(sum > 0)) throw new Error('the kernel gave no length');
    const spent = process.cpuUsage(start);
    return ((spent.user + spent.system) * 1000) / evaluations;
  });
  return rounds.sort((a, b) => a - b)[4] as number;
}

/** Belt length of 12 pulleys with the derivatives by every radius and centre. */
export function run(): BenchLine[] {
  const each_ns = nanoseconds();
  return [
    { name: 'belt length, 12 pulleys, all derivatives', value: each_ns, unit: 'ns', goal: '<= 300 (good: <= 230)' },
    {
      name: 'evaluations per second',
      value: 1e9 / each_ns,
      unit: '1/s',
      goal: '>= 3.3 million (good: >= 4.3 million)',
    },
  ];
}

if (process.argv[1] === import.meta.filename) {
  for (const { name, value, unit, goal } of run()) console.log(`${name}: ${Math.round(value)} ${unit}; goal ${goal}`);
}
