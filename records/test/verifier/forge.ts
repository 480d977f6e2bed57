import { createHash } from 'node:crypto';
import {
  type Countersignature,
  canonicalText,
  countersignature,
  type DeviceKey,
  deviceOf,
  leafHash,
  rootOfLeaves,
} from '../../src/log/index.ts';
import { deviceKey, happening, plantId } from '../log/sample-log.ts';

// What whoever holds the keys can write: anything, rightly signed. The writers of the package refuse most of it.

type Fields = Readonly<Record<string, unknown>>;

export async function signed(kind: string, said: Fields, key: DeviceKey): Promise<Record<string, unknown>> {
  const message = Buffer.from(`splice-record/${kind}/1\0${canonicalText(said)}`);
  return { ...said, sig: Buffer.from(await key.sign(message)).toString('hex') };
}

export const hashOf = (text: string): string => createHash('sha256').update(text).digest('hex');

/** A log whose n-th event has other fields than an honest one. */
export interface ForgedLog {
  readonly key: DeviceKey;
  readonly size: number;
  readonly change?: (n: number) => Fields;
  /** How many events its checkpoint covers; all without it. */
  readonly seen?: number;
  readonly checkpoint?: Fields;
}

export interface Forged {
  readonly lines: readonly string[];
  readonly ids: readonly (readonly string[])[];
  readonly checkpoints: readonly Fields[];
}

/** An export of logs, its trailer signed by the first key whatever the logs say. */
export async function forgedExport(
  logs: readonly ForgedLog[],
  { header = {}, trailer = {} }: { readonly header?: Fields; readonly trailer?: Fields } = {},
): Promise<Forged> {
  const written = await Promise.all(logs.map(writtenLog));
  const keys = logs.map(({ key }) => Buffer.from(key.publicKey).toString('hex'));
  const first = canonicalText({ v: 1, kind: 'export', plant: plantId, keys, ...header });
  const checkpoints = written.map(({ checkpoint }) => checkpoint);
  const [own] = logs;
  if (own === undefined) throw new Error('no log');
  const last = await signed('export', { v: 1, header: hashOf(first), checkpoints, ...trailer }, own.key);
  const lines = [first, ...written.flatMap((each) => each.lines), canonicalText(last)];
  return { lines, ids: written.map(({ ids }) => ids), checkpoints };
}

async function writtenLog({ key, size, change = () => ({}), seen = size, checkpoint = {} }: ForgedLog) {
  const device = deviceOf(key.publicKey);
  const [lines, ids]: [string[], string[]] = [[], []];
  for (let seq = 0; seq < size; seq++) {
    const { sig, ...changes } = change(seq);
    const prev = ids.at(-1) ?? '0'.repeat(64);
    const honest = { v: 1, plant: plantId, device, seq, prev, blobs: [], ...happening(seq) };
    const said = Object.fromEntries(
      Object.entries({ ...honest, ...changes }).filter(([, value]) => value !== undefined),
    );
    ids.push(leafHash(Buffer.from(canonicalText(said))));
    const event = await signed('event', said, key);
    lines.push(canonicalText(sig === undefined ? event : { ...event, sig }));
  }
  const mark = { size: seen, root: rootOfLeaves(ids.slice(0, seen)), head: ids[seen - 1] ?? '0'.repeat(64) };
  const said = { v: 1, plant: plantId, device, ...mark, at: '2026-11-26T00:00:00Z', ...checkpoint };
  return { lines, ids, checkpoint: await signed('checkpoint', said, key) };
}

/** What a witness says of a log at a size, with other fields where given. */
export async function forgedWitness(
  { key, ids }: { readonly key: DeviceKey; readonly ids: readonly string[] },
  size: number,
  { by = deviceKey('witness'), change = {} }: { readonly by?: DeviceKey; readonly change?: Fields } = {},
): Promise<Countersignature> {
  const mark = { size, root: rootOfLeaves(ids.slice(0, size)), head: ids[size - 1] ?? '0'.repeat(64) };
  const who = { device: deviceOf(key.publicKey), witness: deviceOf(by.publicKey) };
  const said = { v: 1, plant: plantId, ...mark, at: '2026-11-26T00:00:01Z', ...who, ...change };
  return countersignature((await signed('witness', said, by)) as never, by.publicKey);
}
