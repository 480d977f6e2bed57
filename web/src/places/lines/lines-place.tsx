import type { LinesOverview, PositionState } from '@loopwright/jobs';
import type { Plant } from '@loopwright/plant';
import { memo, useMemo, useRef, useState } from 'react';
import { useLocation } from 'wouter';
import { useSpeech } from '../../speech/use-speech.tsx';
import { StoreNotices } from '../../store/store-notices.tsx';
import { cardAddress } from '../card/card-address.ts';
import { AllLines } from './all-lines.tsx';
import { FindField } from './find-field.tsx';
import { FirstAction } from './first-action.tsx';
import { FoundList } from './found-list.tsx';
import { type FoundPosition, searchable } from './line-words.ts';
import { targetsIn } from './move-focus.ts';
import { ScanLink } from './scan-link.tsx';
import { prepareSearch, searchPositions } from './search-positions.ts';
import { StateCounts } from './state-counts.tsx';

interface LinesPlaceProps {
  readonly plant: Plant;
  readonly overview: LinesOverview;
  /** The position whose card stands beside the list. */
  readonly chosen: string | undefined;
}

/** Which position, and what state is it in? Drawn anew only when one of these is another. */
export const LinesPlace = memo(function LinesPlace({ plant, overview, chosen }: LinesPlaceProps) {
  const [typed, setTyped] = useState('');
  const [state, setState] = useState<PositionState>();
  const { found, prepare } = useFound(plant, overview, typed, state);
  const list = useRef<HTMLDivElement>(null);
  const [, goTo] = useLocation();
  const goToFirst = () => {
    const first = found?.[0];
    if (first !== undefined) goTo(cardAddress(first.id));
  };
  return (
    <>
      <div className="lines-head">
        <LinesTitle plant={plant} main={chosen === undefined} />
        <FindField
          typed={typed}
          onType={setTyped}
          onGo={goToFirst}
          onReady={prepare}
          onEnterList={() => targetsIn(list.current)[0]?.focus()}
        />
        <StateCounts counts={overview.counts} chosen={state} onChoose={setState} />
      </div>
      <div ref={list} data-list="">
        {found === undefined ? (
          <AllLines overview={overview} chosen={chosen} />
        ) : (
          <FoundList found={found} chosen={chosen} />
        )}
      </div>
      <FirstAction overview={overview} />
    </>
  );
});

/**
 * The positions asked for, or undefined while nothing is asked: then all lines are shown. `prepare` makes the search
 * ready while the first letter is not yet typed.
 */
function useFound(plant: Plant, overview: LinesOverview, typed: string, state: PositionState | undefined) {
  const all = useMemo(() => once(() => searchable(plant, overview)), [plant, overview]);
  const found = useMemo((): readonly FoundPosition[] | undefined => {
    const asked = typed.trim() !== '';
    if (!asked && state === undefined) return undefined;
    const answering = asked ? searchPositions(all(), typed) : all();
    return answering.filter((position) => state === undefined || position.summary.state === state);
  }, [all, typed, state]);
  return { found, prepare: () => void prepareSearch(all()) };
}

/** Computes only when asked, and then once: a list that nobody searches costs nothing. */
function once<T extends object>(compute: () => T): () => T {
  let result: T | undefined;
  return () => {
    result ??= compute();
    return result;
  };
}

function LinesTitle({ plant, main }: { readonly plant: Plant; readonly main: boolean }) {
  const { say } = useSpeech();
  const Heading = main ? 'h1' : 'h2';
  return (
    <div>
      <div className="lines-title">
        <Heading>{say('app.lines')}</Heading>
        <ScanLink />
      </div>
      <p className="soft">
        {plant.name} · {say('app.positions', { count: Object.keys(plant.positions).length })}
      </p>
      <StoreNotices />
    </div>
  );
}
