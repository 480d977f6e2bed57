import type { LinesOverview } from '@loopwright/jobs';
import type { Plant } from '@loopwright/plant';
import { type KeyboardEvent, useMemo, useState } from 'react';
import { useLocation } from 'wouter';
import { useSpeech } from '../../speech/use-speech.tsx';
import { cardAddress } from '../card/card-address.ts';
import { FoundList } from '../lines/found-list.tsx';
import { searchable } from '../lines/line-words.ts';
import { searchPositions } from '../lines/search-positions.ts';

interface TypeInsteadProps {
  readonly plant: Plant;
  readonly overview: LinesOverview;
  /** Enter in a field that holds a code: a scanner that types, as many hand scanners do. */
  readonly onCode: (text: string) => void;
}

const looksLikeCode = /^\s*(LW\d|[a-z][a-z0-9+.-]*:\S)/i;

/** A large field for the position's name, with the search of the lines behind it. */
export function TypeInstead({ plant, overview, onCode }: TypeInsteadProps) {
  const { say } = useSpeech();
  const [typed, setTyped] = useState('');
  const [, goTo] = useLocation();
  const all = useMemo(() => searchable(plant, overview), [plant, overview]);
  const found = useMemo(() => searchPositions(all, typed), [all, typed]);
  const isCode = looksLikeCode.test(typed);
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key !== 'Enter') return;
    event.preventDefault();
    const first = found[0];
    if (isCode) onCode(typed);
    else if (first !== undefined) goTo(cardAddress(first.id));
  };
  return (
    <div className="scan-type">
      <label className="find">
        {say('scan.type')}
        <input
          type="search"
          value={typed}
          placeholder={say('scan.type.hint')}
          autoComplete="off"
          autoCapitalize="none"
          spellCheck={false}
          enterKeyHint="go"
          onChange={(event) => setTyped(event.target.value)}
          onKeyDown={onKeyDown}
        />
      </label>
      {typed.trim() === '' || isCode ? null : <FoundList found={found} chosen={undefined} />}
    </div>
  );
}
