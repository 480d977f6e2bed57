import type { PressCycle } from '@loopwright/jobs';
import {
  type Drawing,
  fusionCurves,
  temperatureCurves,
  twoFusionCurves,
  twoTemperatureCurves,
} from '@loopwright/sheets';
import type { Voices } from './settings.ts';

/** Narrow, so that letters are large enough on a phone. */
const size = { width: 262, temperatures: 96, fusion: 60 };

export interface CycleDrawings {
  readonly temperatures: Drawing;
  readonly fusion: Drawing;
}

/** The curves of a cycle, by the hand that draws them on paper; over those of another one, when that was kept. */
export function cycleDrawings(now: PressCycle, kept: PressCycle | undefined, voices: Voices): CycleDrawings {
  if (kept === undefined) {
    const one = { cycle: now, size, ...voices };
    return { temperatures: temperatureCurves(one), fusion: fusionCurves(one) };
  }
  const two = { now, kept, size, ...voices };
  return { temperatures: twoTemperatureCurves(two), fusion: twoFusionCurves(two) };
}
