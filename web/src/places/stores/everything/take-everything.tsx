import { useEffect, useRef, useState } from 'react';
import { useBusy } from '../../../offline/busy.ts';
import { useSpeech } from '../../../speech/use-speech.tsx';
import { faultSentence } from '../../../store/fault-sentence.ts';
import type { ImportPreview, PlantStore } from '../../../store/plant-store.ts';
import { FileButton } from '../file-button.tsx';
import { outcomeOf } from '../keep.ts';
import { FoundRecords } from './found-records.tsx';

type Taking =
  | { readonly at: 'start'; readonly refused?: string }
  | { readonly at: 'checking' }
  | { readonly at: 'found' | 'saving'; readonly file: string; readonly preview: ImportPreview }
  | { readonly at: 'taken'; readonly name: string };

/** Takes an export file, after it was checked and looked at; all of it or nothing. */
export function TakeEverything({ store }: { readonly store: PlantStore }) {
  const speech = useSpeech();
  const { say } = speech;
  const [taking, setTaking] = useState<Taking>({ at: 'start' });
  const turn = useRef(0);
  useEffect(
    () => () => {
      turn.current += 1;
    },
    [],
  );
  useBusy(taking.at !== 'start' && taking.at !== 'taken');
  const look = async (file: File) => {
    turn.current += 1;
    const mine = turn.current;
    setTaking({ at: 'checking' });
    const next = await store.previewImport(file).then(
      (preview): Taking => ({ at: 'found', file: file.name, preview }),
      (problem: unknown): Taking => ({ at: 'start', refused: faultSentence(speech, problem) }),
    );
    if (turn.current === mine) setTaking(next);
  };
  const take = async (file: string, preview: ImportPreview) => {
    setTaking({ at: 'saving', file, preview });
    const outcome = await outcomeOf(speech, store.takeImport(preview));
    setTaking(
      'refused' in outcome ? { at: 'start', refused: outcome.refused } : { at: 'taken', name: preview.plant.name },
    );
  };
  const leave = () => {
    turn.current += 1;
    setTaking({ at: 'start' });
  };
  return (
    <section className="part table-part" data-at={taking.at}>
      <h2>{say('everything.in')}</h2>
      {taking.at === 'start' || taking.at === 'taken' ? (
        <Choose taking={taking} onFile={(file) => void look(file)} />
      ) : null}
      {taking.at === 'checking' ? <Checking onStop={leave} /> : null}
      {taking.at === 'found' || taking.at === 'saving' ? (
        <FoundRecords
          file={taking.file}
          preview={taking.preview}
          saving={taking.at === 'saving'}
          onTake={() => void take(taking.file, taking.preview)}
          onLeave={leave}
        />
      ) : null}
    </section>
  );
}

interface ChooseProps {
  readonly taking: Extract<Taking, { readonly at: 'start' | 'taken' }>;
  readonly onFile: (file: File) => void;
}

function Choose({ taking, onFile }: ChooseProps) {
  const { say } = useSpeech();
  return (
    <>
      <p>{say('everything.in.help')}</p>
      {taking.at === 'start' && taking.refused !== undefined ? (
        <p className="caution caution-stop" role="alert">
          {taking.refused}
        </p>
      ) : null}
      <div role="status" className={taking.at === 'taken' ? 'written' : undefined}>
        {taking.at === 'taken' ? (
          <p className="strong">
            <bdi>{say('everything.taken', { name: taking.name })}</bdi>
          </p>
        ) : null}
      </div>
      <FileButton label={say('tables.choose')} accept=".zip,.jsonl" onFile={onFile} />
    </>
  );
}

function Checking({ onStop }: { readonly onStop: () => void }) {
  const { say } = useSpeech();
  return (
    <>
      <progress className="progress" aria-label={say('everything.in')} />
      <p role="status">{say('everything.checking')}</p>
      <button type="button" className="button" onClick={onStop}>
        {say('tables.stop')}
      </button>
    </>
  );
}
