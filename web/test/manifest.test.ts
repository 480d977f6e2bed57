import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

interface Manifest {
  readonly name: string;
  readonly start_url: string;
  readonly display: string;
  readonly theme_color: string;
  readonly background_color: string;
  readonly icons: readonly { readonly src: string; readonly sizes: string; readonly type: string }[];
}

const file = (path: string) => readFileSync(new URL(`../${path}`, import.meta.url));
const manifest: Manifest = JSON.parse(file('public/manifest.webmanifest').toString());
const page = file('index.html').toString();

/** Width and height as a PNG file says them itself: ISO/IEC 15948, 11.2.2, big-endian from byte 16. */
const pngSize = (bytes: Buffer) => `${bytes.readUInt32BE(16)}x${bytes.readUInt32BE(20)}`;

/** The ground of the page by day and by night, as the style sheet has it. */
const [, day, night] = /--paper: light-dark\((#\w+), (#\w+)\)/.exec(file('src/style/tokens.css').toString()) ?? [];

describe('installing', () => {
  it('[OFFLINE-07] the manifest says what a browser asks for before it installs', () => {
    expect(manifest).toMatchObject({ name: 'Loopwright', start_url: '/', display: 'standalone' });
    const sizes = manifest.icons.map((icon) => icon.sizes);
    expect(sizes).toEqual(expect.arrayContaining(['192x192', '512x512']));
    expect(page).toContain('<link rel="manifest" href="/manifest.webmanifest" />');
  });

  it('[OFFLINE-07] every icon is there in the size it is said to have', () => {
    const pictures = manifest.icons.filter(({ type }) => type === 'image/png');
    expect(pictures).toHaveLength(3);
    for (const { src, sizes } of pictures) expect(pngSize(file(`public${src}`)), src).toBe(sizes);
    for (const [, src] of page.matchAll(/rel="(?:icon|apple-touch-icon)" href="([^"]+)"/g))
      expect(file(`public${src}`).length).toBeGreaterThan(100);
  });

  it('[OFFLINE-07] the bar around the page has the ground of the page, by day and by night', () => {
    expect([manifest.theme_color, manifest.background_color]).toEqual([day, day]);
    const colours = [...page.matchAll(/name="theme-color" content="(#\w+)"/g)].map(([, colour]) => colour);
    expect(colours).toEqual([day, night]);
  });
});
