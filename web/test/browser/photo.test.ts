import { createHash } from 'node:crypto';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { launchBrowser } from '../../../tools/browser/launch.ts';
import type { PhotoPage } from './support/photo-page/photo-page.tsx';
import {
  chunk,
  exifSegment,
  greyPng,
  heicHead,
  joined,
  jpegOf,
  letters,
  movingGif,
  segment,
} from './support/picture-files.ts';
import { plainSpaces, watchTrouble } from './support/reader.ts';
import { type StoreServer, servePhotoPage } from './support/store-server.ts';

let browser: Browser;
let server: StoreServer;
let context: BrowserContext;
let page: Page;
let trouble: readonly string[];
beforeAll(async () => {
  [browser, server] = [await launchBrowser(), await servePhotoPage()];
});
afterAll(async () => {
  await browser.close();
  await server.close();
});
beforeEach(async () => {
  context = await browser.newContext({ viewport: { width: 390, height: 844 } });
  ({ all: trouble } = await watchTrouble(context, server.address));
  page = await context.newPage();
  await open();
});
afterEach(async () => {
  // The page asks for a plant's files, and its server has none.
  expect(trouble.filter((each) => !each.includes('404'))).toEqual([]);
  await context.close();
});

interface PhotoWindow {
  readonly page: PhotoPage;
}

async function open(query = ''): Promise<void> {
  await page.goto(server.address + query);
  await page.locator('.photo').waitFor();
}

const maker = 'Quillmoor Camera';
const place = 'https://ns.example.org/place/of/somebody';
const red = [200, 30, 30] as const;
const green = [30, 180, 60] as const;
const blue = [40, 60, 210] as const;
const white = [240, 240, 240] as const;

/** Red and green above, blue and white below, as the sensor saw it. */
function fourColours(width_px: number, height_px: number, beside: readonly Uint8Array[] = []): Uint8Array {
  const colourAt = (column: number, row: number) => {
    const [left, above] = [column < width_px / 16, row < height_px / 16];
    if (above) return left ? red : green;
    return left ? blue : white;
  };
  return jpegOf({ width_px, height_px, colourAt, beside });
}

async function choose(bytes: Uint8Array, name = 'splice.jpg', mimeType = 'image/jpeg'): Promise<void> {
  await page.locator('input[capture]').setInputFiles({ name, mimeType, buffer: Buffer.from(bytes) });
}

const at = (state: string) => page.locator(`[data-photo=${state}]`).waitFor();
const said = async () => plainSpaces((await page.locator('.photo [role=status]').textContent()) ?? '');

interface Kept {
  readonly sha256: string;
  readonly bytes: Uint8Array;
  readonly body: Readonly<Record<string, unknown>>;
}

/** The last photo that an export of this device holds, and what the event says of it. */
async function lastKept(): Promise<Kept> {
  const found = await page.evaluate(async () => {
    const { page } = window as unknown as PhotoWindow;
    const file = await page.store.exportAll();
    const bytes = new Uint8Array(await file.arrayBuffer());
    return Array.from(bytes, (byte) => String.fromCharCode(byte)).join('');
  });
  const { strFromU8, unzipSync } = await import('fflate');
  const parts = unzipSync(Uint8Array.from(found, (sign) => sign.charCodeAt(0)));
  const lines = strFromU8(parts['log.jsonl'] ?? new Uint8Array())
    .trimEnd()
    .split('\n');
  const events = lines.map(
    (line) => JSON.parse(line) as { readonly type?: string; readonly body?: { thing: Kept['body'] } },
  );
  const body = events.filter(({ type }) => type === 'run.photo-taken').at(-1)?.body?.thing ?? {};
  const sha256 = String(body['sha256']);
  return { sha256, body, bytes: parts[`blobs/${sha256}`] ?? new Uint8Array() };
}

/** Mean colour of the four corners of a picture, as the browser shows it. */
async function corners(bytes: Uint8Array): Promise<readonly (readonly number[])[]> {
  return page.evaluate(
    async (given) => {
      const bitmap = await createImageBitmap(new Blob([Uint8Array.from(given)]));
      const canvas = document.createElement('canvas');
      [canvas.width, canvas.height] = [bitmap.width, bitmap.height];
      const drawn = canvas.getContext('2d');
      drawn?.drawImage(bitmap, 0, 0);
      const [x, y] = [bitmap.width - 20, bitmap.height - 20];
      const spots = [
        [20, 20],
        [x, 20],
        [20, y],
        [x, y],
      ] as const;
      return spots.map(([x, y]) => [...(drawn?.getImageData(x, y, 1, 1).data ?? [])].slice(0, 3));
    },
    [...bytes],
  );
}

