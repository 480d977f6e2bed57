import { wholeLanguages } from '@loopwright/words';
import { type ComponentType, lazy } from 'react';
import { useSpeech } from '../speech/use-speech.tsx';

/**
 * A part of the app that is fetched when it is first shown, with the sentences it says. Where it cannot be fetched, it says
 * so and what to do.
 *
 * @param fetchPart - imports the part
 */
export function fetchedLater<P extends object>(fetchPart: () => Promise<ComponentType<P>>): ComponentType<P> {
  return lazy(async (): Promise<{ default: ComponentType<P> }> => {
    try {
      const [part] = await Promise.all([fetchPart(), wholeLanguages()]);
      return { default: part };
    } catch {
      return { default: NotFetched };
    }
  });
}

function NotFetched() {
  const { say } = useSpeech();
  return (
    <div className="said" role="alert">
      <p>{say('offline.part')}</p>
      <button type="button" className="button main-action" onClick={() => location.reload()}>
        {say('offline.part.again')}
      </button>
    </div>
  );
}
