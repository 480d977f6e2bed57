import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, posix } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { importsOf, type Package, packages, root, sourcesOf, textOf } from './sources.ts';

/** Which of our packages each may import. */
const may: Readonly<Record<Package, readonly Package[]>> = {
  engine: [],
  plant: ['engine'],
  records: ['engine', 'plant'],
  jobs: ['engine', 'plant', 'records'],
  words: [],
  sheets: ['engine', 'plant', 'records', 'jobs', 'words'],
  server: ['engine', 'plant', 'records', 'jobs', 'words', 'sheets'],
  cli: ['engine', 'plant', 'records', 'jobs', 'words', 'sheets'],
  web: ['engine', 'plant', 'records', 'jobs', 'words', 'sheets'],
};

/** Packages that run in a browser as they are. */
const nodeFree: readonly Package[] = ['engine', 'plant', 'records', 'jobs', 'words', 'web'];

/** The package of ours that an import leads to, however it is written. */
function target(file: string, specifier: string): string | undefined {
  if (specifier.startsWith('@loopwright/')) return specifier.split('/')[1];
  return specifier.startsWith('.') ? posix.join(dirname(file), specifier).split('/')[0] : undefined;
}

function crossings(name: Package, file: string, source: string): string[] {
  return importsOf(source).flatMap((specifier) => {
    const to = target(file, specifier);
    const wrong = to !== undefined && to !== name && !may[name].includes(to as Package);
    const across = specifier.startsWith('.') && to !== name;
    const node = specifier.startsWith('node:') && nodeFree.includes(name);
    return wrong || across || node ? [`${file} imports ${specifier}`] : [];
  });
}

describe.each(packages)('%s', (name) => {
  it('[HOUSE-01] imports only what stands below it, and across packages only by name', () => {
    const files = sourcesOf(name);
    expect(files.length).toBeGreaterThan(0);
    expect(files.flatMap((file) => crossings(name, file, textOf(file)))).toEqual([]);
  });

  it('[HOUSE-02] declares each package it imports, and no other of ours', () => {
    const { dependencies = {}, devDependencies = {} } = JSON.parse(textOf(`${name}/package.json`));
    const declared = Object.keys({ ...dependencies, ...devDependencies }).filter((each) =>
      each.startsWith('@loopwright/'),
    );
    for (const each of declared) expect(may[name]).toContain(each.slice('@loopwright/'.length));
  });
});

it('[HOUSE-03] the scan sees imports in every way they can be written', () => {
  const source = [
    "import { a } from '@loopwright/jobs';",
    "import type { b } from '../../records/src/index.ts';",
    "export * from '@loopwright/words';",
    "const c = await import('node:fs');",
    "import '@loopwright/web/style.css';",
  ].join('\n');
  expect(crossings('engine', 'engine/src/a.ts', source)).toHaveLength(5);
});

const forbidden: readonly (readonly [Package, string])[] = [
  ['engine', '@loopwright/plant'],
  ['engine', 'node:fs'],
  ['plant', '@loopwright/records'],
  ['records', '@loopwright/jobs'],
  ['jobs', '@loopwright/words'],
  ['words', '@loopwright/engine/loop'],
  ['sheets', '@loopwright/cli'],
  ['server', '@loopwright/web'],
  ['cli', '@loopwright/server'],
  ['web', '@loopwright/server'],
];

describe('lint', () => {
  let place: string;
  let said: string;

  beforeAll(() => {
    place = mkdtempSync(join(tmpdir(), 'loopwright-lint-'));
    for (const name of ['biome.json', '.gitignore']) cpSync(join(root, name), join(place, name));
    forbidden.forEach(([name, specifier], i) => {
      mkdirSync(join(place, name, 'src'), { recursive: true });
      writeFileSync(
        join(place, name, `src/wrong-${i}.ts`),
        `import { a } from '${specifier}';\n\nexport const b = a;\n`,
      );
    });
    const biome = join(root, 'node_modules/@biomejs/biome/bin/biome');
    const { stdout, stderr } = spawnSync(process.execPath, [biome, 'lint'], { cwd: place, encoding: 'utf8' });
    said = stdout + stderr;
  });

  afterAll(() => rmSync(place, { recursive: true }));

  it.each(forbidden.map(([name, specifier], i) => ({ name, specifier, i })))(
    '[HOUSE-04] the lint rule bites: $name may not import $specifier',
    ({ name, i }) => {
      expect(said).toMatch(new RegExp(`${name}/src/wrong-${i}\\.ts:1:\\d+ lint/style/noRestrictedImports`));
    },
  );
});
