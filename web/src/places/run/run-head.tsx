import { BadgeShape } from '../../form/badge-shape.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';
import { useStore } from '../../store/use-store.tsx';
import { useRunShown } from './run-context.tsx';
import { RunSignView } from './run-sign.tsx';
import type { Awake } from './wake-lock.ts';

/** Which run this is, and who works: read at a glance, touched by nobody. */
export function RunHead({ awake }: { readonly awake: Awake }) {
  const { say } = useSpeech();
  const { view, words, saving } = useRunShown();
  const { state } = useStore();
  return (
    <header className="run-head" data-slot={view.sign.slot}>
      <p className="run-where">
        <strong>{view.position}</strong>
        {view.press === undefined ? null : <span className="soft"> · {view.press.name}</span>}
      </p>
      <RunSignView view={view} words={words} />
      <p className="caption run-kept">
        {state.badge === undefined ? (
          say('runs.no-badge')
        ) : (
          <>
            <BadgeShape shape={state.badge.shape} /> {state.badge.word}
          </>
        )}
        {' · '}
        <span role="status">{say(saving || state.waiting > 0 ? 'runs.saving' : 'runs.saved')}</span>
        {awake === 'on' || view.end !== undefined ? null : ` · ${say('runs.screen-sleeps')}`}
        {view.attempt > 1 ? ` · ${words.line('attempt', { count: view.attempt })}` : null}
      </p>
    </header>
  );
}
