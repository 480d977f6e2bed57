import type { Page } from 'playwright-core';
import { axeFaults } from './axe.ts';
import { cutText, lengthen, poorContrast, poorTargets, smallText } from './measure.ts';
import { phone, wide } from './reader.ts';

/** Every language and size in which a page is looked at; `faceFaults` looks at it in both themes. */
export const faces = (['en', 'de', 'es'] as const).flatMap((language) => [
  { language, size: 'phone', viewport: phone },
  { language, size: 'wide screen', viewport: wide },
]);

const themes = ['day', 'night'] as const;

interface Looking {
  /** Where to put pictures of it, without theme and ending. */
  readonly picture?: string | undefined;
  /** Whether axe-core looks too; `bringAxe` comes before. Default: yes. */
  readonly axe?: boolean;
}

/**
 * What a tired reader would stumble over on a page as it stands: one line a fault. Where things stand is the same in both
 * themes, how they are coloured is not.
 */
export async function faceFaults(page: Page, { picture, axe = true }: Looking = {}): Promise<string[]> {
  const faults = [
    ...(await page.evaluate(cutText)),
    ...(await page.evaluate(poorTargets)),
    ...(await page.evaluate(smallText)),
  ];
  for (const theme of themes) {
    await page.evaluate(wear, theme);
    if (picture !== undefined) await page.screenshot({ path: `${picture}-${theme}.png`, fullPage: true });
    const coloured = [...(await page.evaluate(poorContrast)), ...(axe ? await axeFaults(page) : [])];
    faults.push(...coloured.map((fault) => `${theme}: ${fault}`));
  }
  return faults;
}

/** Puts a theme on the page; colours that would fade over do it at once. */
function wear(theme: string): void {
  document.documentElement.dataset['theme'] = theme;
  document.documentElement.getBoundingClientRect();
  for (const fading of document.getAnimations()) fading.finish();
}

/** The same of a page whose sentences have grown by 40 %, as a translation may make them. */
export async function faultsWhenLonger(page: Page): Promise<string[]> {
  await page.evaluate(lengthen);
  return [...(await page.evaluate(cutText)), ...(await page.evaluate(poorTargets))];
}

/** Where pictures of a face go, when somebody wants to look at them (`LW_SHOTS`). */
export function pictureOf(name: string, language: string, { width }: { readonly width: number }): string | undefined {
  const folder = process.env['LW_SHOTS'];
  return folder === undefined ? undefined : `${folder}/${name}-${language}-${width}`;
}
