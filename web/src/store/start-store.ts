import { openStore } from './open-store.ts';
import type { PlantStore } from './plant-store.ts';
import { StoreError } from './store-error.ts';
import { unkeptStore } from './unkept-store.ts';

/** Opens the store of this device; where that cannot be, one that only shows and says why. */
export function startStore(): Promise<PlantStore> {
  return new Promise((resolve) => {
    const onBlocked = () => resolve(unkeptStore('blocked'));
    openStore({ onBlocked }).then(resolve, (cause: unknown) => {
      const isNewer = cause instanceof StoreError && cause.code === 'newer';
      resolve(unkeptStore(isNewer ? 'newer' : 'no-storage'));
    });
  });
}
