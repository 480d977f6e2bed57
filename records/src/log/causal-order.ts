/** What the order of events rests on. */
interface Ordered {
  readonly type: string;
  readonly body: unknown;
}

/** Type of an event in which a device says how far it has seen other logs. A published name. */
export const metType = 'device.met';

/** How far another log had come when it was met. */
export interface MetLog {
  readonly device: string;
  readonly size: number;
  readonly head: string;
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

/** The logs that an event says were met; of a foreign event, so nothing is taken for granted. */
function logsMet({ type, body }: Ordered): readonly MetLog[] {
  const thing = type === metType && isRecord(body) ? body['thing'] : undefined;
  const logs = isRecord(thing) ? thing['logs'] : undefined;
  return Array.isArray(logs) ? logs.filter(isMetLog) : [];
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function isMetLog(value: unknown): value is MetLog {
  return isRecord(value) && typeof value['device'] === 'string' && Number.isSafeInteger(value['size']);
}
