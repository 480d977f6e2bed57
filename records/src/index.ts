export { emptyPlant } from '@loopwright/plant';
export { correctionOf } from './correction.ts';
export {
  type AnyEvent,
  type DefinedEvent,
  definitions,
  type EventBody,
  effects,
  type PlantEvent,
  type RemovedEvent,
  removal,
  thingNames,
} from './event.ts';
export { type Folding, fold, foldAndReport } from './fold.ts';
export { type HistoryEntry, type HistoryKind, history, type LoggedEvent, type Subject, subjectOf } from './history.ts';
export { type LogPlace, plantOfSnapshot, type Snapshot, takeSnapshot } from './snapshot.ts';
