import { Refusal } from '@loopwright/engine/refusal';
import { bytesToHex } from '@noble/hashes/utils.js';
import { canonicalText } from './canonical.ts';
import type { Checkpoint } from './checkpoint.ts';
import type { ExportHeader } from './export-form.ts';
import { sha256Hex } from './hash.ts';
import { deviceOf } from './log-state.ts';
import { type Sign, signatureOf } from './signing.ts';

/** The log of one device, to be exported. */
export interface LogToExport {
  readonly publicKey: Uint8Array;
  /** Exact texts of its events, by `seq`. */
  readonly lines: readonly string[];
  /** The latest that is known of it; the exporting device's own covers all its lines. */
  readonly checkpoint: Checkpoint;
}

/**
 * The text of an export: header, events, trailer; every line canonical, the last one ended too.
 *
 * @param plant - id of the plant
 * @param logs - one per device, the exporting device first
 * @param sign - with the exporting device's key
 * @throws Refusal `too-few`, `wrong-device`, `checkpoint-behind`
 */
export async function writeExport(plant: string, logs: readonly LogToExport[], sign: Sign): Promise<string> {
  checkLogs(logs);
  const keys = logs.map(({ publicKey }) => bytesToHex(publicKey));
  const header = canonicalText({ v: 1, kind: 'export', plant, keys } satisfies ExportHeader);
  const said = { v: 1, header: sha256Hex(header), checkpoints: logs.map(({ checkpoint }) => checkpoint) } as const;
  const trailer = canonicalText({ ...said, sig: await signatureOf('export', said, sign) });
  const lines = [header, ...logs.flatMap((log) => log.lines), trailer];
  return `${lines.join('\n')}\n`;
}

function checkLogs(logs: readonly LogToExport[]): void {
  const [own] = logs;
  if (own === undefined) throw new Refusal('too-few', 'logs', { value: 0, min: 1 });
  for (const [i, { publicKey, checkpoint }] of logs.entries())
    if (checkpoint.device !== deviceOf(publicKey))
      throw new Refusal('wrong-device', `logs[${i}].checkpoint.device`, { value: checkpoint.device });
  if (own.checkpoint.size !== own.lines.length) {
    const limits = { value: own.checkpoint.size, min: own.lines.length, max: own.lines.length };
    throw new Refusal('checkpoint-behind', 'logs[0].checkpoint.size', limits);
  }
}
