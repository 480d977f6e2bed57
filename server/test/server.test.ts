import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { type AddressInfo, createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fold } from '@loopwright/records';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type RunningServer, startServer } from '../src/index.ts';

const demo = join(import.meta.dirname, '../../demo');

let place: string;
let webFolder: string;
let server: RunningServer;

beforeAll(async () => {
  place = mkdtempSync(join(tmpdir(), 'loopwright-server-'));
  webFolder = join(place, 'web');
  mkdirSync(join(webFolder, 'assets'), { recursive: true });
  writeFileSync(join(webFolder, 'index.html'), '<!doctype html><title>page</title>');
  writeFileSync(join(webFolder, 'assets/app-3f2a.js'), 'export {};');
  writeFileSync(join(webFolder, 'service-worker.js'), '');
  writeFileSync(join(webFolder, 'manifest.webmanifest'), '{}');
  server = await startServer({ plantFolder: demo, port: 0, webFolder });
});

afterAll(async () => {
  await server.close();
  rmSync(place, { recursive: true });
});

const port = () => Number(new URL(server.address).port);
const get = (path: string, headers: Record<string, string> = {}) =>
  fetch(`http://127.0.0.1:${port()}${path}`, { headers });
const post = (topic: string, body: string) =>
  fetch(`http://127.0.0.1:${port()}/api/solve/${topic}`, { method: 'POST', body });

/** A request exactly as written, which fetch would tidy up. */
function raw(path: string, host: string): Promise<{ status: number; body: string }> {
  return new Promise((resolve, reject) => {
    const sent = request({ host: '127.0.0.1', port: port(), path, headers: { host } }, (answer) => {
      let body = '';
      answer.on('data', (chunk) => {
        body += chunk;
      });
      answer.on('end', () => resolve({ status: answer.statusCode ?? 0, body }));
    });
    sent.on('error', reject);
    sent.end();
  });
}

describe('page', () => {
  it('[SERVER-01] the page, and any link into it, opens the page', async () => {
    for (const path of ['/', '/lines/QM-04', '/card/QM-04-3?people=2', '/card/QM-04.3']) {
      const answer = await get(path, { accept: 'text/html' });
      expect(answer.status).toBe(200);
      expect(await answer.text()).toContain('<title>page</title>');
    }
  });

  it('[SERVER-02] a missing file stays missing instead of becoming the page', async () => {
    for (const path of ['/nothing.js', '/assets/gone-1.js', '/api/nothing', '/favicon.ico', '/icons/gone.png']) {
      const answer = await get(path, { accept: 'text/html' });
      expect(answer.status).toBe(404);
      expect(await answer.json()).toEqual({ message: `There is nothing at GET ${path}.` });
    }
  });

  it('[SERVER-03] files named by their content are kept for ever, the page is asked for anew, data is not kept', async () => {
    const kept = async (path: string) => (await get(path, { accept: 'text/html' })).headers.get('cache-control');
    expect(await kept('/assets/app-3f2a.js')).toBe('public, max-age=31536000, immutable');
    expect(await kept('/')).toBe('no-cache');
    expect(await kept('/lines')).toBe('no-cache');
    expect(await kept('/service-worker.js')).toBe('no-cache');
    expect(await kept('/plant/events.json')).toBe('no-store');
  });

  it('[SERVER-03] worker and manifest come as what a browser takes them for', async () => {
    const type = async (path: string) => (await get(path)).headers.get('content-type');
    expect(await type('/service-worker.js')).toMatch(/^(text|application)\/javascript/);
    expect(await type('/manifest.webmanifest')).toMatch(/^application\/manifest\+json/);
  });

  it('[SERVER-04] no path leads out of the folder of the page', async () => {
    for (const path of [
      '/../package.json',
      '/..%2fpackage.json',
      '/%2e%2e/%2e%2e/etc/passwd',
      '/assets/../../plant.csv',
    ])
      expect((await raw(path, 'localhost')).status).toBeGreaterThanOrEqual(400);
  });
});

describe('headers', () => {
  it('[SERVER-05] every answer carries the six fixed headers, mistakes included', async () => {
    for (const path of ['/', '/assets/app-3f2a.js', '/plant/events.json', '/nothing', '/health', '/api/solve']) {
      const { headers } = await get(path);
      expect(headers.get('content-security-policy')).toBe(
        "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; img-src 'self' blob:; " +
          "media-src 'self' blob:; font-src 'self'; connect-src 'self'; worker-src 'self'; manifest-src 'self'; form-action 'self'; " +
          "base-uri 'none'; object-src 'none'; frame-ancestors 'none'; require-trusted-types-for 'script'",
      );
      expect(headers.get('x-content-type-options')).toBe('nosniff');
      expect(headers.get('referrer-policy')).toBe('no-referrer');
      expect(headers.get('cross-origin-opener-policy')).toBe('same-origin');
      expect(headers.get('cross-origin-resource-policy')).toBe('same-origin');
      expect(headers.get('permissions-policy')).toContain('geolocation=()');
    }
  });

  it('[SERVER-06] a request under a foreign name is refused, whatever it asks for', async () => {
    for (const host of [
      'plant.example',
      `plant.example:${port()}`,
      'localhost.plant.example',
      '127.0.0.1.plant.example',
    ])
      for (const path of ['/', '/plant/events.json', '/health'])
        expect(await raw(path, host)).toMatchObject({ status: 403, body: expect.stringContaining('localhost') });
    for (const host of ['localhost', 'LOCALHOST:80', `127.0.0.1:${port()}`, '[::1]:4717'])
      expect((await raw('/health', host)).status).toBe(200);
  });
});

