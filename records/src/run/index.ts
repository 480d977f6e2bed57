export {
  type DisplayWord,
  type DryAnswer,
  displayWords,
  dryAnswers,
  type ReadingMark,
  type RecipeAnswer,
  type RunFace,
  type RunMeasure,
  type RunReason,
  type RunSign,
  type RunStep,
  type RunVerdict,
  readingMarks,
  recipeAnswers,
  runFaces,
  runMeasures,
  runReasons,
  runSigns,
  runSteps,
  verdicts,
} from './run-codes.ts';
export {
  type LoggedAnyEvent,
  type RunChange,
  type RunEnvelope,
  type RunEvent,
  type RunNumber,
  type RunThing,
  readRunEvent,
  runChange,
} from './run-event.ts';
export { runSchemas } from './run-schemas.ts';
export { isRunType, type RunType, runOf, runTypes } from './run-types.ts';
