import { type End, endField } from '../march/end.ts';
import type { Platen } from './cycle-input.ts';
import type { PressRun } from './press-run.ts';

const { SHARE, LOSS } = endField;
/** First step of the cooling: the platens turn round at once. */
const firstCooling_s = 1;

/**
 * Heaters off, fan on.
 *
 * @param run - run at the end of its dwell, changed
 * @returns nothing
 * @source derived: plain assignment
 */
export function startCooling(run: PressRun): void {
  const { march, input } = run;
  run.cooling = true;
  coolEnd(march.slab.top, input.top);
  coolEnd(march.slab.bottom, input.bottom);
  march.proposed_s = Math.min(march.proposed_s, firstCooling_s);
}

function coolEnd(end: End, platen: Platen): void {
  end.following = false;
  end.numbers[SHARE] = 0;
  end.numbers[LOSS] = platen.loss_W_m2K + platen.fan_W_m2K;
}
