import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { createServer, type IncomingMessage, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join, normalize } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';

/** Builds a page that is never part of what is served to people; packed as people get it, or readable. */
async function buildTestPage(name: string, folder: string, minify: boolean): Promise<void> {
  await build({
    configFile: false,
    root: fileURLToPath(new URL(`./${name}`, import.meta.url)),
    publicDir: false,
    resolve: { conditions: ['source', 'module', 'browser', 'development|production'] },
    logLevel: 'warn',
    build: { outDir: folder, minify, emptyOutDir: true },
  });
}

export interface StoreServer {
  readonly address: string;
  close(): Promise<void>;
}

type Hear = (path: string, body: Buffer) => void;

/**
 * Builds and serves the page that holds the store alone, and hears what it tells. What was heard lies outside of the
 * browser, so it outlives it.
 *
 * @param onTold - path and body of each message
 */
export function serveStorePage(onTold: Hear = () => undefined): Promise<StoreServer> {
  return serveTestPage('store-page', { onTold, minify: false });
}

/** Builds and serves the page that takes photos and holds nothing else; hears what it tells. */
export function servePhotoPage(onTold: Hear = () => undefined): Promise<StoreServer> {
  return serveTestPage('photo-page', { onTold, minify: false });
}

/** Builds and serves the page that holds the log alone, packed as people get it. */
export function serveVectorsPage(): Promise<StoreServer> {
  return serveTestPage('vectors-page', { onTold: () => undefined, minify: true });
}

interface Serving {
  readonly onTold: Hear;
  readonly minify: boolean;
}

async function serveTestPage(name: string, { onTold, minify }: Serving): Promise<StoreServer> {
  const folder = await mkdtemp(join(tmpdir(), `${name}-`));
  await buildTestPage(name, folder, minify);
  const server = createServer((request, response) => {
    void (async () => {
      const path = (request.url ?? '/').split('?')[0] ?? '/';
      if (request.method === 'POST') {
        const body = await bodyOf(request);
        if (body !== undefined) onTold(path, body);
        response.writeHead(204).end();
        return;
      }
      const file = path === '/' ? 'index.html' : normalize(path);
      const content = await readFile(join(folder, file)).catch(() => undefined);
      response.writeHead(content === undefined ? 404 : 200, { 'content-type': typeOf(file) }).end(content);
    })();
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  return { address: `http://localhost:${port}`, close: () => stop(server, folder) };
}

async function stop(server: Server, folder: string): Promise<void> {
  server.close();
  server.closeAllConnections();
  await rm(folder, { recursive: true, force: true });
}

/** The whole body; undefined when the browser died while it spoke. */
async function bodyOf(request: IncomingMessage): Promise<Buffer | undefined> {
  const pieces: Buffer[] = [];
  try {
    for await (const piece of request) pieces.push(piece as Buffer);
  } catch {
    return undefined;
  }
  return request.complete ? Buffer.concat(pieces) : undefined;
}

function typeOf(file: string): string {
  if (file.endsWith('.css')) return 'text/css';
  return file.endsWith('.html') ? 'text/html' : 'text/javascript';
}
