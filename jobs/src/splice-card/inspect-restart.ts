import type { Belt, Line } from '@loopwright/plant';
import { type InspectCode, inspectCodes, type RestartCode, restartCodes } from './card.ts';

/** What to look at after opening; the resistance only where static matters. */
export function inspectSteps(belt: Belt, line: Line): readonly InspectCode[] {
  const antistatic = belt.antistatic || line.antistaticArea;
  return inspectCodes.filter((code) => antistatic || code !== 'antistatic-resistance');
}

/** From ¾ tension to watching the splice under load, in this order. */
export function restartSteps(): readonly RestartCode[] {
  return restartCodes;
}
