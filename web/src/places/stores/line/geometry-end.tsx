import type { Plant } from '@loopwright/plant';
import type { ReactNode } from 'react';
import { FindingsList } from '../../../form/findings-list.tsx';
import { useSpeech } from '../../../speech/use-speech.tsx';
import type { GeometryState } from './use-geometry.ts';

/** What both editors get. */
export interface EditorProps {
  readonly plant: Plant;
  readonly state: GeometryState;
  /** What stands above the questions: what to beware of, and the other way of answering. */
  readonly head: ReactNode;
  /** Why the last attempt to save was not kept. */
  readonly refused: string | undefined;
  /** What the main action says. */
  readonly action: string;
  readonly onSave: () => Promise<void>;
}

/** The end of an editor: what the plant says to it, what became of the draft, and the main action while it may be saved. */
export function GeometryEnd({ state, refused, action, onSave }: EditorProps) {
  const { say } = useSpeech();
  const { changes, changed, draftKept, findings } = state;
  const isReady = changes !== undefined && changes.length > 0;
  return (
    <>
      <FindingsList findings={findings} />
      <div className="form-end">
        {refused === undefined ? null : (
          <p className="caution caution-stop" role="alert">
            {refused}
          </p>
        )}
        <p className="soft" role="status">
          {draftKept === undefined ? '' : say(draftKept ? 'stores.draft.kept' : 'stores.draft.lost')}
        </p>
        {isReady ? (
          <button type="button" className="button main-action" onClick={() => void onSave()}>
            {action}
          </button>
        ) : null}
        {changed ? (
          <button type="button" className="button" onClick={state.discard}>
            {say('stores.discard')}
          </button>
        ) : null}
      </div>
    </>
  );
}
