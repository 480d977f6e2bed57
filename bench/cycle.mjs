import { spawnSync } from 'node:child_process';
import { availableParallelism, cpus } from 'node:os';
import { at, program } from '../tools/root.mjs';
import { runNode } from '../tools/run.mjs';
import { buildPeer } from './cycle/peer.mjs';

// A whole press cycle and a map of 4,800 of them, beside the same cells marched by SUNDIALS CVODE. Only ratios of one run
// mean anything: each case has a process of its own, in which both programs take turns.
const compiled = await runNode(program('typescript/bin/tsc'), ['-b', 'cli'], { timeout_s: 600 });
if (compiled.code !== 0) {
  console.error(`${compiled.output}\nThe packages do not compile. Mend what is named above, then: npm run bench`);
  process.exit(1);
}
const peer = buildPeer();
const machine = `${availableParallelism()} cores of ${cpus()[0]?.model.trim() ?? 'a processor'}, Node ${process.versions.node}`;
console.log(`Processor time on this machine, medians; ${machine}.`);
if (peer === undefined) console.log('No C compiler or no SUNDIALS (libsundials-dev): our own numbers alone.');

const cases = {
  constant: { title: 'Constant properties, proportional control, middle of the belt', must: 12, good: 20 },
  general: {
    title: 'Properties over temperature, melting, PI control, lead, all depths of the belt',
    must: 5,
    good: 12,
  },
};
const brief = process.env.LW_BENCH === 'brief';
if (brief) console.log('LW_BENCH=brief: a brief run to see that everything works. Its times mean nothing.');
const first = { must_ms: 30, processes: brief ? 1 : 9 };
const map = { must: 15, good: 45 };

/** A measurement in a process of its own, which prints one JSON text. */
function measured(...words) {
  const ran = spawnSync(process.execPath, [at('bench/cycle/measure.mjs'), ...words], { encoding: 'utf8' });
  if (ran.status !== 0) throw new Error(`${words.join(' ')} stopped with ${ran.status}: ${ran.stderr}`);
  return JSON.parse(ran.stdout);
}

const verdict = (value, { must, good }) => (value >= good ? 'good' : value >= must ? 'must met' : 'MISSED');
const us = (time_us) => `${(time_us / 1000).toFixed(3)} ms`;

function printOff(name, { off, steps }) {
  const { middle_K, ready_s, open_s } = off;
  const times = `ready ${ready_s.toFixed(3)} s, open ${open_s.toFixed(3)} s`;
  console.log(`  ${name.padEnd(7)} ${String(steps).padStart(4)} steps; off: middle ${middle_K.toFixed(4)} K, ${times}`);
}

for (const [name, { title, ...goal }] of Object.entries(cases)) {
  const { ours, theirs } = measured('cycle', name);
  console.log(`\n${title}; ${ours.unknowns} unknowns`);
  printOff('ours', ours);
  if (theirs) printOff('CVODE', theirs);
  console.log(`  ours    ${us(ours.whole_us)} with checks, grid and answer; ${us(ours.march_us)} the march alone`);
  if (!theirs) continue;
  console.log(
    `  CVODE   ${us(theirs.march_us)} the march alone, at ${theirs.tolerance_K} K, the loosest that is as exact`,
  );
  const [whole, march] = [theirs.ratioToWhole, theirs.ratioToMarch];
  const goals = `must ${goal.must}, good ${goal.good}`;
  console.log(`  CVODE takes ${whole.toFixed(1)} times as long as our whole call: ${verdict(whole, goal)} (${goals})`);
  console.log(`  CVODE takes ${march.toFixed(1)} times as long as our march: ${verdict(march, goal)} (${goals})`);
}

console.log('\nFirst cycle in a fresh process, modules loaded before');
for (const name of Object.keys(cases)) {
  const times = Array.from({ length: first.processes }, () => measured('first', name).first_ms).sort((a, b) => a - b);
  const median_ms = times[(first.processes - 1) / 2];
  const spread = `${times[0].toFixed(1)} to ${times.at(-1).toFixed(1)}`;
  const met = median_ms <= first.must_ms ? 'must met' : 'MISSED';
  console.log(`  ${median_ms.toFixed(1)} ms (${spread}) of the case "${name}": ${met} (must ${first.must_ms})`);
}

const whole = measured('map');
console.log(`\nMap of 40 shifts x 40 dwells x 3 pressures, constant properties, heat-up and history shared
  ours, one thread  ${whole.ours_s.toFixed(3)} s
  ours, all cores   ${whole.allCores_s.toFixed(3)} s on the clock, threads started and ended within, the same bit by bit: ${whole.same ? 'yes' : 'NO'}`);
if (whole.theirs_s !== undefined) {
  const ratio = whole.theirs_s / whole.ours_s;
  console.log(`  CVODE, one thread ${whole.theirs_s.toFixed(3)} s, each cycle by itself
  CVODE takes ${ratio.toFixed(1)} times as long on one thread: ${verdict(ratio, map)} (must ${map.must}, good ${map.good})`);
}
