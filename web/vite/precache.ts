import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Plugin, type ResolvedConfig, transformWithOxc } from 'vite';

const workerSource = 'service-worker/service-worker.ts';
const workerFile = 'service-worker.js';
const page = 'index.html';
/** Stands in the page's source where a build writes its version. */
const versionMark = 'content="development"';

type File = readonly [name: string, content: string | Uint8Array];

/**
 * Gives a build its version, a hash over every file of it: the page carries it, and `service-worker.js` carries it
 * with the list of files to keep for work without a network.
 */
export function precache(): Plugin {
  let config: ResolvedConfig;
  return {
    name: 'precache',
    apply: 'build',
    enforce: 'post',
    configResolved: (resolved) => {
      config = resolved;
    },
    generateBundle: {
      order: 'post',
      async handler(_options, bundle) {
        const built = Object.values(bundle).map(
          (output): File => [output.fileName, output.type === 'chunk' ? output.code : output.source],
        );
        const files = [...built, ...publicFiles(config.publicDir)].toSorted(([a], [b]) => (a < b ? -1 : 1));
        const version = versionOf(files);
        markPage(bundle[page], version);
        const names = files.map(([name]) => (name === page ? '/' : `/${name}`));
        const source = await workerCode(config.root, { version, files: names });
        this.emitFile({ type: 'asset', fileName: workerFile, source });
      },
    },
  };
}

function publicFiles(folder: string): readonly File[] {
  const entries = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
  return entries.map((entry) => {
    const path = join(entry.parentPath, entry.name);
    return [path.slice(folder.length + 1).replaceAll('\\', '/'), readFileSync(path)];
  });
}

function versionOf(files: readonly File[]): string {
  const hash = createHash('sha256');
  for (const [name, content] of files) hash.update(`${name}\0${content.length}\0`).update(content);
  return hash.digest('hex').slice(0, 12);
}

function markPage(output: { type: string; source?: string | Uint8Array } | undefined, version: string): void {
  if (output?.type !== 'asset' || !String(output.source).includes(versionMark))
    throw new Error(`${page} has no place for the version: ${versionMark}`);
  output.source = String(output.source).replace(versionMark, `content="${version}"`);
}

async function workerCode(root: string, list: { version: string; files: readonly string[] }): Promise<string> {
  const path = join(root, workerSource);
  const { code } = await transformWithOxc(readFileSync(path, 'utf8'), path, { sourcemap: false });
  return `const precache = ${JSON.stringify(list)};\n${code}`;
}
