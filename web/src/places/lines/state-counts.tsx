import type { LinesOverview, PositionState } from '@loopwright/jobs';
import { StateWord } from '../../page/state-word.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';

interface StateCountsProps {
  readonly counts: LinesOverview['counts'];
  readonly chosen: PositionState | undefined;
  readonly onChoose: (state: PositionState | undefined) => void;
}

// The gravest first.
const order = ['torn', 'empty', 'retension-due', 'past-life', 'running'] as const satisfies readonly PositionState[];

/** How many positions are in each state; a press shows only those, another press shows all again. */
export function StateCounts({ counts, chosen, onChoose }: StateCountsProps) {
  const { say } = useSpeech();
  return (
    <fieldset className="counts" aria-label={say('app.counts')}>
      {order
        .filter((state) => counts[state] > 0)
        .map((state) => (
          <button
            key={state}
            type="button"
            className="count"
            aria-pressed={state === chosen}
            onClick={() => onChoose(state === chosen ? undefined : state)}
          >
            <StateWord state={state} /> {counts[state]}
          </button>
        ))}
    </fieldset>
  );
}
