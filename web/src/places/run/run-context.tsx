import type { RunNow, RunState, RunView } from '@loopwright/jobs/press-run';
import type { Plant } from '@loopwright/plant';
import type { RunChange } from '@loopwright/records/run';
import type { RunWords, Voice } from '@loopwright/words';
import { createContext, useContext } from 'react';

/** What every part of a run's screen needs. */
export interface RunShown {
  readonly state: RunState;
  readonly view: RunView;
  readonly now: RunNow;
  readonly words: RunWords;
  /** How the press display shows its numbers. */
  readonly display: Voice;
  readonly plant: Plant;
  /**
   * Writes what a tap says; resolves to true once it is on the disk. What cannot be written is said, and nothing of it is
   * kept.
   */
  readonly write: (changes: readonly RunChange[]) => Promise<boolean>;
  /** The same for something with its own way of saying that it was not kept. @throws StoreError */
  readonly append: (changes: readonly RunChange[], blobs?: readonly Blob[]) => Promise<void>;
  /** A tap is on its way to the disk. */
  readonly saving: boolean;
  /** Shows another panel in the place of the step. */
  readonly show: (panel: RunPanel) => void;
}

/** What stands on the screen in the place of the step. */
export type RunPanel =
  | { readonly name: 'step' }
  | { readonly name: 'more' }
  | { readonly name: 'all-steps' }
  | { readonly name: 'choices'; readonly code: string; readonly step?: string }
  | { readonly name: 'reading' }
  | { readonly name: 'readings'; readonly measures: readonly string[] }
  | { readonly name: 'photos' }
  | { readonly name: 'logger' }
  | { readonly name: 'look' }
  | { readonly name: 'who' };

const RunContext = createContext<RunShown | undefined>(undefined);

export const RunProvider = RunContext.Provider;

/** The run that is shown. */
export function useRunShown(): RunShown {
  const shown = useContext(RunContext);
  if (shown === undefined) throw new Error('useRunShown stands outside of a run');
  return shown;
}
