import { useState } from 'react';
import { useSpeech } from '../../speech/use-speech.tsx';
import type { FoundThing } from './search-things.ts';
import { ThingRow } from './thing-row.tsx';

/** Rows shown at once; more at a press, so that ten thousand positions do not make the page slow. */
const page = 100;

interface FoundThingsProps {
  readonly found: readonly FoundThing[];
  readonly chosen: string | undefined;
  /** Whether a row says what kind of thing it is. */
  readonly withKind?: boolean;
}

/** Things one below the other, each a target. */
export function FoundThings({ found, chosen, withKind = false }: FoundThingsProps) {
  const { say } = useSpeech();
  const [pages, setPages] = useState(1);
  const shown = found.slice(0, pages * page);
  return (
    <>
      <p aria-live="polite" className="soft found-count">
        {say('stores.found', { count: found.length })}
      </p>
      <ul className="found">
        {shown.map(({ kind, thing, id }) => (
          <li key={`${kind} ${id}`}>
            <ThingRow kind={kind} thing={thing} chosen={id === chosen} withKind={withKind} />
          </li>
        ))}
      </ul>
      {shown.length === found.length ? null : (
        <button type="button" className="button more-rows" onClick={() => setPages(pages + 1)}>
          {say('stores.found.more', { count: found.length - shown.length })}
        </button>
      )}
    </>
  );
}
