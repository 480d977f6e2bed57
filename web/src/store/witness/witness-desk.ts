import type { Checkpoint, Countersignature, Witnessed, WitnessFailure } from '@loopwright/records/log';
import type { StoreCore } from '../store-core.ts';
import { meetCheckpoint } from './meet-checkpoint.ts';
import { takeWitnesses } from './take-witnesses.ts';

/** What this device says of its own log, and what others said of it. */
export interface OwnLog {
  /** Public key in hex. */
  readonly key: string;
  readonly checkpoint: Checkpoint;
  readonly witnesses: readonly Countersignature[];
}

/** What came of the checkpoint of another device. */
export type CheckpointMet =
  | Witnessed
  /** Of this device itself, of another plant, or not signed by whom it names. */
  | { readonly meeting: 'own' | 'other-plant' | 'unsound' };

/** What came of countersignatures: all of the sound ones are kept, or none. */
export type WitnessesTaken =
  | { readonly fresh: number; readonly known: number; readonly elsewhere: number }
  | { readonly failure: WitnessFailure };

/** Where this device bears witness to others, and keeps what they say of it. */
export interface WitnessDesk {
  /** Undefined before the first event of this device in the shown plant. */
  own(): OwnLog | undefined;
  /** Weighs a checkpoint that was shown as a code, keeps it, countersigns it. */
  meet(key: string, checkpoint: Checkpoint): Promise<CheckpointMet>;
  /** Takes the text of a file of countersignatures. */
  take(file: Uint8Array): Promise<WitnessesTaken>;
}

export function witnessDesk(core: StoreCore): WitnessDesk {
  return {
    own: () => ownLog(core),
    meet: (key, checkpoint) => meetCheckpoint(core, key, checkpoint),
    take: (file) => takeWitnesses(core, file),
  };
}

function ownLog({ memory, folded, parts }: StoreCore): OwnLog | undefined {
  const { device } = folded.own;
  const { checkpoint, witnesses = [] } = memory.logs.find((log) => log.device === device) ?? {};
  if (checkpoint === undefined || checkpoint.size === 0) return undefined;
  return { key: hexOf(parts.device.key.publicKey), checkpoint, witnesses };
}

function hexOf(bytes: Uint8Array): string {
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
}