const isNear = (a: readonly number[], b: readonly number[]) =>
  a.every((value, i) => Math.abs(value - (b[i] ?? 0)) < 14);
const namesOf = (colours: readonly (readonly number[])[]) =>
  colours.map((colour) => Object.entries({ red, green, blue, white }).find(([, each]) => isNear(colour, each))?.[0]);

/** The markers of a JPEG up to its first scan, found without the product's own reading (ITU-T T.81 B.1.1.4). */
function markersOf(bytes: Uint8Array): readonly number[] {
  const file = Buffer.from(bytes);
  const found: number[] = [];
  for (let at = 2; at < file.length && found.at(-1) !== 0xda; at += 2 + file.readUInt16BE(at + 2))
    found.push(file[at + 1] ?? 0);
  return found;
}

describe('a photo', () => {
  test('[PHOTO-01] is taken by the device’s own camera, scaled to 1600 px, kept with its event, shown', async () => {
    const entry = page.locator('input[capture=environment]');
    expect(await entry.getAttribute('accept')).toBe('image/*');
    expect(await page.locator('input[type=file]:not([capture])').count()).toBe(1);
    await choose(fourColours(3200, 2400));
    await at('kept');
    expect(await said()).toBe('Kept on this device: 1600 × 1200 dots. Place, time and camera were taken out of it.');
    const { sha256, bytes, body } = await lastKept();
    expect(createHash('sha256').update(bytes).digest('hex')).toBe(sha256);
    expect(body).toMatchObject({ bytes: bytes.length, width_px: 1600, height_px: 1200 });
    const image = page.getByRole('img', { name: 'Roller side' });
    await image.waitFor();
    expect(await image.evaluate((each: HTMLImageElement) => [each.naturalWidth, each.naturalHeight])).toEqual([
      1600, 1200,
    ]);
    const { broken, brokenBlobs } = await page.evaluate(() => (window as unknown as PhotoWindow).page.store.verify());
    expect([broken, brokenBlobs]).toEqual([undefined, []]);
  });

  test('[PHOTO-01] a small one is not blown up; PNG and WebP do as well, what can be seen through is white', async () => {
    await choose(fourColours(320, 240));
    await at('kept');
    expect((await lastKept()).body).toMatchObject({ width_px: 320, height_px: 240 });
    for (const type of ['image/png', 'image/webp']) {
      const drawn = await page.evaluate(async (type) => {
        const canvas = document.createElement('canvas');
        [canvas.width, canvas.height] = [2000, 1000];
        const context = canvas.getContext('2d');
        if (context !== null) context.fillStyle = 'rgb(200 30 30)';
        context?.fillRect(0, 0, 1000, 500);
        const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, type));
        return [...new Uint8Array((await blob?.arrayBuffer()) ?? new ArrayBuffer())];
      }, type);
      await open();
      await choose(Uint8Array.from(drawn), 'drawn', type);
      await at('kept');
      const { body, bytes } = await lastKept();
      expect(body, type).toMatchObject({ width_px: 1600, height_px: 800 });
      const [first, second] = await corners(bytes);
      expect(isNear(first ?? [], red), type).toBe(true);
      expect(isNear(second ?? [], [255, 255, 255]), type).toBe(true);
    }
  });

  // What stands where when a picture is shown as each orientation asks for: Exif 2.32, 4.6.4 A, Orientation.
  const upright: readonly (readonly [number, string])[] = [
    [1, 'red green blue white'],
    [2, 'green red white blue'],
    [3, 'white blue green red'],
    [4, 'blue white red green'],
    [5, 'red blue green white'],
    [6, 'blue red white green'],
    [7, 'white green blue red'],
    [8, 'green white red blue'],
  ];
  test.each(upright)(
    '[PHOTO-02] held as %i, it is kept upright, also when it is scaled',
    async (orientation, colours) => {
      for (const [width, height] of [
        [640, 480],
        [4000, 3000],
      ] as const) {
        const turned = orientation > 4;
        await open();
        await choose(fourColours(width, height, [exifSegment(orientation, maker)]));
        await at('kept');
        const { bytes, body } = await lastKept();
        expect(namesOf(await corners(bytes)).join(' '), `${width} wide`).toBe(colours);
        const [long, short] = [Math.min(width, 1600), Math.min(height, 1200)];
        expect([body['width_px'], body['height_px']]).toEqual(turned ? [short, long] : [long, short]);
      }
    },
  );

  test('[PHOTO-03] nothing of what stood beside the picture is kept: place, camera, text, thumbnail, colour profile', async () => {
    const beside = [
      segment(0xe0, [...letters('JFIF\0'), 1, 2, 0, 0, 1, 0, 1, 0, 0]),
      exifSegment(1, maker),
      segment(0xe1, letters(`http://ns.adobe.com/xap/1.0/\0<x:xmpmeta>${place}</x:xmpmeta>`)),
      segment(0xe2, letters(`MPF\0${place}`)),
      segment(0xed, letters(`Photoshop 3.0\0${place}`)),
      segment(0xfe, letters(`taken by somebody at ${place}`)),
    ];
    const given = joined([fourColours(800, 600, beside), Uint8Array.from(letters(`trailer ${place}`))]);
    expect(markersOf(given)).toEqual(expect.arrayContaining([0xe1, 0xe2, 0xed, 0xfe]));
    await choose(given);
    await at('kept');
    const { bytes } = await lastKept();
    // What a picture needs and nothing else: JFIF head, tables, frame, scan.
    const needed = new Set([0xe0, 0xdb, 0xc0, 0xc4, 0xda]);
    expect(markersOf(bytes).filter((marker) => !needed.has(marker))).toEqual([]);
    const text = Buffer.from(bytes).toString('latin1');
    for (const trace of [maker, place, 'Exif', 'ns.adobe', 'GPS', 'MPF', 'Photoshop', 'ICC_PROFILE', 'trailer'])
      expect(text.includes(trace), trace).toBe(false);
    expect(text.endsWith('\xff\xd9')).toBe(true);
  });

  test('[PHOTO-03] nor is the text of a PNG', async () => {
    const [png, said] = [greyPng(300, 200), chunk('tEXt', letters(`Comment\0${place}`))];
    await choose(joined([png.slice(0, 33), said, png.slice(33)]), 'a.png', 'image/png');
    await at('kept');
    expect(Buffer.from((await lastKept()).bytes).toString('latin1')).not.toContain('somebody');
  });
});

