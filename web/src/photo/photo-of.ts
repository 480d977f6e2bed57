import type { PlantStore } from '../store/plant-store.ts';

/**
 * A kept photo; undefined where this device does not have it. Whatever came in under this hash is only ever shown as a
 * JPEG, so that nothing else can come of it.
 */
export async function photoOf(store: Pick<PlantStore, 'blob'>, sha256: string): Promise<Blob | undefined> {
  const kept = await store.blob(sha256);
  return kept?.slice(0, kept.size, 'image/jpeg');
}
