import { clockWentBack } from './clock.ts';
import { type LogEvent, type OpenedEvent, openEvent, wrongEventField } from './log-event.ts';
import { deviceOf, type LogState, withEvent } from './log-state.ts';
import { signatureHolds, type Verify } from './signing.ts';
import type { Failure, LogWarning } from './verdict.ts';
import { namedField } from './wrong-field.ts';

/** How far a log was found whole, and what ended it. */
export interface Extended {
  readonly state: LogState;
  readonly failure?: Failure;
  readonly warnings: readonly LogWarning[];
}

export interface Extending {
  readonly publicKey: Uint8Array;
  readonly verify: Verify;
  /** Called for every event found whole, in order, with the log after it. */
  readonly onEvent?: (event: LogEvent, id: string, state: LogState) => void;
}

/** Signatures asked for at once; a few at first, so that an early failure costs little. */
const mostAtOnce = 256;

/**
 * Checks lines that go on from a log found whole so far, each by itself and against the one before, and stops at the
 * first failure.
 *
 * @param from - the log so far
 * @param lines - exact texts of the lines after it; undefined for bytes that are no UTF-8
 * @returns the log as far as it is whole; places count from the log's first line
 */
export async function extendLog(
  from: LogState,
  lines: Iterable<string | undefined>,
  { publicKey, verify, onEvent }: Extending,
): Promise<Extended> {
  const warnings: LogWarning[] = [];
  const source = lines[Symbol.iterator]();
  let state = from;
  for (let atOnce = 1; ; atOnce = Math.min(atOnce * 2, mostAtOnce)) {
    const batch = await judged(take(source, atOnce), { state, publicKey, verify });
    for (const each of batch) {
      const verdict = verdictOf(each, state);
      if (verdict !== undefined) {
        const field = verdict === 'bad-envelope' ? wrongEventField(each.line) : undefined;
        return { state, failure: { verdict, at: state.size, ...namedField(field) }, warnings };
      }
      const { event, id } = each.opened as OpenedEvent;
      if (clockWentBack(state.lastAt, event.at)) warnings.push({ code: 'clock-back', at: state.size });
      state = withEvent(state, id, event.at);
      onEvent?.(event, id, state);
    }
    if (batch.length < atOnce) return { state, warnings };
  }
}

function take<T>(source: Iterator<T>, count: number): T[] {
  const taken: T[] = [];
  while (taken.length < count) {
    const next = source.next();
    if (next.done === true) break;
    taken.push(next.value);
  }
  return taken;
}

interface Judged {
  readonly line: string | undefined;
  readonly opened: ReturnType<typeof openEvent>;
  /** What is wrong before the signature is looked at. */
  readonly early: Failure['verdict'] | undefined;
  readonly signed: boolean;
}

async function judged(
  lines: readonly (string | undefined)[],
  { state, publicKey, verify }: { readonly state: LogState; readonly publicKey: Uint8Array; readonly verify: Verify },
): Promise<Judged[]> {
  const device = deviceOf(publicKey);
  return Promise.all(
    lines.map(async (line) => {
      const opened = openEvent(line);
      if (typeof opened === 'string') return { line, opened, early: opened, signed: false };
      const { event, entry } = opened;
      const early = event.plant !== state.plant ? 'wrong-plant' : event.device !== device ? 'wrong-device' : undefined;
      const signed =
        early === undefined && (await signatureHolds({ kind: 'event', entry, sig: event.sig, publicKey, verify }));
      return { line, opened, early, signed };
    }),
  );
}

function verdictOf({ opened, early, signed }: Judged, state: LogState): Failure['verdict'] | undefined {
  if (early !== undefined || typeof opened === 'string') return early;
  if (!signed) return 'bad-signature';
  if (opened.event.seq !== state.size) return 'sequence-gap';
  return opened.event.prev === state.head ? undefined : 'broken-link';
}
