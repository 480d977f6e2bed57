import { type FormEvent, useRef, useState } from 'react';
import { useSpeech } from '../../speech/use-speech.tsx';
import type { WitnessDesk } from '../../store/witness/witness-desk.ts';
import { ScanView } from '../scan/scan-view.tsx';
import { FileButton } from '../stores/file-button.tsx';
import { MetSaid } from './met-said.tsx';
import { useMeeting } from './use-meeting.ts';

/** The codes of another device: by camera, typed by a hand scanner, or as a file of countersignatures. */
export function MeetAnother({ desk }: { readonly desk: WitnessDesk }) {
  const { say } = useSpeech();
  const { met, onCodes, onFile } = useMeeting(desk);
  const [filming, setFilming] = useState(false);
  return (
    <section className="part witness-other">
      <h2>{say('seen.other')}</h2>
      <p>{say('seen.other.help')}</p>
      <div role="alert">{met === undefined ? null : <MetSaid met={met} />}</div>
      {filming ? <ScanView onRead={onCodes} /> : null}
      <button type="button" className="button main-action" onClick={() => setFilming(!filming)}>
        {say(filming ? 'seen.camera.off' : 'seen.camera.on')}
      </button>
      <TypedCode onCode={(text) => onCodes([text])} />
      <p>{say('seen.file.help')}</p>
      <FileButton label={say('seen.file')} accept=".jsonl,.txt" onFile={onFile} />
    </section>
  );
}

function TypedCode({ onCode }: { readonly onCode: (text: string) => void }) {
  const { say } = useSpeech();
  const [typed, setTyped] = useState('');
  const input = useRef<HTMLInputElement>(null);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (typed.trim() === '') return input.current?.focus();
    onCode(typed);
    setTyped('');
  };
  return (
    <form className="witness-typed" onSubmit={submit}>
      <label className="find">
        {say('seen.type')}
        <input
          ref={input}
          type="text"
          value={typed}
          autoComplete="off"
          autoCapitalize="none"
          spellCheck={false}
          onChange={(event) => setTyped(event.target.value)}
        />
      </label>
      <button type="submit" className="button">
        {say('seen.type.take')}
      </button>
    </form>
  );
}
