import type { KeyboardEvent } from 'react';
import { useSpeech } from '../../speech/use-speech.tsx';
import { targetsIn } from '../lines/move-focus.ts';

interface StoreFindProps {
  readonly typed: string;
  readonly hint: string;
  readonly onType: (typed: string) => void;
  /** Enter: go to the first thing found. */
  readonly onGo: () => void;
}

/** The search field of the stores; Enter opens the first thing, arrow down goes into the list, Escape empties it. */
export function StoreFind({ typed, hint, onType, onGo }: StoreFindProps) {
  const { say } = useSpeech();
  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>) => {
    const into = () =>
      targetsIn(event.currentTarget.closest('[data-list]')?.querySelector('.long, ul') ?? null)[0]?.focus();
    const acts: readonly (readonly [string, () => void])[] = [
      ['Enter', onGo],
      ['ArrowDown', into],
      ['Escape', () => onType('')],
    ];
    const act = acts.find(([key]) => key === event.key)?.[1];
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
        placeholder={hint}
        autoComplete="off"
        autoCapitalize="none"
        spellCheck={false}
        enterKeyHint="go"
        onChange={(event) => onType(event.target.value)}
        onKeyDown={onKeyDown}
      />
    </label>
  );
}
