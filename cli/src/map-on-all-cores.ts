import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import { type CycleMapInput, cycleMap, type MapPoint } from '@loopwright/engine/press';

interface Wanted {
  /** Told how many points there are, of how many. */
  readonly progress?: ((done: number, of: number) => void) | undefined;
  /** Threads are started when what is left would take one alone longer than this. */
  readonly worthwhile_ms?: number;
}

/** What it takes to start threads and to load and warm up the engine in each, with a margin. */
const usuallyWorthwhile_ms = 1500;
/** Shifts computed here first: the very first ones run cold and say little about the others. */
const tried = 3;

/**
 * A map of cycles on all cores, its points the same bit by bit as on one. The first shifts of the set points are computed
 * here: they refuse what cannot be computed and tell how long the others will take.
 */
export async function mapOnAllCores(input: CycleMapInput, wanted: Wanted = {}): Promise<readonly MapPoint[]> {
  const { progress, worthwhile_ms = usuallyWorthwhile_ms } = wanted;
  const shifts = input.map.shift_K.length;
  const parts: (readonly MapPoint[])[] = [];
  const take = (at: number, points: readonly MapPoint[]): void => {
    parts[at] = points;
    const done = parts.reduce((sum, part) => sum + part.length, 0);
    progress?.(done, shifts * points.length);
  };
  let began = performance.now();
  for (const points of cycleMap(input)) {
    take(parts.length, points);
    const left_ms = (performance.now() - began) * (shifts - parts.length);
    if (parts.length >= tried && availableParallelism() > 1 && left_ms > worthwhile_ms) {
      await shareOut(input, parts.length, take);
      break;
    }
    began = performance.now();
  }
  return parts.flat();
}

/** Each thread is handed one shift after the other; should one fail, all are ended and the reason is thrown. */
async function shareOut(
  input: CycleMapInput,
  from: number,
  take: (at: number, points: readonly MapPoint[]) => void,
): Promise<void> {
  const { shift_K } = input.map;
  const count = Math.min(availableParallelism(), shift_K.length - from);
  const threads = Array.from({ length: count }, () => new Worker(new URL('./map-worker.js', import.meta.url)));
  let next = from;
  const work = async (thread: Worker): Promise<void> => {
    for (let at = next++; at < shift_K.length; at = next++) {
      const map = { ...input.map, shift_K: shift_K.slice(at, at + 1) };
      take(at, await answered(thread, { ...input, map }));
    }
  };
  try {
    await Promise.all(threads.map(work));
  } finally {
    await Promise.all(threads.map((thread) => thread.terminate()));
  }
}

function answered(thread: Worker, part: CycleMapInput): Promise<readonly MapPoint[]> {
  return new Promise((resolve, reject) => {
    thread.removeAllListeners();
    thread.on('message', resolve);
    thread.on('error', reject);
    thread.postMessage(part);
  });
}
