import type { KeyboardEvent } from 'react';
import { useSpeech } from '../../speech/use-speech.tsx';

interface FindFieldProps {
  readonly typed: string;
  readonly onType: (typed: string) => void;
  /** Somebody is about to type. */
  readonly onReady: () => void;
  /** Enter: go to the first position found. */
  readonly onGo: () => void;
  /** Arrow down: move into the list. */
  readonly onEnterList: () => void;
}

/** The search field. It answers as one types; Enter opens the first position, Escape empties the field. */
export function FindField({ typed, onType, onReady, onGo, onEnterList }: FindFieldProps) {
  const { say } = useSpeech();
  const actions = new Map([
    ['Enter', onGo],
    ['ArrowDown', onEnterList],
    ['Escape', () => onType('')],
  ]);
  const onKeyDown = (event: KeyboardEvent) => {
    const act = actions.get(event.key);
    if (act === undefined) return;
    event.preventDefault();
    act();
  };
  return (
    <label className="find">
      {say('app.find')}
      <input
        type="search"
        value={typed}
        placeholder={say('app.find.hint')}
        autoComplete="off"
        autoCapitalize="none"
        spellCheck={false}
        enterKeyHint="go"
        onFocus={onReady}
        onChange={(event) => onType(event.target.value)}
        onKeyDown={onKeyDown}
      />
    </label>
  );
}
