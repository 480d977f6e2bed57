import './node-version.mjs';
import { runStages } from './report.mjs';
import { setUp } from './setup.mjs';
import * as stages from './stages.mjs';

// The same tests with a hundred times the random cases, for a night; LW_RUNS and LW_KILLS override the numbers.
const runs = process.env.LW_RUNS ?? '200000';
const kills = process.env.LW_KILLS ?? '1000';
const hours = 12;

const all = {
  unit: stages.unit(
    { LW_RUNS: runs, LW_SOAK: '1', LW_TEST_TIMEOUT_MS: String(hours * 3_600_000) },
    { timeout_s: hours * 3600 },
  ),
  verifiers: stages.verifiers({ LW_RUNS: runs, LW_SOAK: '1' }, hours * 3600),
  kills: stages.browserKills(kills, hours * 3600),
};
// A part of the unit tests, to be had alone.
const alone = ['verifiers'];
const asked = process.argv.slice(2);
const unknown = asked.find((name) => !Object.hasOwn(all, name));
if (unknown !== undefined) {
  console.error(`There is no stage "${unknown}". Use: npm run soak -- [${Object.keys(all).join('] [')}]`);
  process.exit(2);
}

await setUp();
const every = Object.keys(all).filter((name) => !alone.includes(name));
await runStages((asked.length === 0 ? every : asked).map((name) => all[name]));
