import type { AuditReport } from '@loopwright/jobs/audit-report';
import { runWords } from '@loopwright/words';
import { Mark } from '../../page/mark.tsx';
import { PhotoThumb } from '../../photo/photo-thumb.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';
import { CodeDrawing } from '../witness/code-drawing.tsx';
import { RecordEnd } from './record-end.tsx';

interface RecordHeadProps {
  readonly report: AuditReport;
  readonly isBroken: boolean;
  /** Payload of the code to scan; empty where there is none. */
  readonly code: string;
}

/** What only the screen has of a record: who else has seen it, the code to scan, the pictures, and the way to paper. */
export function RecordHead({ report, isBroken, code }: RecordHeadProps) {
  const { say } = useSpeech();
  const [log] = report.logs;
  return (
    <div className="record-head">
      {isBroken ? (
        <div className="caution caution-stop" role="alert">
          <Mark name="stop" />
          <p>{say('audit.broken')}</p>
        </div>
      ) : null}
      <p className="strong" data-seen={report.unseen === 0}>
        {say(report.unseen > 0 ? 'runs.only-here' : 'runs.seen')}
      </p>
      {code === '' ? null : (
        <div className="record-code">
          <CodeDrawing payload={code} label={say('audit.code-drawing', { code: log?.code ?? '' })} />
          <p>
            <span className="soft">{say('audit.head-code', { code: '' })}</span>
            <span className="strong record-digits">{log?.code}</span>
          </p>
        </div>
      )}
      <Pictures report={report} />
      <RecordEnd report={report} />
    </div>
  );
}

function Pictures({ report }: { readonly report: AuditReport }) {
  const speech = useSpeech();
  const words = runWords(speech, report.facts);
  const { photos } = report.record;
  if (photos.length === 0) return null;
  return (
    <div className="record-pictures">
      {photos.map(({ event, sha256, face }) => (
        <PhotoThumb key={event} sha256={sha256} label={words.choice(face)} />
      ))}
    </div>
  );
}
