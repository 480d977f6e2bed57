import { useSpeech } from '../../speech/use-speech.tsx';
import type { Voices } from './settings.ts';
import { type Kept, TwoTable } from './two-table.tsx';

interface KeepCycleProps {
  /** Absent while the settings give no cycle. */
  readonly now: Kept | undefined;
  readonly kept: Kept | undefined;
  readonly voices: Voices;
  readonly onKeep: (kept: Kept | undefined) => void;
}

/** Keeps this cycle, to lay the next one over it. */
export function KeepCycle({ now, kept, voices, onKeep }: KeepCycleProps) {
  const { say } = useSpeech();
  return (
    <div className="keep-cycle">
      <button type="button" className="button" disabled={now === undefined} onClick={() => onKeep(now)}>
        {say(kept === undefined ? 'recipes.keep' : 'recipes.keep-instead')}
      </button>
      {kept === undefined ? null : (
        <>
          <button type="button" className="button" onClick={() => onKeep(undefined)}>
            {say('recipes.drop')}
          </button>
          {now === undefined ? null : <TwoTable now={now} kept={kept} voices={voices} />}
        </>
      )}
    </div>
  );
}
