export { emptyPlant } from '@loopwright/plant';
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
