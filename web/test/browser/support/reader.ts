import type { Browser, BrowserContext, Locator, Page } from 'playwright-core';
import { inject } from 'vitest';
import type { Settings } from '../../../src/settings/settings.ts';

/** What went on in the browser that must not: policy violations, errors, requests to other hosts. */
export interface Trouble {
  readonly all: string[];
}

export interface Reader {
  readonly page: Page;
  readonly trouble: Trouble;
  readonly context: BrowserContext;
  close(): Promise<void>;
}

export const phone = { width: 390, height: 844 };
export const wide = { width: 1280, height: 800 };

/** Settings of somebody who has answered everything, so that nothing is asked. */
export const answered: Settings = { language: 'en', units: 'metric', theme: 'day', people: 1, press: '' };

interface ReaderOptions {
  readonly viewport?: { readonly width: number; readonly height: number };
  /** Settings stored on the device; none for somebody who comes for the first time. */
  readonly settings?: Settings | undefined;
  readonly locale?: string;
  /** Whether the screen is touched. */
  readonly hasTouch?: boolean;
}

/** Opens the browser for one reader and keeps note of everything that must not happen. */
export async function openReader(browser: Browser, options: ReaderOptions = {}): Promise<Reader> {
  const { viewport = phone, locale = 'en-GB', hasTouch = false } = options;
  const settings = 'settings' in options ? options.settings : answered;
  // Each reader comes with an empty browser: to keep the app's files in it is tried once, in offline.test.ts.
  const context = await browser.newContext({
    viewport,
    locale,
    hasTouch,
    acceptDownloads: true,
    serviceWorkers: 'block',
  });
  const trouble = await watchTrouble(context);
  if (settings !== undefined) await storeSettings(context, settings);
  const page = await context.newPage();
  return { page, context, trouble, close: () => context.close() };
}

/** Keeps note of everything that must not happen on the pages that are opened from now on. */
export async function watchTrouble(context: BrowserContext, address = inject('address')): Promise<Trouble> {
  const all: string[] = [];
  await context.exposeFunction('noteTrouble', (what: string) => all.push(what));
  await context.addInitScript(watchPolicy);
  context.on('page', (page) => watch(page, all, new URL(address).hostname));
  return { all };
}

/** Settings of a reader who opens the app for the first time on this device. */
export async function storeSettings(context: BrowserContext, settings: Settings): Promise<void> {
  await context.addInitScript(keepSettings, JSON.stringify(settings));
}

function watchPolicy(): void {
  const { noteTrouble } = window as unknown as { noteTrouble: (what: string) => void };
  document.addEventListener('securitypolicyviolation', (event) =>
    noteTrouble(`policy: ${event.violatedDirective} ${event.blockedURI} ${event.sample}`),
  );
}

// Only where nothing is stored yet: what a test changes on the page must outlive a reload.
function keepSettings(settings: string): void {
  // The empty page that a tab begins with has no store.
  if (location.protocol === 'about:') return;
  const key = 'loopwright.settings';
  // The empty page with which a browser starts has no storage.
  if (location.protocol === 'about:') return;
  if (localStorage.getItem(key) === null) localStorage.setItem(key, settings);
}

function watch(page: Page, all: string[], hostname: string): void {
  page.on('pageerror', (problem) => all.push(`error: ${problem.message}`));
  page.on('console', (message) => {
    if (message.type() === 'error') all.push(`console: ${message.text()}`);
  });
  page.on('request', (request) => {
    const url = new URL(request.url());
    const own = url.hostname === hostname || url.protocol === 'blob:' || url.protocol === 'data:';
    if (!own) all.push(`foreign host: ${request.url()}`);
  });
}

/** Opens an address of the app and waits until its place is shown whole. */
export async function visit({ page }: Reader, path: string): Promise<void> {
  await page.goto(inject('address') + path);
  await page.locator('main h1').first().waitFor();
  // Until a card is open, what is below the edge of the screen is not laid out.
  await page.locator('[data-opening]').waitFor({ state: 'detached' });
  await page.evaluate(() => document.fonts.ready.then(() => undefined));
}

/** Text of what is found on the page, every kind of space as a plain one. */
export async function textOf(found: Locator): Promise<string> {
  return plainSpaces((await found.textContent()) ?? '');
}

/** Thin and no-break spaces as plain ones. */
export function plainSpaces(text: string): string {
  return text.replace(/[\s\u2009\u202f\u00a0]+/g, ' ').trim();
}
