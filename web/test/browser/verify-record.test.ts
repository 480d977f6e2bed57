import { readFileSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { alone } from '../../../records/test/verifier/both-verifiers.ts';
import { fileOf, packed, whole } from '../../../records/test/verifier/sample-record.ts';
import { seeded } from '../../../records/test/verifier/seeded.ts';
import { tamperings } from '../../../records/test/verifier/tampering.ts';
import { launchBrowser } from '../../../tools/browser/launch.ts';

let browser: Browser;
let tab: Page;
beforeAll(async () => {
  browser = await launchBrowser();
  tab = await browser.newPage();
  await tab.goto(inject('address'));
});
afterAll(() => browser.close());

/** The verdict of the file that the page offers for download, imported as it is. */
async function inBrowser(file: Uint8Array): Promise<Awaited<ReturnType<typeof alone>>> {
  const text = Buffer.from(file).toString('base64');
  const said = (await tab.evaluate(
    `import('/verify-record.mjs').then(({ verifyRecord }) => verifyRecord(Uint8Array.from(atob('${text}'), (c) => c.charCodeAt(0))))`,
  )) as Awaited<ReturnType<typeof alone>> & Record<string, unknown>;
  const { verdict, logs, warnings, ...place } = said;
  const told = logs.map((log) => Object.fromEntries(Object.entries(log).filter(([name]) => name !== 'code')));
  const given = Object.fromEntries(Object.entries(place).filter(([, value]) => value !== undefined));
  return { verdict, place: given, warnings, logs: verdict === 'ok' ? told : [] };
}

describe('the verifier beside the page', () => {
  test('[STORE-23] is served as a file that reads as it stands in the sources', async () => {
    const reply = await fetch(new URL('/verify-record.mjs', inject('address')));
    expect(reply.status).toBe(200);
    expect(reply.headers.get('content-type')).toMatch(/javascript/);
    const source = new URL('../../../records/verifier/verify-record.mjs', import.meta.url);
    expect(await reply.text()).toBe(readFileSync(source, 'utf8'));
  });

  test('[STORE-23] says in the browser what it says in Node, of whole and of tampered records', async () => {
    const files = [fileOf(whole.lines), packed(whole), packed(whole, 0)];
    for (let n = 0; n < 10 * tamperings.length; n++) {
      const tampering = tamperings[n % tamperings.length];
      if (tampering !== undefined) files.push(Uint8Array.from(await tampering.change(seeded(7_000_000 + n))));
    }
    for (const [n, file] of files.entries()) expect(await inBrowser(file), `file ${n}`).toEqual(await alone(file));
  });
});
