import type { Plant } from '@loopwright/plant';
import { runAsked } from './run-address.ts';
import { RunList } from './run-list.tsx';
import { RunLoader } from './run-loader.tsx';
import { StartRun } from './start-run.tsx';

export interface RunPlaceProps {
  readonly path: string;
  readonly plant: Plant;
  readonly now: string;
  readonly card: string | undefined;
}

/** All press runs, the start of one, or one. A run takes the whole screen. */
export function RunPlace({ path, plant, now, card }: RunPlaceProps) {
  const asked = runAsked(path);
  if (asked.what === 'new') return <StartRun plant={plant} position={asked.position} now={now} card={card} />;
  if (asked.what === 'run') return <RunLoader key={asked.run} run={asked.run} plant={plant} card={card} />;
  return <RunList plant={plant} card={card} />;
}
