import { openStore } from './open-store.ts';
import type { PlantStore } from './plant-store.ts';
import { StoreError } from './store-error.ts';
import { unkeptStore } from './unkept-store.ts';

/** Opens the store of this device; where the browser forbids storage, one that only shows. */
export async function startStore(): Promise<PlantStore> {
  try {
    return await openStore();
  } catch (cause) {
    if (cause instanceof StoreError && cause.code === 'newer') return unkeptStore('newer');
    return unkeptStore('no-storage');
  }
}
