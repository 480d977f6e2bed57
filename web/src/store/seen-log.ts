import { type Seen, seenOf } from '@loopwright/records/log';
import type { LogRow } from './database.ts';

/** How far others have seen a log; what nobody else has seen is on one device only. */
export function seenLog({ device, witnesses = [] }: Pick<LogRow, 'device' | 'witnesses'>): Seen {
  return seenOf(
    witnesses.map(({ statement }) => statement),
    device,
  );
}
