import {
  type Countersignature,
  countersignature,
  type DeviceKey,
  deviceOf,
  signWitness,
} from '@loopwright/records/log';
import type { LogRow } from './database.ts';

/**
 * Countersignatures of a log known after more came: of each witness the one that covers most.
 *
 * @param here - known so far
 * @param given - sound ones of the same log
 */
export function mergeCountersignatures(
  here: readonly Countersignature[] = [],
  given: readonly Countersignature[] = [],
): readonly Countersignature[] {
  const best = new Map<string, Countersignature>();
  for (const each of [...here, ...given]) {
    const { witness, size } = each.statement;
    if ((best.get(witness)?.statement.size ?? -1) < size) best.set(witness, each);
  }
  return [...best.values()];
}

/**
 * Logs with a countersignature by this device on each that is not its own. They must have been met whole: no event of
 * them may be another than the one this device had before.
 *
 * @param logs - with the latest checkpoint that is known of each
 * @param key - of this device
 * @param at - wall clock, UTC
 */
export async function countersignLogs(logs: readonly LogRow[], key: DeviceKey, at: string): Promise<readonly LogRow[]> {
  const own = deviceOf(key.publicKey);
  return Promise.all(
    logs.map(async (log) => {
      const { checkpoint, witnesses = [] } = log;
      if (checkpoint === undefined || checkpoint.size === 0 || log.device === own) return log;
      const before = witnesses.find(({ statement }) => statement.witness === own);
      if ((before?.statement.size ?? 0) >= checkpoint.size) return log;
      const fresh = countersignature(await signWitness(checkpoint, at, key), key.publicKey);
      return { ...log, witnesses: mergeCountersignatures(witnesses, [fresh]) };
    }),
  );
}
