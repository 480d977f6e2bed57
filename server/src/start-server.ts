import fastify, { type FastifyInstance } from 'fastify';
import { isOwnHost } from './own-host.ts';
import { servePage } from './page-files.ts';
import { plantRoute } from './plant-route.ts';
import { refuseTooLarge } from './say.ts';
import { securityHeaders } from './security-headers.ts';
import { bodyLimit_bytes, solveRoute } from './solve-route.ts';

export interface ServerOptions {
  /** Folder with the plant's files. */
  readonly plantFolder: string;
  /** True for the invented plant; the page marks it so. */
  readonly demo?: boolean;
  /** Port to try first; 0 takes any free one. */
  readonly port: number;
  /** Folder with the built page. */
  readonly webFolder: string;
  /** Told when a port is busy and the next one is tried. */
  readonly onBusyPort?: (busy: number, next: number) => void;
}

export interface RunningServer {
  readonly address: string;
  close(): Promise<void>;
}

/** Only this computer is served: there are no users and no passwords yet. */
const ownAddress = '127.0.0.1';
const portsToTry = 50;

/**
 * Starts the server of the page, the plant and the topics on this computer.
 * @returns its address and the way to stop it
 * @throws Error with one sentence when there is no built page or no free port
 */
export async function startServer(options: ServerOptions): Promise<RunningServer> {
  const app = fastify({ bodyLimit: bodyLimit_bytes, forceCloseConnections: true });
  app.addHook('onRequest', async (request, reply) => {
    if (!isOwnHost(request.headers.host))
      return reply.code(403).send({ message: 'This server answers to localhost only. Open http://localhost.' });
  });
  app.addHook('onSend', async (_request, reply) => {
    reply.headers(securityHeaders);
    if (!reply.hasHeader('cache-control')) reply.header('cache-control', 'no-store');
  });
  answerProblems(app);
  app.get('/health', async () => ({ status: 'ok' }));
  plantRoute(app, options.plantFolder, options.demo ?? false);
  solveRoute(app);
  await servePage(app, options.webFolder);
  const port = await listen(app, options);
  return { address: `http://localhost:${port}`, close: () => app.close() };
}

/** Nobody outside learns more of a mishap than one sentence; the terminal that started the server gets its name. */
function answerProblems(app: FastifyInstance): void {
  app.setErrorHandler<Error & { statusCode?: number; code?: string }>((problem, request, reply) => {
    if (problem.code === 'FST_ERR_CTP_BODY_TOO_LARGE') {
      const size = Number(request.headers['content-length']);
      return reply.code(413).send(refuseTooLarge(size, bodyLimit_bytes));
    }
    const code = problem.statusCode ?? 500;
    if (code >= 500) console.error(`${request.method} ${request.url}: ${problem.message}`);
    const message = code >= 500 ? 'The server could not answer. Its terminal says why.' : problem.message;
    return reply.code(code).send({ message });
  });
}

async function listen(app: FastifyInstance, { port, onBusyPort }: ServerOptions): Promise<number> {
  const last = Math.min(port + portsToTry, 65535);
  for (let candidate = port; candidate <= last; candidate += 1) {
    try {
      await app.listen({ host: ownAddress, port: candidate });
      const bound = app.server.address();
      return typeof bound === 'object' && bound !== null ? bound.port : candidate;
    } catch (problem) {
      if ((problem as { code?: string }).code !== 'EADDRINUSE' || candidate === last) throw unheard(candidate, problem);
      onBusyPort?.(candidate, candidate + 1);
    }
  }
  throw unheard(last, undefined);
}

function unheard(port: number, cause: unknown): Error {
  return new Error(`Port ${port} cannot be used. Name another: npm start -- --port 5000`, { cause });
}
