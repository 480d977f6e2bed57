import {
  checkCountersignatures,
  noEvent,
  rootOfLeaves,
  sha256Hex,
  type Verify,
  verifyLog,
  writeCountersignatures,
} from '@loopwright/records/log';
import { strToU8 } from 'fflate';
import type { Database, EventRow, LogRow } from './database.ts';
import { eventOf, groupedByDevice } from './event-row.ts';
import type { BrokenChain, Verification } from './plant-store.ts';
import type { StoreCore } from './store-core.ts';

/** Checks every line, signature, link, statement, blob and countersignature of the shown plant again. */
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
  const whole = { plant, byDevice, logs, verify };
  const broken = (await firstBroken(whole)) ?? (await firstContradicted(whole));
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

/** The first log that is not what others saw of it. */
async function firstContradicted({ plant, byDevice, logs, verify }: PlantLogs): Promise<BrokenChain | undefined> {
  for (const { device, witnesses = [] } of logs) {
    const ids = (byDevice.get(device) ?? []).map(({ id }) => id);
    const marks = witnesses.map(({ statement: { size } }) => {
      const seen = ids.slice(0, size);
      return [size, { root: rootOfLeaves(seen), head: seen.at(-1) ?? noEvent }] as const;
    });
    const held = new Map([[device, { size: ids.length, marks: new Map(marks) }]]);
    const text = strToU8(writeCountersignatures(witnesses));
    const { failure } = await checkCountersignatures(text, { plant, verify, logs: held });
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
