import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { launchBrowser } from '../../../tools/browser/launch.ts';
import { cutText, lengthen, poorContrast, poorDrawings, poorTargets, smallText } from './support/measure.ts';
import { phone } from './support/reader.ts';

let browser: Browser;
let page: Page;
beforeAll(async () => {
  browser = await launchBrowser();
  page = await browser.newPage({ viewport: phone });
});
afterAll(() => browser.close());

// Each measure that keeps silent about the app must speak up on a page made wrong on purpose.
describe('the measures themselves', () => {
  test('[WEB-16] text that leaves its box, its line or the window is found', async () => {
    await page.setContent('<p style="width:80px">Einscheibensicherheitsglas</p>');
    expect(await page.evaluate(cutText)).toHaveLength(1);
    await page.setContent('<button style="width:60px;white-space:nowrap">much too long</button>');
    expect((await page.evaluate(cutText)).length).toBeGreaterThan(0);
    await page.setContent('<div style="width:90px;overflow:auto"><p style="width:max-content">much too long</p></div>');
    expect((await page.evaluate(cutText)).join()).toContain('part of the page');
    await page.setContent('<p style="width:900px">wide</p>');
    expect((await page.evaluate(cutText)).join()).toContain('page');
    await page.setContent('<p>This fits.</p>');
    expect(await page.evaluate(cutText)).toEqual([]);
  });

  test('[WEB-16] lengthening makes sentences 40 % longer and leaves numbers alone', async () => {
    await page.setContent('<p>0123456789</p><p>abcdefghij</p>');
    await page.evaluate(lengthen);
    expect(await page.locator('p').allTextContents()).toEqual(['0123456789', 'abcdefghijabcd']);
  });

  test('[WEB-16] small targets and near targets are found', async () => {
    const button = (style: string) =>
      `<button style="position:absolute;left:0;height:48px;width:48px;${style}">x</button>`;
    await page.setContent(button('top:0;height:40px') + button('top:100px'));
    expect(await page.evaluate(poorTargets)).toHaveLength(1);
    await page.setContent(button('top:0') + button('top:56px'));
    expect(await page.evaluate(poorTargets)).toHaveLength(1);
    await page.setContent(button('top:0') + button('top:60px'));
    expect(await page.evaluate(poorTargets)).toEqual([]);
  });

  test('[WEB-16] contrast: grey #595959 on white is 7.0:1 (WCAG), one step lighter is not', async () => {
    await page.setContent('<body style="background:#fff"><p style="color:#595959">enough</p></body>');
    expect(await page.evaluate(poorContrast)).toEqual([]);
    await page.setContent('<body style="background:#fff"><p style="color:#5a5a5a">not enough</p></body>');
    expect(await page.evaluate(poorContrast)).toHaveLength(1);
  });

  test('[WEB-16] small text is found', async () => {
    await page.setContent('<p style="font-size:17px">small</p><p style="font-size:15px" class="caption">caption</p>');
    expect(await page.evaluate(smallText)).toHaveLength(1);
  });

  test('[WEB-16] words of a drawing that lie on each other, leave it or are tiny are found', async () => {
    const drawing = (inside: string) =>
      `<div class="drawing"><svg viewBox="0 0 300 100" width="300" height="100">${inside}</svg></div>`;
    const text = (x: number, size = 14) => `<text x="${x}" y="50" font-size="${size}">tip to tip</text>`;
    await page.setContent(drawing(text(10) + text(40)));
    expect((await page.evaluate(poorDrawings)).join()).toContain('lies on');
    await page.setContent(drawing(text(280)));
    expect((await page.evaluate(poorDrawings)).join()).toContain('leaves');
    await page.setContent(drawing(text(10, 6)));
    expect((await page.evaluate(poorDrawings)).join()).toContain('high');
    await page.setContent(drawing(text(10) + text(150)));
    expect(await page.evaluate(poorDrawings)).toEqual([]);
  });
});
