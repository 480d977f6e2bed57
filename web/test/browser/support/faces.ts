import type { Page } from 'playwright-core';
import { axeFaults } from './axe.ts';
import { cutText, lengthen, poorContrast, poorTargets, smallText } from './measure.ts';
import { phone, wide } from './reader.ts';

/** Every language, theme and size in which a page is looked at. */
export const faces = (['en', 'de', 'es'] as const).flatMap((language) =>
  (['day', 'night'] as const).flatMap((theme) => [
    { language, theme, size: 'phone', viewport: phone },
    { language, theme, size: 'wide screen', viewport: wide },
  ]),
);

/** What a tired reader would stumble over on a page as it stands: one line a fault. `bringAxe` comes before. */
export async function faceFaults(page: Page): Promise<string[]> {
  return [
    ...(await page.evaluate(cutText)),
    ...(await page.evaluate(poorTargets)),
    ...(await page.evaluate(poorContrast)),
    ...(await page.evaluate(smallText)),
    ...(await axeFaults(page)),
  ];
}

/** The same of a page whose sentences have grown by 40 %, as a translation may make them. */
export async function faultsWhenLonger(page: Page): Promise<string[]> {
  await page.evaluate(lengthen);
  return [...(await page.evaluate(cutText)), ...(await page.evaluate(poorTargets))];
}
