import './node-version.mjs';
import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import util from 'node:util';
import { build, isBuilt } from './build.mjs';
import { at } from './root.mjs';
import { setUp } from './setup.mjs';

const usage = 'npm start -- [--plant FOLDER] [--port NUMBER]';

function fail(sentence, code = 1) {
  console.error(sentence);
  process.exit(code);
}

/** What the person asked for, or one sentence about why it makes no sense. */
function readArguments() {
  try {
    const { values } = util.parseArgs({
      options: { plant: { type: 'string' }, port: { type: 'string', default: '4717' } },
    });
    const port = Number(values.port);
    if (!/^\d+$/.test(values.port) || port < 1 || port > 65535)
      fail(`--port: got ${values.port}, must be a whole number from 1 to 65535. Use: ${usage}`, 2);
    const plantFolder = values.plant === undefined ? at('demo') : resolve(process.env.INIT_CWD ?? '.', values.plant);
    if (!existsSync(plantFolder)) fail(`There is no folder ${plantFolder}. Name the plant's folder: ${usage}`, 2);
    return { plantFolder, port };
  } catch (problem) {
    return fail(`${problem.message.split('\n')[0]} Use: ${usage}`, 2);
  }
}

/** Shows the page where a person sits at the terminal; without a browser the printed address does. */
function openBrowser(address) {
  if (!process.stdout.isTTY || process.env.CI) return;
  const [command, ...args] = { darwin: ['open'], win32: ['cmd', '/c', 'start', ''] }[process.platform] ?? ['xdg-open'];
  const child = spawn(command, [...args, address], { stdio: 'ignore', detached: true });
  child.on('error', () => {});
  child.unref();
}

const { plantFolder, port } = readArguments();
await setUp();
if (!isBuilt()) {
  const failure = await build();
  if (failure)
    fail(`${failure.output}\nThe build stopped while ${failure.what}. Mend what is named above, then: npm start`);
}

const { startServer } = await import('../server/dist/index.js');
const server = await startServer({
  plantFolder,
  demo: plantFolder === at('demo'),
  port,
  webFolder: at('web/dist'),
  onBusyPort: (busy, next) => console.error(`Port ${busy} is busy, trying ${next}.`),
}).catch((problem) => fail(problem.message));

console.log(`Loopwright is at ${server.address}`);
console.log('Stop it with Ctrl-C.');
openBrowser(server.address);

let stopping = false;
for (const signal of ['SIGINT', 'SIGTERM'])
  process.on(signal, async () => {
    if (stopping) process.exit(130);
    stopping = true;
    await server.close();
    process.exit(0);
  });
