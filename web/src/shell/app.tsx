import { linesOverview } from '@loopwright/jobs';
import type { Plant } from '@loopwright/plant';
import { useEffect, useMemo } from 'react';
import { useLocation, useRoute } from 'wouter';
import { cardAddress } from '../places/card/card-address.ts';
import { CardPlace, useReadyCard } from '../places/card/card-place-later.tsx';
import { isLabelsAddress } from '../places/labels/labels-address.ts';
import { LabelsPlace } from '../places/labels/labels-place-later.tsx';
import { firstTorn } from '../places/lines/first-action.tsx';
import { LinesPlace } from '../places/lines/lines-place.tsx';
import { NextPosition } from '../places/lines/next-position.tsx';
import { isRecipesAddress } from '../places/recipes/recipes-address.ts';
import { RecipesPlace } from '../places/recipes/recipes-place-later.tsx';
import { recordAsked } from '../places/record/record-address.ts';
import { RecordPlace } from '../places/record/record-place-later.tsx';
import { isRunAddress } from '../places/run/run-address.ts';
import { RunPlace } from '../places/run/run-place-later.tsx';
import { RunWatch } from '../places/run/run-watch-later.tsx';
import { scanAddress } from '../places/scan/scan-address.ts';
import { ScanPlace } from '../places/scan/scan-place-later.tsx';
import { startAddress } from '../places/start/start-address.ts';
import { StartPlace } from '../places/start/start-place-later.tsx';
import { everythingAddress } from '../places/stores/store-address.ts';
import { StoresPlace } from '../places/stores/stores-place-later.tsx';
import type { PlantFault } from '../plant/load-plant.ts';
import { useNow } from '../plant/use-now.ts';
import { useSpeech } from '../speech/use-speech.tsx';
import { useStore, useStoreResult } from '../store/use-store.tsx';
import { Bar } from './bar.tsx';
import { PlantProblem } from './plant-problem.tsx';

/** The whole app: opens the store of this device, then shows its places. */
export function App() {
  const position = usePositionInAddress();
  useEffect(() => {
    document.title = position === undefined ? 'Loopwright' : `${position} · Loopwright`;
  }, [position]);
  const result = useStoreResult();
  if (result.status === 'opening') return <Waiting />;
  return <WithStore position={position} asked={result.asked} fault={result.fault} readAgain={result.readAgain} />;
}

interface WithStoreProps {
  readonly position: string | undefined;
  readonly asked: boolean;
  readonly fault: PlantFault | undefined;
  readonly readAgain: () => void;
}

/** An empty device shows what became of the server's plant; any other its own. */
function WithStore({ position, asked, fault, readAgain }: WithStoreProps) {
  const { state } = useStore();
  const [isStarting] = useRoute(startAddress);
  const [isTaking] = useRoute(everythingAddress);
  if (isStarting && (asked || !state.empty)) return <StartPlace />;
  if (!state.empty || (isTaking && asked)) {
    return (
      <>
        <RunWatch />
        <Places plant={state.plant} position={position} />
      </>
    );
  }
  if (!asked || fault === undefined) return <Waiting />;
  return (
    <div className="shell">
      <Bar place="lines" plant={undefined} card={undefined} />
      <main className="pane">
        <PlantProblem fault={fault} onAgain={readAgain} />
      </main>
    </div>
  );
}

function Waiting() {
  const { say } = useSpeech();
  return (
    <div className="shell">
      <Bar place="lines" plant={undefined} card={undefined} />
      <main className="pane">
        <p role="status">{say('app.reading')}</p>
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
  const card = next === undefined ? undefined : cardAddress(next);
  useReadyCard(plant, position === undefined ? next : undefined, now);
  const [path] = useLocation();
  if (/^\/stores(\/|$)/.test(path)) return <StoresPlace path={path.slice('/stores'.length)} now={now} card={card} />;
  if (path === scanAddress) return <ScanPlace plant={plant} overview={overview} card={card} />;
  if (isRecipesAddress(path)) return <RecipesPlace key={path} path={path} plant={plant} now={now} card={card} />;
  if (isRunAddress(path)) return <RunPlace path={path} plant={plant} now={now} card={card} />;
  const record = recordAsked(path);
  if (record !== undefined) return <RecordPlace key={record} run={record} plant={plant} now={now} card={card} />;
  if (isLabelsAddress(path)) return <LabelsPlace key={path} path={path} plant={plant} now={now} card={card} />;
  return (
    <div className="shell">
      <Bar place={place} plant={plant} card={card} />
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
