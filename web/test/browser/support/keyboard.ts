import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';

const mostPresses = 80;

/** Presses Tab until something is focused that a person without a mouse must get to. */
export async function tabTo(page: Page, wanted: Locator): Promise<void> {
  const isFocused = () => wanted.evaluate((element) => element === document.activeElement);
  for (let presses = 0; presses < mostPresses && !(await isFocused()); presses += 1) await page.keyboard.press('Tab');
  expect(await isFocused(), String(wanted)).toBe(true);
}

/** Goes there by Tab and presses a key on it. */
export async function pressOn(page: Page, wanted: Locator, key = 'Enter'): Promise<void> {
  await tabTo(page, wanted);
  await page.keyboard.press(key);
}

/** Goes to a field by Tab and types over what stands in it. */
export async function typeInto(page: Page, wanted: Locator, text: string): Promise<void> {
  await tabTo(page, wanted);
  await page.keyboard.press('Control+A');
  await page.keyboard.type(text);
}

/** Goes to a group of radio buttons by Tab, which stops at one of them, and by arrows to the one wanted. */
export async function choose(page: Page, wanted: Locator): Promise<void> {
  const group = page.locator(`input[type=radio][name="${await wanted.getAttribute('name')}"]`);
  const checked = group.and(page.locator(':checked'));
  await tabTo(page, (await checked.count()) > 0 ? checked : group.first());
  if ((await checked.count()) === 0) await page.keyboard.press('Space');
  for (let presses = await group.count(); presses > 0 && !(await wanted.isChecked()); presses -= 1)
    await page.keyboard.press('ArrowDown');
  expect(await wanted.isChecked(), String(wanted)).toBe(true);
}
