import { sha256Hex, type Verify, verifyLog } from '@loopwright/records/log';
import type { Database, EventRow, LogRow } from './database.ts';
import { eventOf, groupedByDevice } from './event-row.ts';
import type { BrokenChain, Verification } from './plant-store.ts';
import type { StoreCore } from './store-core.ts';

/** Checks every line, signature, link, statement and blob of the shown plant again. */
export async function verifyPlant(
  core: StoreCore,
  onProgress: (done: number, of: number) => void = () => undefined,
): Promise<Verification> {
  const { db, device } = core.parts;
  const plant = core.memory.shown;
  const range = IDBKeyRange.bound([plant], [plant, []]);
  const tx = db.transaction(['events', 'logs']);
  const [rows, logs] = await Promise.all([
    tx.objectStore('events').getAll(range),
    tx.objectStore('logs').getAll(range),
  ]);
  let done = 0;
  const verify: Verify = async (message, signature, publicKey) => {
    done += 1;
    if (done % 100 === 0) onProgress(done, rows.length);
    return device.verify(message, signature, publicKey);
  };
  const byDevice = groupedByDevice(rows);
  const broken = await firstBroken({ plant, byDevice, logs, verify });
  const brokenBlobs = broken === undefined ? await findBrokenBlobs(db, rows) : [];
  return { events: rows.length, devices: byDevice.size, broken: broken ?? core.memory.broken, brokenBlobs };
}

interface PlantLogs {
  readonly plant: string;
  readonly byDevice: ReadonlyMap<string, readonly EventRow[]>;
  readonly logs: readonly LogRow[];
  readonly verify: Verify;
}

async function firstBroken({ plant, byDevice, logs, verify }: PlantLogs): Promise<BrokenChain | undefined> {
  const stray = [...byDevice.keys()].find((device) => !logs.some((log) => log.device === device));
  if (stray !== undefined) return { device: stray, verdict: 'wrong-device', at: undefined };
  for (const { device, publicKey, checkpoint } of logs) {
    const rows = byDevice.get(device) ?? [];
    const lines = rows.map((row) => row.line);
    const checkpoints = checkpoint === undefined ? [] : [checkpoint];
    const { failure } = await verifyLog({ lines, publicKey, plant, checkpoints }, verify);
    if (failure !== undefined) return { device, verdict: failure.verdict, at: failure.at };
  }
  return undefined;
}

async function findBrokenBlobs(db: Database, rows: readonly EventRow[]): Promise<readonly string[]> {
  const named = new Set(rows.flatMap((row) => eventOf(row).blobs.map((blob) => blob.sha256)));
  const broken: string[] = [];
  for (const name of named) {
    const bytes = await (await db.get('blobs', name))?.bytes.arrayBuffer();
    if (bytes === undefined || sha256Hex(new Uint8Array(bytes)) !== name) broken.push(name);
  }
  return broken;
}
