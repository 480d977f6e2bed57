export { type LineSummary, type LinesOverview, linesOverview, type PositionSummary } from './lines/lines-overview.ts';
export { type PositionState, positionStates } from './lines/position-state.ts';
export type { LengthSource } from './loop/endless-length.ts';
export { linePath } from './loop/line-path.ts';
export type { NoLoop } from './loop/loop.ts';
export type { Quantity } from './quantity.ts';
export * from './splice-card/card.ts';
export type { CardOptions } from './splice-card/ground.ts';
export { spliceCard } from './splice-card/splice-card.ts';
