import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { build } from './build.mjs';
import { findChromium } from './chromium.mjs';
import { checkLicences } from './licences.mjs';
import { at, program } from './root.mjs';
import { run, runNode } from './run.mjs';

/**
 * The stages of the checks, in the order they run. Each returns `{passed, failed, note?, output?}`;
 * one that is no test run counts as one test.
 */

/** Turns a program's end into a stage's result. */
function verdict(result, advice) {
  if (result.code === 0 && !result.timedOut) return { passed: 1, failed: 0 };
  const note = result.timedOut ? `took too long and was stopped. ${advice}` : advice;
  return { passed: 0, failed: 1, note, output: result.output };
}

async function tool(file, args, timeout_s, advice) {
  return verdict(await runNode(program(file), args, { timeout_s }), advice);
}

/** Runs Vitest and counts what it counted; a run that reports nothing is a failed test. */
export async function vitest(name, args, { timeout_s, env = {}, node = process.execPath, nodeArgs = [] }) {
  const report = at(`.cache/tests/${name}.json`);
  mkdirSync(at('.cache/tests'), { recursive: true });
  rmSync(report, { force: true });
  const result = await run(
    node,
    [
      ...nodeArgs,
      program('vitest/vitest.mjs'),
      'run',
      ...args,
      '--reporter=default',
      '--reporter=json',
      `--outputFile.json=${report}`,
    ],
    { timeout_s, show: true, env },
  );
  if (!existsSync(report))
    return {
      passed: 0,
      failed: 1,
      note: result.timedOut ? `stopped after ${timeout_s} s` : 'no test report was written',
    };
  return counted(JSON.parse(readFileSync(report, 'utf8')), result);
}

/** A file that could not be loaded has no failed test of its own, so it is counted as one. */
function counted(report, result) {
  const broken = report.testResults.filter((file) => file.status === 'failed' && !file.assertionResults.some(isFailed));
  const failed = report.numFailedTests + broken.length;
  const silent = result.code !== 0 && failed === 0 ? 1 : 0;
  const nothing = report.numPassedTests + failed === 0 ? 1 : 0;
  return { passed: report.numPassedTests, failed: failed + Math.max(silent, nothing) };
}

function isFailed(test) {
  return test.status === 'failed';
}

export const lint = {
  name: 'format and lint',
  run: () =>
    tool(
      '@biomejs/biome/bin/biome',
      ['check', '--error-on-warnings', '--max-diagnostics=100'],
      180,
      'Mend what can be mended alone: npm run format',
    ),
};

export const types = {
  name: 'types',
  async run() {
    const sources = await tool('typescript/bin/tsc', ['-b'], 400, 'Mend the types named above.');
    if (sources.failed > 0) return sources;
    return tool(
      'typescript/bin/tsc',
      ['-p', 'tsconfig.tests.json', '--incremental', '--tsBuildInfoFile', '.cache/tests/types.tsbuildinfo'],
      400,
      'Mend the types of the tests named above.',
    );
  },
};

export const unused = {
  name: 'unused code',
  run: () =>
    tool('knip/bin/knip.js', ['--no-progress'], 240, 'Remove what nothing uses, or name it as an entry in knip.json.'),
};

export const licences = { name: 'licence list', run: checkLicences };

export function unit(env, { timeout_s = 1200, without = [] } = {}) {
  const args = without.map((pattern) => `--exclude=${pattern}`);
  return { name: 'unit, property and document tests', run: () => vitest('unit', args, { timeout_s, env }) };
}

/** Both verifiers on records tampered with in every way, and on nothing else. */
export function verifiers(env, timeout_s) {
  const file = 'records/test/verifier/verifiers-agree.test.ts';
  return { name: 'both verifiers', run: () => vitest('verifiers', [file], { timeout_s, env }) };
}

/** The validation book is a result of the tests: what they wrote must be what is in the repository. */
export const book = {
  name: 'validation book unchanged',
  async run() {
    if (!existsSync(at('.git'))) return { passed: 0, failed: 0, note: 'skipped: this is no git clone' };
    const changed = await run('git', ['diff', '--exit-code', '--stat', '--', 'docs/validation'], { timeout_s: 60 });
    const added = await run('git', ['ls-files', '--others', '--exclude-standard', '--', 'docs/validation'], {
      timeout_s: 60,
    });
    const advice =
      'The tests wrote other pages than those kept. Look at the differences, then keep them: git add docs/validation';
    return verdict(
      { ...changed, code: changed.code || Number(added.output !== ''), output: changed.output + added.output },
      advice,
    );
  },
};

export const buildAll = {
  name: 'build',
  async run() {
    const failure = await build();
    return failure
      ? { passed: 0, failed: 1, note: `stopped while ${failure.what}`, output: failure.output }
      : { passed: 1, failed: 0 };
  },
};

export const built = {
  name: 'terminal and server, as built',
  run: () => vitest('built', ['--config', 'vitest.built.config.ts'], { timeout_s: 600 }),
};

export const browser = {
  name: 'browser tests',
  async run() {
    const found = await findChromium();
    if (found.sentence) return { passed: 0, failed: 1, note: found.sentence };
    return vitest('browser', ['--config', 'vitest.browser.config.ts'], {
      timeout_s: 1200,
      env: { LW_CHROMIUM: found.path },
    });
  },
};

/** The pure packages once more on a newer Node, when npm can fetch one. */
export const newerNode = {
  name: 'pure packages on Node 24',
  async run() {
    const npx = process.platform === 'win32' ? 'npx.cmd' : 'npx';
    const fetched = await run(npx, ['-y', '-p', 'node@24', 'node', '--version'], { timeout_s: 300 });
    if (fetched.code !== 0) return { passed: 0, failed: 0, note: 'skipped: Node 24 could not be fetched from npm' };
    // Where another Node may differ: its cryptography, its languages, its arithmetic.
    const folders = ['engine/', 'records/test/log', 'words/'];
    return vitest('node24', folders, {
      timeout_s: 900,
      env: { LW_RUNS: '200' },
      node: npx,
      nodeArgs: ['-y', '-p', 'node@24', 'node'],
    });
  },
};

/** The browser killed many times over while it writes; `npm test` does a few dozen. */
export function browserKills(kills, timeout_s) {
  return {
    name: 'browser kills',
    async run() {
      const found = await findChromium();
      if (found.sentence) return { passed: 0, failed: 1, note: found.sentence };
      return vitest(
        'kills',
        [
          '--config',
          'vitest.browser.config.ts',
          'web/test/browser/store-kills.test.ts',
          'web/test/browser/press-run-kills.test.ts',
        ],
        {
          timeout_s,
          env: { LW_CHROMIUM: found.path, LW_KILLS: kills, LW_RUN_KILLS: String(Math.ceil(Number(kills) / 5)) },
        },
      );
    },
  };
}
