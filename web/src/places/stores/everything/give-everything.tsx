import { useState } from 'react';
import { handOver } from '../../../page/hand-over.ts';
import { useSpeech } from '../../../speech/use-speech.tsx';
import { faultSentence } from '../../../store/fault-sentence.ts';
import type { PlantStore, StoreState } from '../../../store/plant-store.ts';

interface GiveEverythingProps {
  readonly store: PlantStore;
  readonly state: StoreState;
  readonly now: string;
}

type Progress =
  | { readonly at: 'idle' | 'making' }
  | { readonly at: 'failed'; readonly refused: string }
  | { readonly at: 'done'; readonly file: string; readonly size: number };

/** Writes all records of the plant into one file that anybody can check. */
export function GiveEverything({ store, state, now }: GiveEverythingProps) {
  const speech = useSpeech();
  const { say } = speech;
  const [progress, setProgress] = useState<Progress>({ at: 'idle' });
  const give = async () => {
    setProgress({ at: 'making' });
    try {
      const blob = await store.exportAll();
      const file = `${fileName(state.plant.name)}-${now.slice(0, 10)}.zip`;
      handOver(blob, file);
      setProgress({ at: 'done', file, size: Math.max(0.1, blob.size / 1e6) });
    } catch (problem) {
      setProgress({ at: 'failed', refused: faultSentence(speech, problem) });
    }
  };
  return (
    <section className="part table-part" data-out={progress.at}>
      <h2>{say('everything.out')}</h2>
      <p>
        <bdi>{say('everything.out.help', { name: state.plant.name })}</bdi>
      </p>
      <button
        type="button"
        className="button"
        aria-disabled={progress.at === 'making'}
        onClick={() => progress.at === 'making' || void give()}
      >
        {say('everything.out')}
      </button>
      <p role="status" className="strong">
        {progress.at === 'making' ? say('everything.out.making', { count: state.size }) : null}
        {progress.at === 'done'
          ? say('everything.out.done', { file: progress.file, size: speech.number(progress.size, 1) })
          : null}
        {progress.at === 'failed' ? progress.refused : null}
      </p>
      <p>{say('everything.verifier.help')}</p>
      <a className="button" href={verifier} download>
        {say('everything.verifier')}
      </a>
    </section>
  );
}

/** Lies beside the page in every build. */
const verifier = '/verify-record.mjs';

/** What every file system takes. */
function fileName(name: string): string {
  const plain = name.replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-|-$/g, '');
  return plain === '' ? 'plant' : plain.slice(0, 40);
}
