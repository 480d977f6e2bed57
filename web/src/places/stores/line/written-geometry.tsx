import { useSpeech } from '../../../speech/use-speech.tsx';
import type { PlantStore } from '../../../store/plant-store.ts';
import { takeBack } from '../keep.ts';

interface WrittenGeometryProps {
  readonly store: PlantStore;
  readonly line: string;
  /** The events just written; none after they were taken back, undefined before anything was written. */
  readonly events: readonly string[] | undefined;
  readonly onUndone: () => void;
  readonly onRefused: (why: string) => void;
}

/** What was just written down, and the way back: all of it, by correcting events. */
export function WrittenGeometry({ store, line, events, onUndone, onRefused }: WrittenGeometryProps) {
  const speech = useSpeech();
  const { say } = speech;
  const undo = async (written: readonly string[]) => {
    const outcome = await takeBack(store, speech, written);
    if ('refused' in outcome) onRefused(outcome.refused);
    else onUndone();
  };
  return (
    <div role="status" className={events === undefined ? undefined : 'written'}>
      {events === undefined ? null : (
        <p className="strong">{events.length === 0 ? say('geometry.undone') : say('geometry.saved', { line })}</p>
      )}
      {events === undefined || events.length === 0 ? null : (
        <button type="button" className="button" onClick={() => void undo(events)}>
          {say('stores.undo')}
        </button>
      )}
    </div>
  );
}
