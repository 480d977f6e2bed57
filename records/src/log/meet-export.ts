import { canonicalValue } from './canonical.ts';
import type { Checkpoint } from './checkpoint.ts';
import type { ExportTrailer } from './export-form.ts';
import type { LogMet } from './keep-witness.ts';
import { lastLineStart, lineAt } from './line-source.ts';
import type { Verify } from './signing.ts';
import { type ExportVerdict, verifyExport } from './verify-export.ts';

/** An export as a witness meets it: its verdict, and each log where it is whole. */
export interface ExportMet {
  readonly verdict: ExportVerdict;
  /** In the order of the keys; empty where the export fails. */
  readonly logs: readonly LogMet[];
}

/**
 * Reads an export for a witness.
 *
 * @param bytes - of the export
 * @param verify - checks a signature
 */
export async function meetExport(bytes: Uint8Array, verify: Verify): Promise<ExportMet> {
  const ids = new Map<string, string[]>();
  const onEvent = ({ device }: { readonly device: string }, id: string) => {
    const known = ids.get(device);
    if (known === undefined) ids.set(device, [id]);
    else known.push(id);
  };
  const verdict = await verifyExport(bytes, { verify, onEvent });
  if (verdict.failure !== undefined) return { verdict, logs: [] };
  const { checkpoints } = canonicalValue(lineAt(bytes, lastLineStart(bytes)).text ?? '') as ExportTrailer;
  const logs = verdict.logs.map(({ state }, i) => ({
    checkpoint: checkpoints[i] as Checkpoint,
    shown: { ids: ids.get(state.device) ?? [] },
  }));
  return { verdict, logs };
}
