import { type DefectCode, defectCodes } from '@loopwright/jobs/inspection';
import { defectLooks, defectPicture } from '@loopwright/sheets';
import type { InspectionWords } from '@loopwright/words';
import { useState } from 'react';
import { DrawingView } from '../../page/drawing-view.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';
import { BigButton } from './big-button.tsx';

const onOnePage = 4;

interface DefectTilesProps {
  readonly words: InspectionWords;
  readonly seen: readonly DefectCode[];
  readonly onOpen: (defect: DefectCode) => void;
  readonly onJudge: () => void;
  readonly onBack: () => void;
}

/** The catalogue as pictures, four on a page: whoever sees one of them on the belt taps it. */
export function DefectTiles({ words, seen, onOpen, onJudge, onBack }: DefectTilesProps) {
  const { say } = useSpeech();
  const [from, setFrom] = useState(0);
  const pages = Math.ceil(defectCodes.length / onOnePage);
  const turn = () => setFrom(from + onOnePage < defectCodes.length ? from + onOnePage : 0);
  return (
    <section className="run-panel">
      <h1>{say('runs.look')}</h1>
      <div className="run-tiles">
        {defectCodes.slice(from, from + onOnePage).map((defect) => (
          <button
            key={defect}
            type="button"
            className="button run-tile run-defect"
            aria-pressed={seen.includes(defect)}
            onClick={() => onOpen(defect)}
          >
            <DrawingView drawing={defectPicture(defect, defectLooks[defect][0], words.look(defect))} />
            <span>{words.name(defect)}</span>
          </button>
        ))}
        <button type="button" className="button run-tile" onClick={onBack}>
          <span>{say('runs.back')}</span>
        </button>
        <button type="button" className="button run-tile" onClick={turn}>
          <span>{say('runs.more-tiles', { page: from / onOnePage + 1, pages })}</span>
        </button>
      </div>
      <BigButton onTap={onJudge}>{say('runs.seen-defects', { count: seen.length })}</BigButton>
    </section>
  );
}
