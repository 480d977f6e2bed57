import { witnessCode } from '@loopwright/sheets';
import { useSpeech } from '../../speech/use-speech.tsx';
import { faultSentence } from '../../store/fault-sentence.ts';
import { CodeDrawing } from './code-drawing.tsx';
import type { Met } from './use-meeting.ts';

/** What came of a code or a file, and what to show back. */
export function MetSaid({ met }: { readonly met: Met }) {
  const speech = useSpeech();
  const { say } = speech;
  switch (met.from) {
    case 'checkpoint':
      return <CheckpointSaid met={met} />;
    case 'countersignatures':
      return <TakenSaid met={met} />;
    case 'unreadable':
      return <p className="strong">{say(`seen.unreadable.${met.why}`)}</p>;
    case 'refused':
      return <p className="strong">{faultSentence(speech, met.cause)}</p>;
  }
}

function CheckpointSaid({ met: { met, device, size } }: { readonly met: Extract<Met, { from: 'checkpoint' }> }) {
  const { say } = useSpeech();
  const short = device.slice(0, 8);
  switch (met.meeting) {
    case 'own':
    case 'other-plant':
    case 'unsound':
      return <p className="strong">{say(`seen.not-met.${met.meeting}`)}</p>;
    case 'older':
    case 'not-proved':
    case 'fork':
    case 'rewritten':
      return (
        <p className="strong" data-meeting={met.meeting}>
          {say(`witness.${met.meeting}`, { device: short, size, known: met.known.size })}
        </p>
      );
    default:
      return (
        <div className="witness-back" data-meeting={met.meeting}>
          <p className="strong">{say(`witness.${met.meeting}`, { device: short, size })}</p>
          <p>{say('seen.back')}</p>
          <CodeDrawing payload={witnessCode(met.countersignature)} label={say('seen.back.label')} />
        </div>
      );
  }
}

function TakenSaid({ met: { taken } }: { readonly met: Extract<Met, { from: 'countersignatures' }> }) {
  const { say } = useSpeech();
  if ('failure' in taken) {
    const { verdict, at } = taken.failure;
    return (
      <p className="strong" data-verdict={verdict}>
        {say('seen.not-taken')} {say(`verdict.${verdict}`, at === undefined ? {} : { at })}
      </p>
    );
  }
  return (
    <p className="strong" data-fresh={taken.fresh}>
      {say('seen.taken', { ...taken })}
    </p>
  );
}
