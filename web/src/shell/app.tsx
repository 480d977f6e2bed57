import { linesOverview } from '@loopwright/jobs';
import type { Plant } from '@loopwright/plant';
import { useEffect, useMemo } from 'react';
import { useRoute } from 'wouter';
import { cardAddress } from '../places/card/card-address.ts';
import { CardPlace } from '../places/card/card-place.tsx';
import { firstTorn } from '../places/lines/first-action.tsx';
import { LinesPlace } from '../places/lines/lines-place.tsx';
import { NextPosition } from '../places/lines/next-position.tsx';
import { useNow } from '../plant/use-now.ts';
import { usePlant } from '../plant/use-plant.ts';
import { useSpeech } from '../speech/use-speech.tsx';
import { Bar } from './bar.tsx';
import { PlantProblem } from './plant-problem.tsx';

/** The whole app: reads the plant, then shows its places. */
export function App() {
  const { say } = useSpeech();
  const { result, readAgain } = usePlant();
  const position = usePositionInAddress();
  useEffect(() => {
    document.title = position === undefined ? 'Loopwright' : `${position} · Loopwright`;
  }, [position]);
  if (result.status === 'ready') return <Places plant={result.plant} position={position} />;
  return (
    <div className="shell">
      <Bar place="lines" plant={undefined} card={undefined} />
      <main className="pane">
        {result.status === 'reading' ? (
          <p role="status">{say('app.reading')}</p>
        ) : (
          <PlantProblem fault={result.fault} onAgain={readAgain} />
        )}
      </main>
    </div>
  );
}

/** The position named in the address; undefined on the list of lines. */
function usePositionInAddress(): string | undefined {
  const [, params] = useRoute<{ position: string }>('/card/:position');
  return params === null ? undefined : decoded(params.position);
}

// The router leaves reserved signs encoded; a stranger's address may not be decodable at all.
function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}

interface PlacesProps {
  readonly plant: Plant;
  readonly position: string | undefined;
}

function Places({ plant, position }: PlacesProps) {
  const now = useNow();
  const overview = useMemo(() => linesOverview(plant, now), [plant, now]);
  const place = position === undefined ? 'lines' : 'card';
  const next = position ?? firstTorn(overview)?.position.id;
  return (
    <div className="shell">
      <Bar place={place} plant={plant} card={next === undefined ? undefined : cardAddress(next)} />
      <main className="panes" data-place={place}>
        <div className="pane pane-list">
          <LinesPlace plant={plant} overview={overview} chosen={position} />
        </div>
        <div className="pane pane-thing">
          {position === undefined ? (
            <NextPosition overview={overview} />
          ) : (
            <CardPlace key={position} plant={plant} position={position} now={now} />
          )}
        </div>
      </main>
    </div>
  );
}
