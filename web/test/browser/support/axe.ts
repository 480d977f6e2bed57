import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { BrowserContext, Page } from 'playwright-core';

const source = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** Puts axe-core into every page that is opened from now on. */
export async function bringAxe(context: BrowserContext): Promise<void> {
  await context.addInitScript(source);
}

/** What axe-core finds, all rules of WCAG A to AAA and good practice, one line each. */
export async function axeFaults(page: Page): Promise<string[]> {
  return page.evaluate(async () => {
    const { axe } = window as unknown as { axe: { run: (options: object) => Promise<AxeResult> } };
    const { violations } = await axe.run({ resultTypes: ['violations'] });
    return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(' | ')}`);
  });
}

interface AxeResult {
  readonly violations: readonly { readonly id: string; readonly nodes: readonly { readonly html: string }[] }[];
}
