import type { Page } from '@loopwright/sheets';
import { useState } from 'react';
import { useSpeech } from '../../speech/use-speech.tsx';
import { useStore } from '../../store/use-store.tsx';
import { withLogCode } from './with-log-code.ts';

type Progress = 'idle' | 'working' | 'done' | 'failed';

/** Makes the card's PDF in the browser. The part that can do it is fetched only now. */
export function PdfButton({ page, position }: { readonly page: Page; readonly position: string }) {
  const speech = useSpeech();
  const { say, units } = speech;
  const { store } = useStore();
  const [progress, setProgress] = useState<Progress>('idle');
  const make = async () => {
    setProgress('working');
    try {
      const { saveCardPdf } = await import('./save-card-pdf.ts');
      await saveCardPdf(
        await withLogCode(page, store, speech),
        units === 'us' ? 'half-letter' : 'A5',
        `${position}.pdf`,
      );
      setProgress('done');
    } catch {
      setProgress('failed');
    }
  };
  return (
    <>
      <button type="button" className="button" disabled={progress === 'working'} onClick={make}>
        {say('app.pdf')}
      </button>
      <p role="status" className={progress === 'failed' ? 'strong' : 'soft'}>
        {progress === 'idle' ? '' : say(`app.pdf.${progress}`)}
      </p>
    </>
  );
}
