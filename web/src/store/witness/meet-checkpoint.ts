import {
  type Checkpoint,
  type KeptCheckpoints,
  rootOfLeaves,
  soundCheckpoint,
  type Witnessed,
  witnessLog,
  writeCountersignatures,
} from '@loopwright/records/log';
import { strToU8 } from 'fflate';
import { momentOf } from '../clock-watch.ts';
import type { StoreCore } from '../store-core.ts';
import { metBefore, metKey } from './met-checkpoints.ts';
import { takeWitnesses } from './take-witnesses.ts';
import type { CheckpointMet } from './witness-desk.ts';

/**
 * Weighs the checkpoint of another device that was shown as a code, by the rule of every witness: it is countersigned
 * when nothing was known of that log, or when it is shown to contain what was.
 *
 * @param key - public key of that device, in hex
 * @param offered - its signature is still to be checked
 */
export async function meetCheckpoint(core: StoreCore, key: string, offered: Checkpoint): Promise<CheckpointMet> {
  const { db, device, clocks } = core.parts;
  const plant = core.memory.shown;
  if (offered.plant !== plant) return { meeting: 'other-plant' };
  if (offered.device === core.folded.own.device) return { meeting: 'own' };
  const owner = { plant, device: offered.device, publicKey: bytesOf(key), verify: device.verify };
  const checkpoint = await soundCheckpoint(offered, owner);
  if (checkpoint === undefined) return { meeting: 'unsound' };
  const range = IDBKeyRange.bound([plant, offered.device], [plant, offered.device, []]);
  const ids = (await db.getAll('events', range)).map(({ id }) => id);
  const isHere = ids.length >= checkpoint.size;
  if (isHere && rootOfLeaves(ids.slice(0, checkpoint.size)) !== checkpoint.root)
    return { meeting: 'fork', known: checkpoint, offered: checkpoint };
  const shown = isHere ? { ids } : { proof: [] };
  const witness = { key: device.key, at: momentOf(clocks).at };
  const met = await witnessLog({ checkpoint, shown }, keptIn(core), witness);
  if (isHere) await keepOwnWord(core, met);
  return met;
}

/** The log lies here too: what this device says of it goes out with the next export. */
async function keepOwnWord(core: StoreCore, met: Witnessed): Promise<void> {
  if ('countersignature' in met) await takeWitnesses(core, strToU8(writeCountersignatures([met.countersignature])));
}

/** Compares and keeps in one transaction, so that of two tabs neither lets a log roll back. */
function keptIn(core: StoreCore): KeptCheckpoints {
  return {
    exchange: (log, step) =>
      core.task(async () => {
        const { keep, answer } = step(await known(core, log));
        if (keep !== undefined)
          await core.commit((tx) => [tx.objectStore('meta').put(JSON.stringify(keep), metKey(log))]);
        return answer;
      }),
  };
}

/** The largest checkpoint that is known of a log: met by code, or with its events. */
async function known(
  core: StoreCore,
  log: { readonly plant: string; readonly device: string },
): Promise<Checkpoint | undefined> {
  const met = await metBefore(core.parts.db, log);
  const held = core.memory.logs.find(({ device }) => device === log.device)?.checkpoint;
  return (held?.size ?? -1) > (met?.size ?? -1) ? held : met;
}

function bytesOf(hex: string): Uint8Array {
  return Uint8Array.from(hex.match(/../g) ?? [], (pair) => Number.parseInt(pair, 16));
}
