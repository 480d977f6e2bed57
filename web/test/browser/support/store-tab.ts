import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { BrowserContext, Page } from 'playwright-core';
import { launchProfile } from '../../../../tools/browser/launch.ts';
import type { PlantStore } from '../../../src/store/plant-store.ts';
import type { StorePage } from './store-page/store-page.ts';

/** What a tab of the store page offers inside the browser. */
export interface StoreWindow {
  readonly page: StorePage;
  /** Put there by a test, to go on with it in a later step. */
  readonly store: PlantStore;
}

/** A device: a browser with its own profile, kept until the device is thrown away. */
export interface Device {
  readonly context: BrowserContext;
  /** A new tab with the store page; under another address where one is given. */
  tab(otherAddress?: string): Promise<Page>;
  throwAway(): Promise<void>;
}

/** A device that has never seen the store. */
export async function newDevice(address: string): Promise<Device> {
  const profile = await mkdtemp(join(tmpdir(), 'store-device-'));
  const context = await launchProfile(profile);
  return {
    context,
    tab: async (otherAddress = address) => {
      const page = await context.newPage();
      await page.goto(otherAddress);
      await page.waitForFunction(() => 'page' in window);
      return page;
    },
    throwAway: async () => {
      await context.close();
      await rm(profile, { recursive: true, force: true, maxRetries: 10, retryDelay: 200 });
    },
  };
}
