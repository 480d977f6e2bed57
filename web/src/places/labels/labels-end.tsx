import type { PositionLabel } from '@loopwright/jobs';
import { type LabelPaper, labelsOnSheet } from '@loopwright/sheets';
import { useEffect, useRef, useState } from 'react';
import { useSpeech } from '../../speech/use-speech.tsx';

interface LabelsEndProps {
  readonly labels: readonly PositionLabel[];
  readonly paper: LabelPaper;
  readonly now: string;
}

type Making =
  | { readonly is: 'idle' | 'done' | 'failed' | 'stopped' }
  | { readonly is: 'working'; readonly share: number };

/** How many labels on how many sheets, and the file with them. Its maker is fetched only now. */
export function LabelsEnd({ labels, paper, now }: LabelsEndProps) {
  const speech = useSpeech();
  const { say } = speech;
  const [making, setMaking] = useState<Making>({ is: 'idle' });
  const order = useRef(new AbortController());
  useEffect(() => () => order.current.abort(), []);
  const none = labels.length === 0;
  const make = async () => {
    order.current = new AbortController();
    const { signal } = order.current;
    const end = (is: 'done' | 'failed') => signal.aborted || setMaking({ is });
    const onShare = (share: number) => signal.aborted || setMaking({ is: 'working', share });
    onShare(0);
    try {
      const { saveLabelsPdf } = await import('./save-labels-pdf.ts');
      await saveLabelsPdf(labels, { paper, speech, now }, { signal, onShare });
      end('done');
    } catch {
      end('failed');
    }
  };
  const stop = () => {
    order.current.abort();
    setMaking({ is: 'stopped' });
  };
  const said = making.is !== 'working' && none ? 'none-chosen' : making.is;
  return (
    <div className="list-action">
      <p>{say('labels.count', { count: labels.length, sheets: Math.ceil(labels.length / labelsOnSheet) })}</p>
      <p role="status" className={making.is === 'failed' ? 'strong' : 'soft'}>
        {said === 'idle' ? '' : say(`labels.${said}`)}
      </p>
      {making.is === 'working' ? (
        <>
          <progress className="progress" aria-label={say('labels.working')} value={making.share} max={1} />
          <button type="button" className="button" onClick={stop}>
            {say('labels.stop')}
          </button>
        </>
      ) : none ? null : (
        <button type="button" className="button main-action" onClick={() => void make()}>
          {say('labels.pdf')}
        </button>
      )}
    </div>
  );
}
