import type { Plant } from '@loopwright/plant';
import { useState } from 'react';
import { handOver } from '../../../page/hand-over.ts';
import { useSpeech } from '../../../speech/use-speech.tsx';
import { askWorker } from './ask-worker.ts';
import type { TableForm } from './table-ask.ts';
import type { TableKind } from './table-kinds.ts';

interface GiveTableProps {
  readonly plant: Plant;
  readonly kind: TableKind;
  readonly now: string;
}

type Progress = { readonly at: 'idle' | 'making' | 'failed' } | { readonly at: 'done'; readonly file: string };

/** All things of a kind as a file; where there are none, the headings to fill in. */
export function GiveTable({ plant, kind, now }: GiveTableProps) {
  const { say, language } = useSpeech();
  const [progress, setProgress] = useState<Progress>({ at: 'idle' });
  const count = Object.keys(plant[kind]).length;
  const give = async (form: TableForm) => {
    setProgress({ at: 'making' });
    const decimal = language === 'en' ? '.' : ',';
    const answer = await askWorker({ do: 'write', kind, plant, form, decimal });
    if (answer?.is !== 'written') return setProgress({ at: 'failed' });
    const file = `${kind}-${now.slice(0, 10)}.${form}`;
    handOver(answer.blob, file);
    setProgress({ at: 'done', file });
  };
  return (
    <section className="part table-part">
      <h2>{say('tables.out')}</h2>
      <p>{count === 0 ? say('tables.out.empty') : say('tables.out.help', { count })}</p>
      <div className="ask-answers">
        {(['csv', 'xlsx'] as const).map((form) => (
          <button
            key={form}
            type="button"
            className="button"
            aria-disabled={progress.at === 'making'}
            onClick={() => progress.at === 'making' || void give(form)}
          >
            {say(`tables.out.${form}`)}
          </button>
        ))}
      </div>
      <p role="status" className="strong">
        {progress.at === 'making' ? say('tables.out.making') : null}
        {progress.at === 'failed' ? say('tables.fault.failed') : null}
        {progress.at === 'done' ? say('tables.out.done', { file: progress.file }) : null}
      </p>
    </section>
  );
}
