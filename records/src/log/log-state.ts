import { sha256Hex } from './hash.ts';
import { noEvent } from './log-event.ts';
import { emptyFrontier, type Frontier, grown, rootOf } from './merkle.ts';

/** What must be kept of a device's log to go on writing or checking it; plain data, of a size that hardly grows. */
export interface LogState extends Frontier {
  readonly plant: string;
  /** SHA-256 of the device's public key. */
  readonly device: string;
  /** Id of the last event; 64 zeros before the first. */
  readonly head: string;
  /** Wall clock of the last event, to see a clock that was set back. */
  readonly lastAt?: string;
}

/** A device in a log: the hash of its public key. */
export function deviceOf(publicKey: Uint8Array): string {
  return sha256Hex(publicKey);
}

/**
 * The log of a device before its first event.
 *
 * @param plant - id of the plant
 * @param publicKey - of the device, 32 bytes
 */
export function emptyLog(plant: string, publicKey: Uint8Array): LogState {
  return { ...emptyFrontier, plant, device: deviceOf(publicKey), head: noEvent };
}

/** A log with one event more. */
export function withEvent(state: LogState, id: string, at: string): LogState {
  return { ...state, ...grown(state, id), head: id, lastAt: at };
}

/** Root of the tree over all events of a log. */
export function logRoot(state: LogState): string {
  return rootOf(state);
}
