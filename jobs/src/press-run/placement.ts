import type { RunStep } from '@loopwright/records/run';
import type { Placement } from './run-view.ts';

/** Where the thumb rests: everything that needs no thought of its own. */
export const ordinary: Placement = { place: 'bottom', shape: 'bar', hold_s: 0 };
/** What cannot be undone by hand, or departs from the card. */
export const held: Placement = { place: 'bottom', shape: 'bar', hold_s: 1 };

/** Taps of their own stand elsewhere and look otherwise, so that no habit carries a thumb over them. */
const own: Readonly<Partial<Record<RunStep, Placement>>> = {
  'lock-out': { place: 'middle', shape: 'octagon', hold_s: 0 },
  match: { place: 'top', shape: 'two-halves', hold_s: 0 },
  open: { place: 'middle', shape: 'ring', hold_s: 0 },
  'lock-off': { place: 'top', shape: 'diamond', hold_s: 0 },
  unlock: { place: 'middle', shape: 'square', hold_s: 0 },
};

/** Where the tap for some steps stands: that of the own step among them. */
export function placementOf(steps: readonly RunStep[]): Placement {
  return steps.map((step) => own[step]).find((each) => each !== undefined) ?? ordinary;
}
