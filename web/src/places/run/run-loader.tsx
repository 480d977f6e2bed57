import type { Plant } from '@loopwright/plant';
import { Bar } from '../../shell/bar.tsx';
import { Said } from '../../shell/said.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';
import { useRun } from '../../store/use-runs.ts';
import { RunScreen } from './run-screen.tsx';

interface RunLoaderProps {
  readonly run: string;
  readonly plant: Plant;
  readonly card: string | undefined;
}

/** Reads a run from the store. */
export function RunLoader({ run, plant, card }: RunLoaderProps) {
  const { say } = useSpeech();
  const result = useRun(run);
  if (result.status === 'ready') return <RunScreen state={result.state} plant={plant} />;
  return (
    <div className="shell">
      <Bar place="run" plant={plant} card={card} />
      <main className="pane">
        {result.status === 'reading' ? (
          <p role="status">{say('app.reading')}</p>
        ) : (
          <Said title={say('runs.unknown', { run })} next={say('runs.unknown.next')} toLines />
        )}
      </main>
    </div>
  );
}
