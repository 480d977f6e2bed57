import type { DeviceState, StorageState } from './plant-store.ts';

/** A share of the quota from which the person is warned. */
const nearlyFullShare = 0.8;

// From memory: quotas in ordinary windows are gigabytes; no browser says outright that a window is private.
const smallQuota_bytes = 512 * 2 ** 20;

type Told = Omit<StorageState, 'reserve' | 'secondCopy'>;

/** What the browser says about keeping what is stored. A browser that says nothing leaves it undefined. */
export async function storageState(): Promise<Told> {
  const { storage } = navigator as { readonly storage?: StorageManager };
  const [persisted, estimate] = await Promise.all([
    storage?.persisted?.().catch(() => undefined),
    storage?.estimate?.().catch(() => undefined),
  ]);
  return judged({ persisted, used_bytes: estimate?.usage, quota_bytes: estimate?.quota });
}

/** What follows from the browser's figures. */
export function judged({
  persisted,
  used_bytes,
  quota_bytes,
}: Pick<Told, 'persisted' | 'used_bytes' | 'quota_bytes'>): Told {
  const known = used_bytes !== undefined && quota_bytes !== undefined;
  return {
    persisted,
    used_bytes,
    quota_bytes,
    asksPerson: asksPerson(),
    nearlyFull: known && used_bytes >= nearlyFullShare * quota_bytes,
    perhapsPrivate: persisted === false && quota_bytes !== undefined && quota_bytes < smallQuota_bytes,
  };
}

/** Asks the browser to keep the records when space is short. */
export async function askToPersist(): Promise<boolean> {
  const { storage } = navigator as { readonly storage?: StorageManager };
  return (await storage?.persist?.().catch(() => false)) ?? false;
}

// Firefox puts the question to the person; the other engines decide by themselves.
function asksPerson(): boolean {
  return typeof CSS !== 'undefined' && CSS.supports('-moz-appearance', 'none');
}

/** Whether the app runs from the home screen; what it should do first where it does not. */
export function installation(): DeviceState['installation'] {
  // Only iOS knows this property; there a tab's records are deleted after a week without use.
  const { standalone } = navigator as { readonly standalone?: boolean };
  if (standalone === true || matchMedia('(display-mode: standalone)').matches) return 'installed';
  return standalone === false ? 'practice-only' : 'install-first';
}
