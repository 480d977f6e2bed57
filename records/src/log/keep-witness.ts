import type { Checkpoint } from './checkpoint.ts';
import { type Countersignature, countersignature } from './countersignatures.ts';
import type { DeviceKey } from './ed25519.ts';
import { rootOfLeaves } from './merkle.ts';
import { consistencyProof } from './merkle-proof.ts';
import { type Meeting, meetCheckpoint, signWitness } from './witness.ts';

/**
 * Where a witness keeps the latest checkpoint of each log. `exchange` compares and stores in one step that nothing else
 * comes between, and answers only when what it stored is on the disk: of two answers at once, the slower would else let
 * the log roll back behind the quicker.
 */
export interface KeptCheckpoints {
  exchange<Answer>(
    log: { readonly plant: string; readonly device: string },
    step: (known: Checkpoint | undefined) => { readonly keep?: Checkpoint; readonly answer: Answer },
  ): Promise<Answer>;
}

/** A log as a witness meets it. */
export interface LogMet {
  /** Sound: its signature has been checked. */
  readonly checkpoint: Checkpoint;
  /**
   * Ids of its events up to the checkpoint at least, where the whole log was met and found whole; else a proof from the
   * checkpoint known before.
   */
  readonly shown: { readonly ids: readonly string[] } | { readonly proof: readonly string[] };
}

/** What came of a meeting. */
export type Witnessed =
  | { readonly meeting: 'first-seen' | 'same' | 'grown'; readonly countersignature: Countersignature }
  | { readonly meeting: 'older' | 'not-proved'; readonly known: Checkpoint }
  /**
   * One device signed two histories. Both checkpoints together prove it to anybody: of one size with two roots, or the
   * known one beside a whole log that does not contain it.
   */
  | { readonly meeting: 'fork' | 'rewritten'; readonly known: Checkpoint; readonly offered: Checkpoint };

/**
 * Meets a log as a witness: weighs its checkpoint against the last one kept, keeps the new one, and countersigns it.
 *
 * @param met - the log
 * @param kept - where checkpoints are kept
 * @param witness - key of the witness, and its wall clock, UTC
 */
export async function witnessLog(
  met: LogMet,
  kept: KeptCheckpoints,
  witness: { readonly key: DeviceKey; readonly at: string },
): Promise<Witnessed> {
  const { checkpoint } = met;
  const { meeting, known } = await kept.exchange(checkpoint, (before) => {
    const weighed = weigh(before, met);
    const isNew = weighed === 'first-seen' || weighed === 'grown';
    return { answer: { meeting: weighed, known: before ?? checkpoint }, ...(isNew ? { keep: checkpoint } : {}) };
  });
  if (meeting === 'fork' || meeting === 'rewritten') return { meeting, known, offered: checkpoint };
  if (meeting === 'older' || meeting === 'not-proved') return { meeting, known };
  const statement = await signWitness(checkpoint, witness.at, witness.key);
  return { meeting, countersignature: countersignature(statement, witness.key.publicKey) };
}

/** Who has the whole log needs no proof from it, and knows more than that one is missing. */
function weigh(known: Checkpoint | undefined, { checkpoint, shown }: LogMet): Meeting | 'rewritten' {
  if (known === undefined || !('ids' in shown))
    return meetCheckpoint(known, checkpoint, 'ids' in shown ? [] : shown.proof);
  const { ids } = shown;
  const holdsKnown = known.size > ids.length || rootOfLeaves(ids.slice(0, known.size)) === known.root;
  if (!holdsKnown && known.size !== checkpoint.size) return 'rewritten';
  const proof = consistencyProof(ids.slice(0, checkpoint.size), Math.min(known.size, checkpoint.size, ids.length));
  return meetCheckpoint(known, checkpoint, proof);
}
