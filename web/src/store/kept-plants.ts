import type { KeptPlant } from './plant-store.ts';
import type { Folded } from './snapshot.ts';
import type { StoreCore } from './store-core.ts';

/** The plants on this device, the shown one first. */
export async function keptPlants(core: StoreCore): Promise<readonly KeptPlant[]> {
  const { shown } = core.memory;
  const logs = await core.parts.db.getAll('logs');
  const ids = [...new Set(logs.map((log) => log.plant))];
  const kept = await Promise.all(ids.map((id) => keptPlant(core, id)));
  return kept.toSorted((a, b) => Number(b.id === shown) - Number(a.id === shown));
}

async function keptPlant(core: StoreCore, id: string): Promise<KeptPlant> {
  const shown = id === core.memory.shown;
  const { plant, size, demo } = shown ? core.folded : (await core.load(id)).folded;
  return { id, name: plant.name, size, demo, shown };
}

/** Whether everything in a plant was read from its files, so that they may still speak for it. */
export function isUntouched({ size, edits }: Folded): boolean {
  return size > 0 && edits === 0;
}
