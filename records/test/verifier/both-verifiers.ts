import { Refusal } from '@loopwright/engine/refusal';
import { readArchive, verifyArchive } from '../../src/archive/index.ts';
import { logRoot } from '../../src/log/index.ts';
import { verifyRecord } from '../../verifier/verify-record.mjs';
import { verify } from '../log/sample-log.ts';

/** What a verifier says, in one form. */
export interface Said {
  readonly verdict: string;
  readonly place: Readonly<Record<string, unknown>>;
  readonly warnings: readonly object[];
  readonly logs: readonly object[];
}

/** The verdict of this package. */
export async function ours(bytes: Uint8Array): Promise<Said> {
  try {
    const content = readArchive(bytes);
    const { failure, device, plant, logs, warnings, countersignatures } = await verifyArchive(content, verify);
    const { verdict, ...place } = failure ?? { verdict: 'ok' as const };
    const told = logs.map(({ state, witnessed }) => {
      const seen = countersignatures.filter(({ statement }) => statement.device === state.device);
      return {
        ...{ device: state.device, size: state.size, head: state.head, root: logRoot(state), witnessed },
        seenBy: new Set(seen.map(({ statement }) => statement.witness)).size,
        seenTo: Math.max(0, ...seen.map(({ statement }) => statement.size)),
      };
    });
    const where = { ...place, ...(device === undefined ? {} : { device }), ...(plant === undefined ? {} : { plant }) };
    return { verdict, place: where, warnings, logs: verdict === 'ok' ? told : [] };
  } catch (cause) {
    if (!(cause instanceof Refusal)) throw cause;
    return { verdict: 'refused', place: { code: cause.code }, warnings: [], logs: [] };
  }
}

/** The verdict of the verifier that stands alone. */
export async function alone(bytes: Uint8Array): Promise<Said> {
  const { verdict, logs, warnings, ...place } = await verifyRecord(bytes);
  const told = logs.map(({ code: _, ...log }) => log);
  const given = Object.fromEntries(Object.entries(place).filter(([, value]) => value !== undefined));
  return { verdict, place: given, warnings, logs: verdict === 'ok' ? told : [] };
}
