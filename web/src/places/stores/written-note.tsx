import { useState } from 'react';
import { useSpeech } from '../../speech/use-speech.tsx';
import type { PlantStore } from '../../store/plant-store.ts';
import { takeBack, type Written, type WrittenKind } from './keep.ts';

interface WrittenNoteProps {
  readonly store: PlantStore;
  readonly kind: WrittenKind;
  readonly id: string;
  /** What people call it; default: its id. */
  readonly name?: string;
  readonly written: Written | undefined;
  readonly onWritten: (written: Written) => void;
}

/** What was just written down, and the way back. It says "saved" only of what is on the disk. */
export function WrittenNote({ store, kind, id, name = id, written, onWritten }: WrittenNoteProps) {
  const { say } = useSpeech();
  const shown = written !== undefined && written.kind === kind && written.id === id ? written : undefined;
  return (
    <div role="status" className={shown === undefined ? undefined : 'written'}>
      {shown === undefined ? null : <p className="strong">{say(`stores.${shown.did}`, { id: name })}</p>}
      {shown?.eventId === undefined ? null : (
        <Undo store={store} kind={kind} id={id} eventId={shown.eventId} onWritten={onWritten} />
      )}
    </div>
  );
}

interface UndoProps extends Omit<WrittenNoteProps, 'written' | 'name'> {
  readonly eventId: string;
}

/** Puts the thing back to what it was before an event, by a new event. */
export function Undo({ store, kind, id, eventId, onWritten }: UndoProps) {
  const speech = useSpeech();
  const [refused, setRefused] = useState<string>();
  const undo = async () => {
    const outcome = await takeBack(store, speech, [eventId]);
    if ('refused' in outcome) setRefused(outcome.refused);
    else onWritten({ did: 'undone', kind, id });
  };
  return (
    <>
      <button type="button" className="button" onClick={() => void undo()}>
        {speech.say('stores.undo')}
      </button>
      {refused === undefined ? null : <p role="alert">{refused}</p>}
    </>
  );
}
