import type { Countersignature } from '@loopwright/records/log';
import { sha256Hex } from '@loopwright/records/log';
import { type CheckpointWithKey, readCheckpointCode, readWitnessCode } from '@loopwright/sheets';

/** What a scanned text is to a witness. */
export type WitnessCode =
  | { readonly is: 'checkpoint'; readonly given: CheckpointWithKey }
  | { readonly is: 'countersignature'; readonly given: Countersignature }
  /** Not whole, or read wrongly; and what is no code of this kind at all. */
  | { readonly is: 'damaged' | 'other' };

/** Reads a text as the code of a checkpoint or of a countersignature. */
export function judgeWitnessCode(text: string): WitnessCode {
  const checkpoint = readCheckpointCode(text, deviceOf);
  if (checkpoint !== undefined) return { is: 'checkpoint', given: checkpoint };
  const given = readWitnessCode(text, deviceOf);
  if (given !== undefined) return { is: 'countersignature', given };
  return { is: /^\s*LW1[CW]\b/.test(text) ? 'damaged' : 'other' };
}

function deviceOf(key: string): string {
  return sha256Hex(Uint8Array.from(key.match(/../g) ?? [], (pair) => Number.parseInt(pair, 16)));
}
