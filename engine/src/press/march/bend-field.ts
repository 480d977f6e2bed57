/**
 * What heaters, losses and tabled plates add to straight lines: one row a stage. Row 0, whose stage bends nothing, holds
 * what counts for the solution at hand.
 */
export const bendField = {
  /** How far each plate lies off its linear temperature [K]. */
  TOP_OFF: 0,
  BOTTOM_OFF: 1,
  /** Heat given to each plate and lost by it, and power at the plug. */
  TOP: 2,
  BOTTOM: 3,
  TOP_LOSS: 4,
  BOTTOM_LOSS: 5,
  PLUG: 6,
  COUNT: 7,
} as const;
