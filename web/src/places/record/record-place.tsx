import type { AuditReport } from '@loopwright/jobs/audit-report';
import type { Plant } from '@loopwright/plant';
import { auditPage } from '@loopwright/sheets';
import { useEffect, useMemo } from 'react';
import { PageView } from '../../page/page-view.tsx';
import { Bar } from '../../shell/bar.tsx';
import { Said } from '../../shell/said.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';
import { RecordHead } from './record-head.tsx';
import { useRecord } from './use-record.ts';

export interface RecordPlaceProps {
  readonly run: string;
  readonly plant: Plant;
  readonly now: string;
  /** Where the place of the card leads. */
  readonly card: string | undefined;
}

/** The record of a press run: what an auditor asks, the code that paper and log are held against each other by. */
export function RecordPlace({ run, plant, now, card }: RecordPlaceProps) {
  const { say } = useSpeech();
  const result = useRecord(run, now);
  useEffect(() => window.scrollTo(0, 0), []);
  return (
    <div className="shell">
      <Bar place="run" plant={plant} card={card} />
      <main className="pane record">
        {result.status === 'ready' ? (
          <Shown report={result.report} isBroken={result.isBroken} />
        ) : result.status === 'none' ? (
          <Said title={say('runs.unknown', { run })} next={say('runs.unknown.next')} toLines />
        ) : (
          <p role="status">{say(result.status === 'checking' ? 'audit.checking' : 'app.reading')}</p>
        )}
      </main>
    </div>
  );
}

/** Narrow, so that letters are large enough on a phone. */
const curve = { width: 262, height: 110 };

function Shown({ report, isBroken }: { readonly report: AuditReport; readonly isBroken: boolean }) {
  const speech = useSpeech();
  const page = useMemo(() => auditPage(report, speech, curve), [report, speech]);
  return <PageView page={page} ask={<RecordHead report={report} isBroken={isBroken} code={page.code} />} />;
}
