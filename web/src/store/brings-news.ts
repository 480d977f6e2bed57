import { sha256Hex } from '@loopwright/records/log';
import type { Database, LogRow } from './database.ts';
import type { ImportFile } from './import-file.ts';

/** What was here before a file was met. */
interface Here {
  readonly db: Database;
  /** Number of events of the file that are not here. */
  readonly added: number;
  /** The logs as they were known, and as they are with what the file says of them. */
  readonly before: readonly LogRow[];
  readonly after: readonly LogRow[];
}

/** Whether a file brings what this device lacks: events, words of witnesses, or pictures that are gone or damaged here. */
export async function bringsNews({ blobs }: ImportFile, { db, added, before, after }: Here): Promise<boolean> {
  if (added > 0 || isSeenFurther(after, before)) return true;
  for (const name of blobs.keys()) {
    const here = await (await db.get('blobs', name))?.bytes.arrayBuffer().catch(() => undefined);
    if (here === undefined || sha256Hex(new Uint8Array(here)) !== name) return true;
  }
  return false;
}

/** Whether somebody else has seen more of a log than was known here. */
function isSeenFurther(logs: readonly LogRow[], before: readonly LogRow[]): boolean {
  return logs.some((log) => {
    const known = before.find(({ device }) => device === log.device);
    const sizes = new Map(known?.witnesses?.map(({ statement }) => [statement.witness, statement.size]));
    return (log.witnesses ?? []).some(({ statement }) => (sizes.get(statement.witness) ?? -1) < statement.size);
  });
}
