export { type LabelChoice, type PositionLabel, positionLabels } from './labels/position-labels.ts';
export { type KeptLengths, keepLengths, recallLengths } from './lines/kept-lengths.ts';
export { type LineSummary, type LinesOverview, linesOverview, type PositionSummary } from './lines/lines-overview.ts';
export { type PositionState, positionStates } from './lines/position-state.ts';
export type { LengthSource } from './loop/endless-length.ts';
export { linePath } from './loop/line-path.ts';
export type { NoLoop } from './loop/loop.ts';
export type { CurveLine, CycleCurve } from './press-cycle/cycle-curve.ts';
export { type CycleNumber, cycleGroups } from './press-cycle/cycle-number.ts';
export type { CycleWarning } from './press-cycle/cycle-warnings.ts';
export type { Today } from './press-cycle/outlet.ts';
export type { CycleGrade, PressCycle } from './press-cycle/press-cycle.ts';
export { type PressCycleReport, pressCycleReport } from './press-cycle/press-cycle-report.ts';
export {
  type CycleSurroundings,
  cycleSurroundings,
  type RecipeCycleChoice,
  recipeCycleReport,
} from './press-cycle/recipe-cycle.ts';
export type { Quantity } from './quantity.ts';
export * from './splice-card/card.ts';
export type { CardOptions } from './splice-card/ground.ts';
export { spliceCard } from './splice-card/splice-card.ts';
