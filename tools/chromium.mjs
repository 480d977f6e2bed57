import { existsSync } from 'node:fs';
import { run } from './run.mjs';

const system = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];
const advice = 'No Chromium starts on this computer. Install one: sudo apt-get install -y chromium';

/** A Chromium that really starts: the one named, the one in the package, the system's; or a sentence. */
export async function findChromium() {
  if (process.env.LW_CHROMIUM) return tryOne(process.env.LW_CHROMIUM);
  for (const candidate of [bundled, ...system.map((path) => async () => path)]) {
    const path = await candidate().catch(() => undefined);
    if (path !== undefined && existsSync(path) && (await starts(path))) return { path };
  }
  return installIt();
}

async function tryOne(path) {
  if (await starts(path)) return { path };
  return { sentence: `LW_CHROMIUM names ${path}, which does not start. Name another or unset it: unset LW_CHROMIUM` };
}

async function bundled() {
  const { default: chromium } = await import('@sparticuz/chromium');
  return chromium.executablePath();
}

/** Opens an empty page: a missing library shows here, not in the middle of a test. */
async function starts(executablePath) {
  const { chromium } = await import('playwright-core');
  try {
    const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'], timeout: 60_000 });
    await browser.newPage();
    await browser.close();
    return true;
  } catch {
    return false;
  }
}

/** On a build machine that we own, and only there, the missing browser is installed without asking. */
async function installIt() {
  if (!process.env.CI || process.getuid?.() !== 0) return { sentence: advice };
  console.log('No Chromium starts; installing the system package chromium.');
  await run('apt-get', ['update', '-qq'], { timeout_s: 300, env: { DEBIAN_FRONTEND: 'noninteractive' } });
  await run('apt-get', ['install', '-y', '-qq', 'chromium'], {
    timeout_s: 900,
    env: { DEBIAN_FRONTEND: 'noninteractive' },
  });
  const path = system.find((each) => existsSync(each));
  return path !== undefined && (await starts(path)) ? { path } : { sentence: advice };
}
