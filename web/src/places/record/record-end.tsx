import type { AuditReport } from '@loopwright/jobs/audit-report';
import { auditPage } from '@loopwright/sheets';
import { useState } from 'react';
import { ChoiceGroup } from '../../settings/choice-group.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';

const papers = ['A4', 'letter'] as const;

type Progress = 'idle' | 'working' | 'done' | 'failed';

/** The record on paper: on which, and the file. Its maker is fetched only now. */
export function RecordEnd({ report }: { readonly report: AuditReport }) {
  const speech = useSpeech();
  const { say, units } = speech;
  const [paper, setPaper] = useState<(typeof papers)[number]>(units === 'us' ? 'letter' : 'A4');
  const [progress, setProgress] = useState<Progress>('idle');
  const make = async () => {
    setProgress('working');
    try {
      const { saveFlowPdf } = await import('../../print/save-flow-pdf.ts');
      await saveFlowPdf(auditPage(report, speech), paper, `record-${report.record.run}.pdf`);
      setProgress('done');
    } catch {
      setProgress('failed');
    }
  };
  return (
    <div className="record-end">
      <ChoiceGroup
        title={say('labels.paper')}
        options={papers.map((value) => ({ value, shown: say(`labels.paper.${value}`) }))}
        chosen={paper}
        onChoose={setPaper}
      />
      <button
        type="button"
        className="button main-action"
        disabled={progress === 'working'}
        onClick={() => void make()}
      >
        {say('recipes.save.pdf')}
      </button>
      <p role="status" className={progress === 'failed' ? 'strong' : 'soft'}>
        {progress === 'idle' ? '' : say(`recipes.save.${progress}`)}
      </p>
    </div>
  );
}
