import { existsSync } from 'node:fs';
import { join } from 'node:path';
import fastifyStatic from '@fastify/static';
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';

/** File names under this folder carry a hash of their content, so they never change. */
const hashedFolder = '/assets/';

/** What lies in these is a file or data, never a place of the page. */
const notPlaces = [hashedFolder, '/icons/', '/api/', '/plant/'];

/**
 * Serves the built page. A link into the page opens it and leaves the rest to the page itself; a missing file
 * stays a missing file.
 */
export async function servePage(app: FastifyInstance, webFolder: string): Promise<void> {
  if (!existsSync(join(webFolder, 'index.html')))
    throw new Error(`There is no built page in ${webFolder}. Build it: npm run build`);
  await app.register(fastifyStatic, {
    root: webFolder,
    cacheControl: false,
    setHeaders: (reply, path) =>
      reply.header('cache-control', isHashed(path, webFolder) ? 'public, max-age=31536000, immutable' : 'no-cache'),
  });
  app.setNotFoundHandler((request, reply) =>
    opensPage(request) ? reply.sendFile('index.html') : notFound(request, reply),
  );
}

function isHashed(path: string, webFolder: string): boolean {
  return path.slice(webFolder.length).replaceAll('\\', '/').startsWith(hashedFolder);
}

/**
 * True when a person opened an address in the browser, and not when the page fetches a file that is not there. The name
 * of a thing may end like that of a file (`/card/QM-04.3`), so an ending counts only at the top.
 */
function opensPage({ method, headers, url }: FastifyRequest): boolean {
  const path = url.split('?')[0] ?? '';
  const isFile = /^\/[^/]+\.[a-z0-9]+$/i.test(path) || notPlaces.some((folder) => path.startsWith(folder));
  return (method === 'GET' || method === 'HEAD') && !isFile && (headers.accept ?? '').includes('text/html');
}

function notFound({ method, url }: FastifyRequest, reply: FastifyReply): FastifyReply {
  return reply.code(404).send({ message: `There is nothing at ${method} ${url.slice(0, 200)}.` });
}
