import { cardCode } from '@loopwright/records/log';
import { checkpointCode } from '@loopwright/sheets';
import { useSpeech } from '../../speech/use-speech.tsx';
import { useStore } from '../../store/use-store.tsx';
import type { OwnLog, WitnessDesk } from '../../store/witness/witness-desk.ts';
import { CodeDrawing } from './code-drawing.tsx';

/** How far this device's own records are known to others, and the codes that make them known. */
export function OwnRecords({ desk }: { readonly desk: WitnessDesk }) {
  const { say } = useSpeech();
  // Drawn anew whenever something is kept.
  useStore();
  const own = desk.own();
  return (
    <section className="part">
      <h2>{say('seen.own')}</h2>
      {own === undefined ? <p>{say('seen.own.nothing')}</p> : <OwnCodes own={own} />}
    </section>
  );
}

function OwnCodes({ own }: { readonly own: OwnLog }) {
  const { say } = useSpeech();
  const { state } = useStore();
  const { checkpoint, key, witnesses } = own;
  const { onlyHere } = state.device;
  return (
    <>
      <p className="strong" data-only-here={onlyHere}>
        {witnesses.length === 0
          ? say('seen.only-here', { count: checkpoint.size })
          : say('seen.seen', { count: checkpoint.size, open: onlyHere })}
      </p>
      <WitnessList own={own} />
      <p>{say('seen.code.help')}</p>
      <p className="witness-digits">
        <span className="sr">{say('seen.code')} </span>
        {cardCode(checkpoint)}
      </p>
      <p>{say('seen.show')}</p>
      <CodeDrawing payload={checkpointCode({ key, checkpoint })} label={say('seen.show.label')} />
    </>
  );
}

function WitnessList({ own: { witnesses } }: { readonly own: OwnLog }) {
  const { say, moment } = useSpeech();
  if (witnesses.length === 0) return null;
  return (
    <ul className="witness-list">
      {witnesses.map(({ statement: { witness, size, at } }) => (
        <li key={witness}>{say('seen.by', { device: witness.slice(0, 8), size, at: moment(at) })}</li>
      ))}
    </ul>
  );
}
