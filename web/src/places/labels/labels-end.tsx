import type { PositionLabel } from '@loopwright/jobs';
import { type LabelPaper, labelsOnSheet } from '@loopwright/sheets';
import { useState } from 'react';
import { useSpeech } from '../../speech/use-speech.tsx';

interface LabelsEndProps {
  readonly labels: readonly PositionLabel[];
  readonly paper: LabelPaper;
  readonly now: string;
}

type Progress = 'idle' | 'working' | 'done' | 'failed';

/** How many labels on how many sheets, and the file with them. Its maker is fetched only now. */
export function LabelsEnd({ labels, paper, now }: LabelsEndProps) {
  const speech = useSpeech();
  const { say } = speech;
  const [progress, setProgress] = useState<Progress>('idle');
  const none = labels.length === 0;
  const make = async () => {
    setProgress('working');
    try {
      const { saveLabelsPdf } = await import('./save-labels-pdf.ts');
      await saveLabelsPdf(labels, { paper, speech, now });
      setProgress('done');
    } catch {
      setProgress('failed');
    }
  };
  return (
    <div className="list-action">
      <p>{say('labels.count', { count: labels.length, sheets: Math.ceil(labels.length / labelsOnSheet) })}</p>
      <p role="status" className={progress === 'failed' ? 'strong' : 'soft'}>
        {none ? say('labels.none-chosen') : progress === 'idle' ? '' : say(`labels.${progress}`)}
      </p>
      {none ? null : (
        <button
          type="button"
          className="button main-action"
          disabled={progress === 'working'}
          onClick={() => void make()}
        >
          {say('labels.pdf')}
        </button>
      )}
    </div>
  );
}
