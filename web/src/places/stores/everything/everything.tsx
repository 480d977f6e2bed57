import { useSpeech } from '../../../speech/use-speech.tsx';
import { useStore } from '../../../store/use-store.tsx';
import { arrive } from '../arrive.ts';
import { GiveEverything } from './give-everything.tsx';
import { TakeEverything } from './take-everything.tsx';

/** Everything of a plant as one file: out of this device, or in from another. */
export function Everything({ now }: { readonly now: string }) {
  const { say } = useSpeech();
  const { store, state } = useStore();
  return (
    <article className="thing-form table-pane">
      <h1 tabIndex={-1} ref={arrive} className="thing-title">
        {say('everything.title')}
      </h1>
      {state.empty ? null : <GiveEverything store={store} state={state} now={now} />}
      <TakeEverything store={store} />
    </article>
  );
}
