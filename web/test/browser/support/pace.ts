import type { Page } from 'playwright-core';

/**
 * How long this browser takes for a fixed piece of arithmetic [ms]: what a page's answer is measured against in the same
 * run, because machines differ and are shared.
 */
export function pace_ms(page: Page): Promise<number> {
  return page.evaluate(() => {
    const once = () => {
      const from = performance.now();
      let sum = 0;
      for (let i = 0; i < 1_000_000; i += 1) sum += Math.sin(i) * Math.sqrt(i);
      return Number.isFinite(sum) ? performance.now() - from : Number.NaN;
    };
    const all = Array.from({ length: 5 }, once).toSorted((a, b) => a - b);
    return all[2] ?? Number.NaN;
  });
}
