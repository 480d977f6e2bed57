import type { PositionState } from '@loopwright/jobs';
import type { StateShape } from '@loopwright/sheets';
import { useSpeech } from '../speech/use-speech.tsx';
import { Mark } from './mark.tsx';

/** The shape of each state; the same shapes stand on the card and on paper. */
export const stateShapes: Readonly<Record<PositionState, StateShape>> = {
  running: 'running',
  'retension-due': 'due',
  'past-life': 'past',
  torn: 'torn',
  empty: 'empty',
};

/** A state as people read it: shape first, then the word, colour last. */
export function StateWord({ state }: { readonly state: PositionState }) {
  const { say } = useSpeech();
  const shape = stateShapes[state];
  return (
    <span className={`state state-${shape}`}>
      <Mark name={shape} />
      {say(`state.${state}`)}
    </span>
  );
}
