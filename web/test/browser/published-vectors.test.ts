import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { edgeCases } from '../../../records/test/vectors/ed25519-edges.ts';
import { hashesOfFirstLines } from '../../../records/test/vectors/es6-numbers.ts';
import { consistency6to8, entries, inclusion5in8, roots } from '../../../records/test/vectors/rfc-6962.ts';
import { signatures } from '../../../records/test/vectors/rfc-8032.ts';
import { example, notNumbers, numbers, sorting } from '../../../records/test/vectors/rfc-8785.ts';
import { launchBrowser } from '../../../tools/browser/launch.ts';
import { type StoreServer, serveVectorsPage } from './support/store-server.ts';
import type { VectorsPage } from './support/vectors-page/vectors-page.ts';

interface VectorsWindow {
  readonly page: VectorsPage;
}

let server: StoreServer;
let browser: Browser;
let tab: Page;
beforeAll(async () => {
  [server, browser] = await Promise.all([serveVectorsPage(), launchBrowser()]);
  tab = await browser.newPage();
  await tab.goto(server.address);
  await tab.waitForFunction(() => 'page' in window);
});
afterAll(async () => {
  await browser.close();
  await server.close();
});

describe('RFC 8785 in the browser', () => {
  test('[STORE-20] appendix B: every number is written as printed, and what is no number is refused', async () => {
    const asked = [...numbers.map(([bits]) => bits), ...notNumbers];
    const written = await tab.evaluate((all) => {
      const { page } = window as unknown as VectorsWindow;
      return all.map((bits) => page.numberText(bits));
    }, asked);
    expect(written).toEqual([...numbers.map(([, text]) => text), ...notNumbers.map(() => 'number-not-finite')]);
  });

  test('[STORE-20] 3.2.2 and 3.2.3: the example with its hash, names by their UTF-16 units', async () => {
    const found = await tab.evaluate(
      ([one, other]) => {
        const { page } = window as unknown as VectorsWindow;
        const text = page.canonical(one);
        return { text, hash: page.sha256(text), sorted: page.canonical(other) };
      },
      [example.input, sorting.input] as const,
    );
    expect(found.text).toBe(example.output);
    expect(found.hash).toBe(example.sha256);
    expect([...found.sorted.matchAll(/:"([^"]+)"/g)].map(([, value]) => value)).toEqual(sorting.order);
  });

  test('[STORE-20] the first million numbers of its authors are written as published', async () => {
    const counts = Object.keys(hashesOfFirstLines).map(Number);
    const hashes = await tab.evaluate((asked) => {
      const { page } = window as unknown as VectorsWindow;
      return page.numbersHash(asked);
    }, counts);
    expect(hashes).toEqual(hashesOfFirstLines);
    console.log(
      `Canonical numbers in the browser: ${Math.max(...counts)} lines, ${counts.length} published hashes met.`,
    );
  });
});

describe('RFC 8032 in the browser', () => {
  test.each(signatures)(
    '[STORE-20] 7.1 $name: the browser itself and the bundled code sign as printed',
    async (vector) => {
      const found = await tab.evaluate((given) => {
        const { page } = window as unknown as VectorsWindow;
        return page.signed(given);
      }, vector);
      const { publicKey, signature } = vector;
      expect(found).toEqual([
        { publicKey, signature },
        { publicKey, signature },
      ]);
    },
  );

  test('[STORE-20] 7.1: printed signatures are taken by both, and by neither with any one of their bits changed', async () => {
    const found = await tab.evaluate(async (vectors) => {
      const { page } = window as unknown as VectorsWindow;
      const flipped = (hex: string, bit: number) => {
        const at = bit >> 2;
        const digit = (Number.parseInt(hex.charAt(at), 16) ^ (1 << (bit & 3))).toString(16);
        return hex.slice(0, at) + digit + hex.slice(at + 1);
      };
      const printed: (readonly boolean[])[] = [];
      let changed = 0;
      for (const { message, signature, publicKey } of vectors) {
        printed.push(await page.taken({ message, signature, publicKey }));
        for (let bit = 0; bit < 512; bit += 1) {
          const answers = await page.taken({ message, publicKey, signature: flipped(signature, bit) });
          changed += answers.filter(Boolean).length;
        }
      }
      return { printed, changed };
    }, signatures);
    expect(found).toEqual({ printed: signatures.map(() => [true, true]), changed: 0 });
  });

  test('[STORE-20] on the edges of the definition both give the one strict answer', async () => {
    const answers = await tab.evaluate(async (cases) => {
      const { page } = window as unknown as VectorsWindow;
      return Promise.all(cases.map((each) => page.taken(each)));
    }, edgeCases);
    expect(answers).toEqual(edgeCases.map(({ accepted }) => [accepted, accepted]));
  });
});

describe('RFC 6962 and RFC 9162 in the browser', () => {
  test('[STORE-20] roots of every size, computed whole and grown entry by entry', async () => {
    const found = await tab.evaluate((given) => {
      const { page } = window as unknown as VectorsWindow;
      return page.roots(given);
    }, entries);
    expect(found).toEqual({ defined: roots, grown: roots });
  });

  test('[STORE-20] that an entry stands in a tree, and that a tree begins a later one', async () => {
    const [root6 = '', root8 = ''] = [roots[6], roots[8]];
    const found = await tab.evaluate(
      (given) => {
        const { page } = window as unknown as VectorsWindow;
        const inclusion = { index: 5, size: 8, root: given.root8, proof: given.inclusion5in8 };
        const consistency = { first: 6, second: 8, firstRoot: given.root6, secondRoot: given.root8 };
        return {
          inclusion: page.inclusion(given.entries, 5),
          consistency: page.consistency(given.entries, 6),
          holds: [
            page.inclusionHolds({ ...inclusion, entry: given.entries[5] ?? '' }),
            page.consistencyHolds({ ...consistency, proof: given.consistency6to8 }),
          ],
          ofAnother: [
            page.inclusionHolds({ ...inclusion, entry: given.entries[4] ?? '' }),
            page.consistencyHolds({ ...consistency, first: 5, proof: given.consistency6to8 }),
          ],
        };
      },
      { entries, inclusion5in8, consistency6to8, root6, root8 },
    );
    expect(found).toEqual({
      inclusion: inclusion5in8,
      consistency: consistency6to8,
      holds: [true, true],
      ofAnother: [false, false],
    });
  });
});
