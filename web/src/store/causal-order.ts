import { logsMet } from './device-events.ts';

/** What the order of events rests on. */
interface Ordered {
  readonly type: string;
  readonly body: unknown;
}

/**
 * One order for the events of several devices, the same wherever the same logs are: each log in its own order, and
 * nothing a device wrote after it met another log before what it had seen there. Of what nobody saw in order, the log
 * of the device whose id sorts first comes first. Wall clocks play no part.
 *
 * @param logs - events by device, each by `seq`
 */
export function causalOrder<E extends Ordered>(logs: ReadonlyMap<string, readonly E[]>): readonly E[] {
  const ordered: E[] = [];
  const next = new Map<string, number>();
  // A log that claims to have met what came after it would go round in circles.
  const open = new Set<string>();
  const takeUpTo = (device: string, size: number) => {
    const log = logs.get(device) ?? [];
    if (open.has(device)) return;
    open.add(device);
    for (let seq = next.get(device) ?? 0; seq < Math.min(size, log.length); seq++) {
      const event = log[seq];
      if (event === undefined) break;
      for (const seen of logsMet(event)) takeUpTo(seen.device, seen.size);
      ordered.push(event);
      next.set(device, seq + 1);
    }
    open.delete(device);
  };
  for (const device of [...logs.keys()].sort()) takeUpTo(device, Number.POSITIVE_INFINITY);
  return ordered;
}
