import type { PressCycleReport } from '@loopwright/jobs';
import type { Voice } from '@loopwright/words';

/** What every part of a cycle's page is made from. */
export interface CycleReader {
  readonly report: PressCycleReport;
  readonly voice: Voice;
  /** Speaks temperatures as the display of the press does. */
  readonly display: Voice;
}
