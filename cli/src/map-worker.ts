import { parentPort } from 'node:worker_threads';
import { type CycleMapInput, cycleMap } from '@loopwright/engine/press';

// A thread of `map-on-all-cores.ts`: answers each part of a map with its points.
parentPort?.on('message', (input: CycleMapInput) => {
  parentPort?.postMessage([...cycleMap(input)].flat());
});
