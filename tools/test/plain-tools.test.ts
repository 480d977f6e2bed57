import { execFileSync, spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, parse } from 'node:path';
import { describe, expect, it } from 'vitest';
import { root, textOf } from './sources.ts';

/** Asks a tool in its own process: the tools are plain JavaScript that runs before anything is installed. */
function ask(tool: string, expression: string): unknown {
  const code = `import * as tool from ${JSON.stringify(join(root, 'tools', tool))}; console.log(JSON.stringify(${expression}));`;
  return JSON.parse(execFileSync(process.execPath, ['--input-type=module', '-e', code], { encoding: 'utf8' }));
}

describe('licences', () => {
  it('[HOUSE-13] every part of an AND must be allowed, one part of an OR suffices', () => {
    const cases = ['MIT', '(MIT AND Zlib)', 'MIT OR GPL-3.0', 'GPL-3.0', 'MIT AND GPL-3.0', 'none stated', ''];
    expect(ask('licences.mjs', `${JSON.stringify(cases)}.map(tool.mayEnter)`)).toEqual([
      true,
      true,
      true,
      false,
      false,
      false,
      false,
    ]);
  });

  it('[HOUSE-14] the list holds every package of the lock file', () => {
    const { packages } = JSON.parse(textOf('package-lock.json')) as { packages: Record<string, { link?: true }> };
    const wanted = Object.entries(packages).filter(
      ([path, { link }]) => path.includes('node_modules/') && link !== true,
    );
    const list = ask('licences.mjs', 'tool.licenceList()') as { name: string; licence: string }[];
    expect(list).toHaveLength(wanted.length);
    expect(list.length).toBeGreaterThan(100);
    expect(list.find(({ name }) => name === 'typescript')).toMatchObject({ licence: 'Apache-2.0' });
  });
});

describe('set-up', () => {
  it.each([
    ['npm error code ENOTFOUND request to https://registry failed', 'npm ping'],
    ['npm error code EACCES permission denied, mkdir', 'chown'],
    ['npm error ENOSPC: no space left on device', 'df -h'],
    [
      'npm error `npm ci` can only install packages when your package.json and package-lock.json are in sync',
      'npm install',
    ],
    ['npm error something new', 'npm ci'],
  ])('[HOUSE-15] a failed installation is explained with the command that mends it: %s', (output, command) => {
    const sentence = ask('setup.mjs', `tool.explainInstall(${JSON.stringify({ output })})`);
    expect(sentence).toContain(command);
    expect(String(sentence).split('\n')).toHaveLength(1);
  });

  it('[HOUSE-16] the commands import only what Node brings until the packages are installed', () => {
    const commands = ['setup', 'start', 'test', 'check', 'soak', 'build'].map((name) => `tools/${name}.mjs`);
    const files = new Set(commands);
    for (const file of files) {
      const early = [...textOf(file).matchAll(/^import .*?'([^']+)';$/gm)].map((match) => match[1] ?? '');
      expect(early.filter((name) => !/^(node:|\.\/)/.test(name))).toEqual([]);
      for (const name of early) if (name.startsWith('./')) files.add(`tools/${name.slice(2)}`);
    }
    expect(files.size).toBeGreaterThan(commands.length);
  });

  it('[HOUSE-17] an old Node is told in one sentence what to run instead', () => {
    const check = textOf('tools/node-version.mjs').replaceAll('process.versions.node', "'18.20.4'");
    const place = mkdtempSync(join(tmpdir(), 'loopwright-node-'));
    writeFileSync(join(place, 'check.mjs'), check);
    const { status, stderr } = spawnSync(process.execPath, [join(place, 'check.mjs')], { encoding: 'utf8' });
    rmSync(place, { recursive: true });
    expect(status).toBe(1);
    expect(stderr.trim().split('\n')).toHaveLength(1);
    expect(stderr).toContain('npx -y -p node@24 npm');
  });

  it('[HOUSE-18] what is installed is compared with the lock file, package by package', () => {
    const place = mkdtempSync(join(tmpdir(), 'loopwright-lock-'));
    cpSync(join(root, 'tools'), join(place, 'tools'), { recursive: true });
    const isInstalled = () => {
      const code = `import { isInstalled } from ${JSON.stringify(join(place, 'tools/setup.mjs'))}; console.log(isInstalled());`;
      return execFileSync(process.execPath, ['--input-type=module', '-e', code], { encoding: 'utf8' }).trim();
    };
    const lock = (version: string) => JSON.stringify({ packages: { '': {}, 'node_modules/a': { version } } });
    writeFileSync(join(place, 'package-lock.json'), lock('1.0.1'));
    expect(isInstalled()).toBe('false');
    cpSync(join(place, 'package-lock.json'), join(place, 'node_modules/.package-lock.json'));
    expect(isInstalled()).toBe('true');
    writeFileSync(join(place, 'package-lock.json'), lock('1.0.2'));
    expect(isInstalled()).toBe('false');
    rmSync(place, { recursive: true });
  });
});

describe('start', () => {
  it.each([
    [['--port', 'abc'], '--port'],
    [['--port', '0'], '--port'],
    [['--port', '70000'], '--port'],
    [['--plant', join(parse(root).root, 'no-such-plant')], 'no-such-plant'],
    [['--colour'], '--colour'],
  ])('[HOUSE-19] a start that makes no sense ends at once with one sentence: %j', (args, named) => {
    const { status, stdout, stderr } = spawnSync(process.execPath, [join(root, 'tools/start.mjs'), ...args], {
      encoding: 'utf8',
    });
    expect(status).toBe(2);
    expect(stdout).toBe('');
    expect(stderr.trim().split('\n')).toHaveLength(1);
    expect(stderr).toContain(named);
  });
});
