import type { PressCycle } from '@loopwright/jobs';
import type { Page } from '@loopwright/sheets';
import { useState } from 'react';
import { useSpeech } from '../../speech/use-speech.tsx';
import type { CycleDrawings } from './cycle-drawings.ts';
import { saveCsv, savePng, saveSvg } from './save-cycle.ts';

interface CycleEndsProps {
  readonly name: string;
  readonly cycle: PressCycle;
  readonly drawings: CycleDrawings;
  /** The whole page as the settings stand, made when it is asked for. */
  readonly makePage: () => Page;
}

type Progress = 'idle' | 'working' | 'done' | 'failed';

/** Taking a cycle along: on paper, as a picture, as numbers. The maker of the paper is fetched only now. */
export function CycleEnds({ name, cycle, drawings, makePage }: CycleEndsProps) {
  const { say, units } = useSpeech();
  const [progress, setProgress] = useState<Progress>('idle');
  const make = async (save: () => Promise<void> | void) => {
    setProgress('working');
    try {
      await save();
      setProgress('done');
    } catch {
      setProgress('failed');
    }
  };
  const pdf = async () => {
    const { saveFlowPdf } = await import('../../print/save-flow-pdf.ts');
    await saveFlowPdf(makePage(), units === 'us' ? 'letter' : 'A4', `${name}.pdf`);
  };
  const ways = [
    ['pdf', pdf],
    ['svg', () => saveSvg([drawings.temperatures, drawings.fusion], name)],
    ['png', () => savePng([drawings.temperatures, drawings.fusion], name)],
    ['csv', () => saveCsv(cycle.curve, name)],
  ] as const;
  return (
    <section className="part" aria-labelledby="cycle-ends">
      <h2 id="cycle-ends">{say('recipes.take-along')}</h2>
      <div className="cycle-ends">
        {ways.map(([way, save]) => (
          <button
            key={way}
            type="button"
            className="button"
            disabled={progress === 'working'}
            onClick={() => void make(save)}
          >
            {say(`recipes.save.${way}`)}
          </button>
        ))}
      </div>
      <p role="status" className={progress === 'failed' ? 'strong' : 'soft'}>
        {progress === 'idle' ? '' : say(`recipes.save.${progress}`)}
      </p>
    </section>
  );
}
