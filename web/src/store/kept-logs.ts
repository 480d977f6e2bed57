import type { LogRow } from './database.ts';
import type { KeptLog } from './plant-store.ts';
import type { StoreCore } from './store-core.ts';

/** The logs of the shown plant: how long, vouched for up to where, and who else has seen them. */
export async function keptLogs(core: StoreCore): Promise<readonly KeptLog[]> {
  const { logs, shown } = core.memory;
  return Promise.all(logs.filter(({ plant }) => plant === shown).map((log) => keptLog(core, log)));
}

async function keptLog(
  { parts }: StoreCore,
  { plant, device, publicKey, checkpoint, witnesses = [] }: LogRow,
): Promise<KeptLog> {
  const size = await parts.db.count('events', IDBKeyRange.bound([plant, device], [plant, device, []]));
  return {
    device,
    size,
    key: Array.from(publicKey, (byte) => byte.toString(16).padStart(2, '0')).join(''),
    ...(checkpoint && { checkpoint }),
    sightings: witnesses.map(({ statement }) => statement),
  };
}
