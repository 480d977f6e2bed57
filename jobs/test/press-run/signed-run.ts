import {
  appendEvent,
  type Checkpoint,
  emptyLog,
  type LogState,
  nobleSigner,
  seenOf,
  signCheckpoint,
  writeExport,
} from '@loopwright/records/log';
import { type LoggedAnyEvent, type RunEvent, readRunEvent } from '@loopwright/records/run';
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import type { LogOfRun } from '../../src/audit-report/index.ts';
import { foldRun, type RunState } from '../../src/press-run/index.ts';

/** A run as a device really keeps it: each event chained and signed, so with other ids than the run's world gave. */
export interface SignedRun {
  readonly state: RunState;
  readonly log: LogOfRun;
  readonly checkpoint: Checkpoint;
  /** The log as a file. */
  readonly text: string;
}

const key = nobleSigner(sha256(utf8ToBytes('phone')));
const plant = 'quillmoor';

/**
 * Signs the events of a run in a log of one device.
 *
 * @param events - as the run's world made them; what they say of one another's ids is kept
 * @param before - other things that stand in the log before them
 * @param seenTo - how many events of the log one other device has seen
 */
export async function signedRun(
  events: readonly RunEvent[],
  {
    before = [],
    seenTo = 0,
  }: { readonly before?: readonly Pick<LoggedAnyEvent, 'type' | 'body'>[]; readonly seenTo?: number } = {},
): Promise<SignedRun> {
  const lines: string[] = [];
  const ids = new Map<string, string>();
  const signed: LoggedAnyEvent[] = [];
  let log: LogState = emptyLog(plant, key.publicKey);
  const append = async (event: Omit<LoggedAnyEvent, 'id' | 'device'>): Promise<string> => {
    const { at, boot, up_ms, by, type, body } = event;
    const appended = await appendEvent(log, { at, boot, up_ms: Math.round(up_ms), by, type, body }, key.sign);
    log = appended.state;
    lines.push(appended.line);
    signed.push({ ...appended.event, id: appended.id } as LoggedAnyEvent);
    return appended.id;
  };
  const [first] = events;
  if (first === undefined) throw new Error('a run without events');
  for (const { type, body } of before) await append({ ...first, type, body } as Omit<LoggedAnyEvent, 'id' | 'device'>);
  for (const event of events) ids.set(event.id, await append(renamed(event, ids)));
  const checkpoint = await signCheckpoint(log, new Date(Date.parse(log.lastAt ?? '') + 1000).toISOString(), key.sign);
  const state = foldRun(signed);
  if (state === undefined) throw new Error('the run does not fold');
  return {
    state,
    checkpoint,
    log: {
      device: log.device,
      size: log.size,
      key: bytesToHex(key.publicKey),
      checkpoint,
      places: signed.flatMap((event, seq) => (readRunEvent(event) ? [{ event: event.id, seq }] : [])),
      seen: seenOf([{ device: log.device, size: seenTo, witness: 'f'.repeat(64) }], log.device),
    },
    text: await writeExport(plant, [{ publicKey: key.publicKey, lines, checkpoint }], key.sign),
  };
}

/** The event with the ids that those it speaks of have in the log. */
function renamed(event: RunEvent, ids: ReadonlyMap<string, string>): RunEvent {
  const text = JSON.stringify(event.body).replace(/[0-9a-f]{64}/g, (id) => ids.get(id) ?? id);
  return { ...event, body: JSON.parse(text) } as RunEvent;
}
