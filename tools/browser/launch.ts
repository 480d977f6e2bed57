import { existsSync } from 'node:fs';
import { type Browser, type BrowserContext, type BrowserContextOptions, chromium } from 'playwright-core';

const systemBrowser = '/usr/bin/chromium';
/** Flags with which the browser starts in tests. */
export const browserFlags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** Where the browser of the tests is: `LW_CHROMIUM`, else the system's, else the one inside the npm package. */
export async function executablePath(): Promise<string> {
  const chosen = process.env['LW_CHROMIUM'];
  if (chosen !== undefined && chosen !== '') return chosen;
  if (existsSync(systemBrowser)) return systemBrowser;
  const packed = await import('@sparticuz/chromium');
  return await packed.default.executablePath();
}

/**
 * Starts a real Chromium for the browser tests.
 * @param more - flags beside the usual ones, as for a camera that plays a file
 * @returns the running browser; the caller closes it
 * @throws Error with one sentence that says how to get a browser, when none starts
 */
export async function launchBrowser(more: readonly string[] = []): Promise<Browser> {
  let path = systemBrowser;
  try {
    path = await executablePath();
    return await chromium.launch({ executablePath: path, headless: true, args: [...browserFlags, ...more] });
  } catch (cause) {
    throw new Error(
      `No browser started from ${path}: run "apt-get install chromium", or set LW_CHROMIUM to a Chromium program.`,
      { cause },
    );
  }
}

/**
 * Starts a real Chromium on a folder in which it keeps what pages store, so that a restart finds it again.
 * @param profile - the folder
 * @param more - flags beside the usual ones
 * @param screen - what kind of screen it has
 */
export async function launchProfile(
  profile: string,
  more: readonly string[] = [],
  screen: BrowserContextOptions = {},
): Promise<BrowserContext> {
  return chromium.launchPersistentContext(profile, {
    ...screen,
    executablePath: await executablePath(),
    headless: true,
    args: [...browserFlags, ...more],
  });
}
