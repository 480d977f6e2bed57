import { sha256 } from '@noble/hashes/sha2.js';
import { utf8ToBytes } from '@noble/hashes/utils.js';
import {
  appendEvent,
  type Checkpoint,
  type DeviceKey,
  emptyLog,
  type Happening,
  type LogState,
  nobleSigner,
  signCheckpoint,
  type Verify,
  webCryptoVerifier,
  writeExport,
} from '../../src/log/index.ts';

export const plantId = 'quillmoor';
export const verify: Verify = webCryptoVerifier(globalThis.crypto.subtle);

/** A key that is the same in every run. */
export const deviceKey = (name: string): DeviceKey => nobleSigner(sha256(utf8ToBytes(name)));

/** A log as a test needs it: its lines, and the state before and after each. */
export interface SampleLog {
  readonly key: DeviceKey;
  readonly lines: readonly string[];
  readonly ids: readonly string[];
  /** One more than lines. */
  readonly states: readonly LogState[];
}

/** The n-th thing that happens in a sample log; a minute apart, with letters of more than one byte. */
export function happening(n: number, changes: Partial<Happening> = {}): Happening {
  const thing = {
    id: `QM-0${n % 6}-${n}`,
    note: 'Riemen geprüft – ⌀ 40',
    tension_N: 12.5 + n,
    marks: [1005.5, null, true],
  };
  return {
    at: new Date(Date.UTC(2026, 10, 25, 2, n)).toISOString(),
    boot: 'b1',
    up_ms: n * 60_000,
    by: 'a3f1',
    type: 'position.defined',
    body: { schema: 1, thing },
    ...changes,
  };
}

export async function sampleLog(
  count: number,
  { key = deviceKey('phone'), plant = plantId, change = (n: number) => happening(n) } = {},
): Promise<SampleLog> {
  const states = [emptyLog(plant, key.publicKey)];
  const lines: string[] = [];
  const ids: string[] = [];
  for (let n = 0; n < count; n++) {
    const { state, line, id } = await appendEvent(
      states[n] ?? states[0] ?? emptyLog(plant, key.publicKey),
      change(n),
      key.sign,
    );
    states.push(state);
    lines.push(line);
    ids.push(id);
  }
  return { key, lines, ids, states };
}

export function stateAt({ states }: SampleLog, size: number): LogState {
  const state = states[size];
  if (state === undefined) throw new Error(`no state of size ${size}`);
  return state;
}

export const checkpointAt = (log: SampleLog, size: number): Promise<Checkpoint> =>
  signCheckpoint(stateAt(log, size), '2026-11-26T00:00:00Z', log.key.sign);

/** An export of whole logs, the first one exporting; of the others the checkpoint covers `seen` events. */
export async function exportOf(logs: readonly SampleLog[], seen: readonly number[] = []): Promise<Uint8Array> {
  const given = await Promise.all(
    logs.map(async (log, i) => ({
      publicKey: log.key.publicKey,
      lines: log.lines,
      checkpoint: await checkpointAt(log, seen[i] ?? log.lines.length),
    })),
  );
  const [own] = logs;
  if (own === undefined) throw new Error('no log');
  return utf8ToBytes(await writeExport(stateAt(own, 0).plant, given, own.key.sign));
}
