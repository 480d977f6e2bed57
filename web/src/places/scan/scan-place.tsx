import type { LinesOverview } from '@loopwright/jobs';
import type { Plant } from '@loopwright/plant';
import { useCallback, useEffect, useRef, useState } from 'react';
import { useLocation } from 'wouter';
import { Bar } from '../../shell/bar.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';
import { cardAddress } from '../card/card-address.ts';
import { type Judged, judgeCode } from './judge-code.ts';
import { PhotoChoice } from './photo-choice.tsx';
import { ScanOutcome } from './scan-outcome.tsx';
import { ScanView } from './scan-view.tsx';
import { TypeInstead } from './type-instead.tsx';

export interface ScanPlaceProps {
  readonly plant: Plant;
  readonly overview: LinesOverview;
  /** Where the place of the card leads. */
  readonly card: string | undefined;
}

/** Which position hangs here? By its label, by a photo of it, or typed. */
export function ScanPlace({ plant, overview, card }: ScanPlaceProps) {
  const { say } = useSpeech();
  const [, goTo] = useLocation();
  const [said, setSaid] = useState<Exclude<Judged, { result: 'opens' }>>();
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    window.scrollTo(0, 0);
    heading.current?.focus({ preventScroll: true });
  }, []);
  const judge = useCallback(
    (texts: readonly string[]) => {
      const all = texts.map((text) => judgeCode(text, plant));
      const opening = all.find((judged) => judged.result === 'opens');
      // The way back from the card leads to the list, not into the camera again.
      if (opening !== undefined) return goTo(cardAddress(opening.position), { replace: true });
      const [first] = all;
      if (first !== undefined && first.result !== 'opens') setSaid((before) => (same(before, first) ? before : first));
    },
    [plant, goTo],
  );
  return (
    <div className="shell">
      <Bar place="scan" plant={plant} card={card} />
      <main className="pane scan">
        <h1 ref={heading} tabIndex={-1}>
          {say('scan.title')}
        </h1>
        <div className="scan-parts">
          <ScanView onRead={judge} />
          <div className="scan-rest">
            <div role="alert">{said === undefined ? null : <ScanOutcome judged={said} plantName={plant.name} />}</div>
            <TypeInstead plant={plant} overview={overview} onCode={(text) => judge([text])} />
            <PhotoChoice onRead={judge} />
          </div>
        </div>
      </main>
    </div>
  );
}

/** The same code before the lens again and again is said once. */
function same(a: Judged | undefined, b: Judged): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}
