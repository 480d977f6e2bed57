import './node-version.mjs';
import { readFileSync, writeFileSync } from 'node:fs';
import { chromium } from 'playwright-core';
import { findChromium } from './chromium.mjs';
import { at } from './root.mjs';

// Draws the icons that want pixels from the one that does not: node tools/draw-icons.mjs, after a change of loop.svg.
const svg = readFileSync(at('web/public/icons/loop.svg'), 'utf8');

// Systems that cut an icon into a shape of their own want a ground without corners, and the mark well inside of it.
const bleeding = svg.replace(' rx="88"', '');
const maskable = bleeding.replace(
  '<g id="loop"',
  '<g id="loop" transform="translate(256 256) scale(0.8) translate(-256 -256)"',
);
const icons = [
  { name: 'loop-180.png', size: 180, drawing: bleeding },
  { name: 'loop-192.png', size: 192, drawing: svg },
  { name: 'loop-512.png', size: 512, drawing: svg },
  { name: 'loop-maskable-512.png', size: 512, drawing: maskable },
];

const found = await findChromium();
if (found.sentence) {
  console.error(found.sentence);
  process.exit(1);
}
const browser = await chromium.launch({ executablePath: found.path, args: ['--no-sandbox', '--disable-gpu'] });
for (const { name, size, drawing } of icons) {
  const page = await browser.newPage({ viewport: { width: size, height: size } });
  await page.setContent(`<style>body { margin: 0 } svg { display: block }</style>${drawing}`);
  writeFileSync(at('web/public/icons', name), await page.screenshot({ omitBackground: true }));
  await page.close();
}
await browser.close();
