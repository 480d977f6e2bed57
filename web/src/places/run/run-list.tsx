import { runFacts, viewRun } from '@loopwright/jobs/press-run';
import type { Plant } from '@loopwright/plant';
import { runWords } from '@loopwright/words';
import { useState } from 'react';
import { Link } from 'wouter';
import { BadgeShape } from '../../form/badge-shape.tsx';
import { Bar } from '../../shell/bar.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';
import { runNow, useRuns } from '../../store/use-runs.ts';
import { useStore } from '../../store/use-store.tsx';
import { clockText } from './clock-text.ts';
import { runAddress } from './run-address.ts';

/** Read at once; older ones on a tap. */
const onePage = 40;

interface RunListProps {
  readonly plant: Plant;
  readonly card: string | undefined;
}

/** Every press run of the plant: those under way first, then the latest. */
export function RunList({ plant, card }: RunListProps) {
  const speech = useSpeech();
  const { say } = speech;
  const { store, state } = useStore();
  const [most, setMost] = useState(onePage);
  const read = useRuns(most);
  const now = runNow(store, state);
  const shown = (read?.runs ?? []).toSorted((a, b) => Number(a.end !== undefined) - Number(b.end !== undefined));
  return (
    <div className="shell">
      <Bar place="run" plant={plant} card={card} />
      <main className="pane">
        <h1>{say('runs.title')}</h1>
        {read === undefined ? <p role="status">{say('app.reading')}</p> : null}
        {read?.runs.length === 0 ? <p>{say('runs.none')}</p> : null}
        <ul className="run-list">
          {shown.map((run) => {
            const view = viewRun(run, now);
            const words = runWords(speech, runFacts(run));
            return (
              <li key={run.id}>
                <Link href={runAddress(run.id)} className="run-entry">
                  <strong>{view.position}</strong>
                  <span>
                    <BadgeShape shape={view.sign.shape} /> {words.sign(view.sign.word)}
                  </span>
                  <span>{view.end === undefined ? words.phase(view.phase) : words.end(view.end)}</span>
                  <span className="soft">{`${speech.day(run.started.at)}, ${clockText(speech, run.started.at)}`}</span>
                </Link>
              </li>
            );
          })}
        </ul>
        {read?.more ? (
          <button type="button" className="button" onClick={() => setMost(most + onePage)}>
            {say('runs.older')}
          </button>
        ) : null}
      </main>
    </div>
  );
}