describe('plant', () => {
  it('[SERVER-07] the plant comes as events whose fold is the plant', async () => {
    const { events } = (await (await get('/plant/events.json')).json()) as { events: Parameters<typeof fold>[0] };
    const plant = fold(events);
    expect(plant.name).toBe('Quillmoor Crate Works');
    expect(Object.keys(plant.positions)).toHaveLength(60);
  });

  it('[SERVER-08] a plant with a mistake is refused with file, row and sentence; nothing of it is served', async () => {
    const folder = join(place, 'wrong');
    cpSync(demo, folder, { recursive: true });
    writeFileSync(join(folder, 'lines.csv'), 'id,name\nQM-01,Infeed\n');
    const wrong = await startServer({ plantFolder: folder, port: 0, webFolder });
    const answer = await fetch(`${wrong.address.replace('localhost', '127.0.0.1')}/plant/events.json`);
    const body = (await answer.json()) as { problems: { file: string; message: string }[]; events?: unknown };
    await wrong.close();
    expect(answer.status).toBe(422);
    expect(body.events).toBeUndefined();
    expect(body.problems[0]).toMatchObject({ file: 'lines.csv', message: expect.stringContaining('lines.csv') });
  });

  it('[SERVER-09] a plant folder that is gone is one sentence, without path or stack', async () => {
    const gone = await startServer({ plantFolder: join(place, 'gone'), port: 0, webFolder });
    const answer = await fetch(`${gone.address.replace('localhost', '127.0.0.1')}/plant/events.json`);
    const body = await answer.text();
    await gone.close();
    expect(answer.status).toBe(500);
    expect(body).not.toMatch(/at .*\.ts|ENOENT|node_modules|loopwright-server/);
    expect(JSON.parse(body)).toEqual({ message: expect.any(String) });
  });
});

describe('solve', () => {
  it('[SERVER-10] a topic is answered as in the terminal', async () => {
    const answer = await post('edge-slivers', '{"width_m": 0.05, "pitch_m": 0.01}');
    expect(answer.status).toBe(200);
    expect(await answer.json()).toMatchObject({ status: 'ok', setting: 'flank' });
    const { topics } = (await (await get('/api/solve')).json()) as { topics: { id: string }[] };
    expect(topics.map(({ id }) => id)).toContain('cut-length');
  });

  it('[SERVER-11] what cannot be answered is refused with a sentence and a fitting status', async () => {
    const refused = await post('edge-slivers', '{"width_m": -1, "pitch_m": 0.01}');
    expect(refused.status).toBe(422);
    expect(await refused.json()).toMatchObject({
      code: 'out-of-range',
      path: 'width_m',
      message: expect.stringContaining('width_m'),
    });
    const broken = await post('edge-slivers', '{"width_m": NaN}');
    expect(broken.status).toBe(400);
    expect(await broken.json()).toMatchObject({ code: 'not-json', data: { line: 1, column: 13, found: 'NaN' } });
    expect((await post('no-topic', '{}')).status).toBe(404);
    expect((await post('path', '')).status).toBe(400);
  });

  it('[SERVER-12] a body above 1 MiB is refused', async () => {
    const answer = await post('path', ' '.repeat(1_100_000));
    expect(answer.status).toBe(413);
    expect(await answer.json()).toMatchObject({ code: 'too-large', data: { value: 1_100_000, max: 1_048_576 } });
  });
});

describe('start', () => {
  it('[SERVER-13] a busy port is said and the next one taken', async () => {
    const blocker = createServer();
    await new Promise<void>((resolve) => blocker.listen(0, '127.0.0.1', resolve));
    const busy = (blocker.address() as AddressInfo).port;
    const said: number[][] = [];
    const other = await startServer({
      plantFolder: demo,
      port: busy,
      webFolder,
      onBusyPort: (...ports) => said.push(ports),
    });
    expect(said[0]).toEqual([busy, busy + 1]);
    expect(other.address).not.toBe(`http://localhost:${busy}`);
    await other.close();
    await new Promise((resolve) => blocker.close(resolve));
  });

  it('[SERVER-14] without a built page it does not start, and says what builds it', async () => {
    await expect(startServer({ plantFolder: demo, port: 0, webFolder: place })).rejects.toThrow('npm run build');
  });

  it('[SERVER-15] it listens on this computer only', async () => {
    const { address } = await import('node:os').then(({ networkInterfaces }) => ({
      address: Object.values(networkInterfaces())
        .flat()
        .find((each) => each?.family === 'IPv4' && !each.internal)?.address,
    }));
    if (address === undefined) return;
    await expect(fetch(`http://${address}:${port()}/health`)).rejects.toThrow();
  });
});