describe('what is no photo that can be kept', () => {
  const cut = fourColours(1600, 1200);
  const bad: readonly (readonly [string, () => Uint8Array, string])[] = [
    ['nothing', () => new Uint8Array(), '0 bytes'],
    [
      'a text',
      () => Uint8Array.from(letters('This is no picture at all. '.repeat(50))),
      'no picture, whatever its name says',
    ],
    ['HTML', () => Uint8Array.from(letters('<svg onload=alert(1)></svg>')), 'no picture, whatever its name says'],
    ['HEIC', () => heicHead(4032, 3024), 'does not read photos of this form (HEIC or AVIF)'],
    ['a cut JPEG', () => cut.slice(0, cut.length * 0.6), 'ends before the picture does'],
    ['a JPEG cut in its head', () => cut.slice(0, 90), 'ends before the picture does'],
    ['a cut PNG', () => greyPng(3000, 2000).slice(0, 200), 'ends before the picture does'],
    ['a moving GIF', movingGif, 'GIF or a moving picture'],
    [
      'a moving PNG',
      () => joined([greyPng(9, 9).slice(0, 33), chunk('acTL', [0, 0, 0, 2, 0, 0, 0, 0]), greyPng(9, 9).slice(33)]),
      'GIF or a moving picture',
    ],
    [
      'a JPEG of nothing',
      () =>
        joined([Uint8Array.of(0xff, 0xd8), segment(0xc0, [8, 0, 0, 0, 0, 1, 1, 0x11, 0]), Uint8Array.of(0xff, 0xd9)]),
      'no picture, whatever',
    ],
    [
      'a JPEG of damaged tables',
      () =>
        joined([
          Uint8Array.of(0xff, 0xd8),
          segment(0xc0, [8, 0, 16, 0, 16, 1, 1, 0x11, 0]),
          segment(0xda, [1, 1, 0, 0, 63, 0]),
          Uint8Array.of(1, 2, 3, 0xff, 0xd9),
        ]),
      'damaged',
    ],
    ['200 million dots', () => segmentedHead(20_000, 10_000), '200 million dots; of its kind at most 110 million'],
  ];
  /** A JPEG that says its size and ends. */
  function segmentedHead(width: number, height: number): Uint8Array {
    const size = [height >> 8, height & 255, width >> 8, width & 255];
    return joined([Uint8Array.of(0xff, 0xd8), segment(0xc0, [8, ...size, 1, 1, 0x11, 0]), Uint8Array.of(0xff, 0xd9)]);
  }

  test('[PHOTO-04] each says what it is and what to do; the photo kept before stays', async () => {
    await choose(fourColours(640, 480));
    await at('kept');
    const before = await lastKept();
    for (const [name, bytes, sentence] of bad) {
      await choose(bytes(), 'photo.jpg');
      await at('fault');
      expect(await said(), name).toContain(sentence);
      expect(await said(), name).toMatch(/[Tt]ake/);
      await page.getByText('Roller side: take a').waitFor();
      await choose(fourColours(64, 48));
      await at('kept');
    }
    const { size } = await page.evaluate(() => (window as unknown as PhotoWindow).page.store.current());
    expect(size).toBe(2 + bad.length);
    const first = await page.evaluate(
      async (sha256) => (await (window as unknown as PhotoWindow).page.store.blob(sha256))?.size,
      before.sha256,
    );
    expect(first).toBe(before.bytes.length);
  });

  test('[PHOTO-05] 1,600 million dots in a few kilobytes are refused by their head, without unpacking any', async () => {
    const bomb = greyPng(40_000, 40_000);
    expect(bomb.length).toBeLessThan(300_000);
    await page.evaluate(() => {
      const plain = window.createImageBitmap.bind(window);
      const counting = (source: ImageBitmapSource) => {
        Object.assign(window, { unpacked: 1 });
        return plain(source);
      };
      Object.assign(window, { unpacked: 0, createImageBitmap: counting });
    });
    await choose(bomb, 'bomb.png', 'image/png');
    await at('fault');
    expect(await said()).toContain('1 600 million dots; of its kind at most 40 million');
    expect(await page.evaluate(() => (window as unknown as { unpacked: number }).unpacked)).toBe(0);
  });

  test('[PHOTO-05] a file of more than 80 MB is not read', async () => {
    const found = await page.evaluate(async () => {
      const { page } = window as unknown as PhotoWindow;
      const large = new Blob([new Uint8Array(81_000_000)]);
      large.arrayBuffer = () => Promise.reject(new Error('it was read'));
      return page.takePhoto(large);
    });
    expect(found).toEqual({ fault: 'too-large', data: { size: 81, most: 80 } });
  });

  test('[PHOTO-04] a file that goes away while it is read is said', async () => {
    const found = await page.evaluate(async () => {
      const gone = new Blob(['x']);
      gone.arrayBuffer = () => Promise.reject(new DOMException('gone', 'NotReadableError'));
      return (window as unknown as PhotoWindow).page.takePhoto(gone);
    });
    expect(found).toEqual({ fault: 'unreadable', data: {} });
  });
});

describe('a large one', () => {
  test('[PHOTO-06] 60 million dots: said, scaled, kept; reading can be stopped, and nothing comes of it', async () => {
    const large = fourColours(9504, 6336, [exifSegment(6, maker)]);
    await choose(large);
    await page.getByText('60 million dots').waitFor();
    await page.getByRole('button', { name: 'Stop reading' }).click();
    expect(await said()).toContain('Stopped; this photo was not kept');
    const began = performance.now();
    await choose(large);
    await at('kept');
    console.log(`A photo of 60 Mpx, ${large.length} bytes: kept after ${Math.round(performance.now() - began)} ms.`);
    const { body, bytes } = await lastKept();
    expect([body['width_px'], body['height_px']]).toEqual([1067, 1600]);
    expect(namesOf(await corners(bytes))).toEqual(['blue', 'red', 'white', 'green']);
    expect((await page.evaluate(() => (window as unknown as PhotoWindow).page.store.current())).size).toBe(2);
  });
});
