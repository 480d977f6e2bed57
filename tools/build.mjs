import './node-version.mjs';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { progress } from './progress.mjs';
import { at, program, root } from './root.mjs';
import { runNode } from './run.mjs';
import { setUp } from './setup.mjs';

const stamp = at('.cache/built');
const packages = JSON.parse(readFileSync(at('package.json'), 'utf8')).workspaces;
const outside = ['package-lock.json', 'tsconfig.json', 'tsconfig.base.json'];

/** Which sources the build was made of: path, size and time of each, hashed. */
function sourcesMark() {
  const hash = createHash('sha256').update(process.versions.node);
  for (const file of [...packages.flatMap((name) => filesIn(at(name))), ...outside.map((name) => at(name))]) {
    const { size, mtimeMs } = statSync(file);
    hash.update(`${file}\0${size}\0${mtimeMs}\n`);
  }
  return hash.digest('hex');
}

function filesIn(folder) {
  return readdirSync(folder, { withFileTypes: true })
    .sort((a, b) => (a.name < b.name ? -1 : 1))
    .flatMap((entry) => {
      if (['node_modules', 'dist', 'test'].includes(entry.name) || entry.name.endsWith('.tsbuildinfo')) return [];
      const path = join(folder, entry.name);
      return entry.isDirectory() ? filesIn(path) : [path];
    });
}

/** True when the build is that of the sources as they are now. */
export function isBuilt() {
  const results = ['cli/dist/main.js', 'server/dist/index.js', 'web/dist/index.html'];
  return (
    existsSync(stamp) && results.every((file) => existsSync(at(file))) && readFileSync(stamp, 'utf8') === sourcesMark()
  );
}

/** Compiles all packages, then bundles the page. Returns what failed, or undefined. */
export async function build() {
  rmSync(stamp, { force: true });
  const mark = sourcesMark();
  const steps = [
    { what: 'compiling the packages', file: 'typescript/bin/tsc', args: ['-b'], cwd: root },
    { what: 'bundling the page', file: 'vite/bin/vite.js', args: ['build', '--logLevel', 'warn'], cwd: at('web') },
  ];
  for (const step of steps) {
    const line = progress(step.what);
    const result = await runNode(program(step.file), step.args, { timeout_s: 600, cwd: step.cwd, onSecond: line.tick });
    line.end();
    if (result.code !== 0) return { what: step.what, output: result.output };
  }
  mkdirSync(at('.cache'), { recursive: true });
  writeFileSync(stamp, mark);
  return undefined;
}

if (process.argv[1] === at('tools/build.mjs')) {
  await setUp();
  const failure = await build();
  if (failure) {
    console.error(
      `${failure.output}\nThe build stopped while ${failure.what}. Mend what is named above, then: npm run build`,
    );
    process.exit(1);
  }
}
