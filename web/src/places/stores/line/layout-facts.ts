import type { SurveyLayout } from '@loopwright/plant';

/** The two ends of a line, as one sees them when goods pass from left to right. */
export type LineEnd = 'infeed' | 'discharge';

export function hasTakeUp(layout: SurveyLayout): boolean {
  return layout.includes('take-up');
}

/** Whether the drive is an end pulley, so that one must say which. */
export function asksDriveEnd(layout: SurveyLayout): boolean {
  return layout.startsWith('end-drive');
}

/** Whether the take-up is an end pulley and may stand at either end. */
export function asksTakeUpEnd(layout: SurveyLayout): boolean {
  return layout === 'bed-drive-end-take-up';
}

/** The end at which an end take-up stands; none for one under the bed. */
export function takeUpEnd(layout: SurveyLayout, driveEnd: LineEnd, said: LineEnd | undefined): LineEnd | undefined {
  if (!layout.endsWith('end-take-up')) return undefined;
  if (asksTakeUpEnd(layout)) return said ?? 'discharge';
  return driveEnd === 'infeed' ? 'discharge' : 'infeed';
}

/** An end pulley tightens the belt by moving outwards; x to the right, y up. */
export function outwards(end: LineEnd): { readonly takeUpX: number; readonly takeUpY: number } {
  return { takeUpX: end === 'infeed' ? -1 : 1, takeUpY: 0 };
}
