import { type ReactNode, useState } from 'react';
import { useSpeech } from '../../speech/use-speech.tsx';
import { HoldButton } from './hold-button.tsx';
import { useRunShown } from './run-context.tsx';

/** Something to choose. */
export interface Tile {
  readonly key: string;
  readonly shown: ReactNode;
  readonly onTap: () => void;
  /** Held for a second rather than tapped. */
  readonly held?: boolean;
  /** What is chosen now. */
  readonly now?: boolean;
}

/** As many as stand on a phone without scrolling; the last place leads on. */
const onOnePage = 8;

interface TilesProps {
  readonly title: ReactNode;
  readonly said?: ReactNode;
  readonly tiles: readonly Tile[];
  readonly onBack: () => void;
}

/** A question with its answers as large tiles, page by page: nobody swipes or scrolls in gloves. */
export function Tiles({ title, said, tiles, onBack }: TilesProps) {
  const { say } = useSpeech();
  const { saving, words } = useRunShown();
  const [from, setFrom] = useState(0);
  const fits = tiles.length <= onOnePage;
  const size = fits ? onOnePage : onOnePage - 1;
  const onPage = tiles.slice(from, from + size);
  const turn = () => setFrom(from + size < tiles.length ? from + size : 0);
  return (
    <section className="run-panel">
      <h1>{title}</h1>
      {said === undefined ? null : <div className="run-panel-said">{said}</div>}
      <div className="run-tiles">
        {onPage.map(({ key, shown, onTap, held = false, now = false }) =>
          held ? (
            <HoldButton key={key} note={words.line('hold')} disabled={saving} onHeld={onTap}>
              {shown}
            </HoldButton>
          ) : (
            <button
              key={key}
              type="button"
              className="button run-tile"
              aria-pressed={now ? true : undefined}
              disabled={saving}
              onClick={onTap}
            >
              <span>{shown}</span>
            </button>
          ),
        )}
        {fits ? null : (
          <button type="button" className="button run-tile run-turn" onClick={turn}>
            <span>
              {say('runs.more-tiles', { page: Math.floor(from / size) + 1, pages: Math.ceil(tiles.length / size) })}
            </span>
          </button>
        )}
      </div>
      <button type="button" className="button run-tile run-back" onClick={onBack}>
        <span>{say('runs.back')}</span>
      </button>
    </section>
  );
}
