import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import type { TestProject } from 'vitest/node';
import { startServer } from '../../../../server/src/index.ts';

const root = new URL('../../../../', import.meta.url);
const pathOf = (relative: string) => fileURLToPath(new URL(relative, root));

/** Where the page built for the tests lies; never the folder that `npm start` serves. */
export const webFolder = pathOf('.cache/web-for-tests');
export const demoFolder = pathOf('demo');

declare module 'vitest' {
  export interface ProvidedContext {
    readonly address: string;
  }
}

/** Builds the page from the sources and serves it with the demo plant, by the server people start. */
export default async function serveDemo(project: TestProject): Promise<() => Promise<void>> {
  await buildPage();
  const server = await startServer({ plantFolder: demoFolder, demo: true, port: 0, webFolder });
  project.provide('address', server.address);
  return () => server.close();
}

/** As people get it: the test run's own mode would give the page the slow parts meant for its makers. */
async function buildPage(): Promise<void> {
  const { NODE_ENV: before = 'test' } = process.env;
  process.env['NODE_ENV'] = 'production';
  await build({ configFile: pathOf('web/vite.config.ts'), logLevel: 'warn', build: { outDir: webFolder } });
  process.env['NODE_ENV'] = before;
}
