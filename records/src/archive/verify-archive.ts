import { isHash, sha256Hex } from '../log/hash.ts';
import type { BlobReference } from '../log/log-event.ts';
import type { Verify } from '../log/signing.ts';
import type { Failure, LogWarning } from '../log/verdict.ts';
import { type ExportVerdict, verifyExport } from '../log/verify-export.ts';
import type { ArchiveContent } from './read-archive.ts';

/** What is to be said of an exported file; `blob-changed` beside the verdicts of a log. */
export interface ArchiveVerdict extends Omit<ExportVerdict, 'failure' | 'warnings'> {
  readonly failure?: Omit<Failure, 'verdict'> & { readonly verdict: Failure['verdict'] | 'blob-changed' };
  readonly warnings: readonly (Omit<LogWarning, 'code'> & { readonly code: LogWarning['code'] | 'blob-missing' })[];
}

interface Named extends Omit<BlobReference, 'kind'> {
  /** Line of the event. */
  readonly at: number;
}

/**
 * Checks an exported file: the log first, then the pictures and curves that its events name.
 *
 * @param content - of the file
 * @param verify - checks a signature
 */
export async function verifyArchive({ log, blobs }: ArchiveContent, verify: Verify): Promise<ArchiveVerdict> {
  const named: Named[] = [];
  const verdict = await verifyExport(log, {
    verify,
    onEvent: ({ blobs: given }, _id, { line }) => {
      for (const { sha256, bytes } of referencesIn(given)) named.push({ sha256, bytes, at: line - 1 });
    },
  });
  if (verdict.failure !== undefined) return verdict;
  const missing = named.filter(({ sha256 }) => !blobs.has(sha256));
  const warnings = [...verdict.warnings, ...missing.map(({ at }) => ({ code: 'blob-missing' as const, at }))];
  const changed = named.find(({ sha256, bytes }) => {
    const given = blobs.get(sha256);
    return given !== undefined && (given.length !== bytes || sha256Hex(given) !== sha256);
  });
  const failure = changed === undefined ? {} : { failure: { verdict: 'blob-changed' as const, at: changed.at } };
  return { ...verdict, ...failure, warnings };
}

// Nothing but its signature has been checked of an event: what stands for its blobs may be anything.
function referencesIn(given: unknown): readonly Omit<BlobReference, 'kind'>[] {
  return Array.isArray(given) ? given.filter(isReference) : [];
}

function isReference(value: unknown): value is Omit<BlobReference, 'kind'> {
  return typeof value === 'object' && value !== null && 'sha256' in value && 'bytes' in value && isHash(value.sha256);
}
