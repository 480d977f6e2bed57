import { type FormEvent, useCallback, useEffect, useState } from 'react';
import { useSpeech } from '../../speech/use-speech.tsx';
import { faultSentence } from '../../store/fault-sentence.ts';
import type { PersonDesk, BadgeWearer as Wearer } from '../../store/persons/person-desk.ts';
import { useStore } from '../../store/use-store.tsx';
import { HoldButton } from '../run/hold-button.tsx';

/** Who wears a badge: noted on this device alone, sealed, and erased for good when somebody asks for it. */
export function BadgeWearer({ badge }: { readonly badge: string }) {
  const speech = useSpeech();
  const { say } = speech;
  const { desk, wearer, fault, run } = useWearer(badge);
  return (
    <section className="part wearer" data-wearer={wearer?.is}>
      <h2>{say('wearer.title')}</h2>
      <p>{say('wearer.about')}</p>
      <div role="status">{wearer === undefined ? null : <WearerSaid wearer={wearer} />}</div>
      {fault === undefined ? null : <p role="alert">{say('wearer.fault', { reason: faultSentence(speech, fault) })}</p>}
      {desk === undefined || wearer === undefined ? null : (
        <WearerActions badge={badge} desk={desk} wearer={wearer} run={run} />
      )}
    </section>
  );
}

type Run = (work: Promise<void>) => void;

function useWearer(badge: string) {
  const { store } = useStore();
  const [desk, setDesk] = useState<PersonDesk>();
  const [wearer, setWearer] = useState<Wearer>();
  const [fault, setFault] = useState<unknown>();
  useEffect(() => {
    let wanted = true;
    store.personDesk().then(
      async (opened) => {
        const found = await opened.wearer(badge);
        if (!wanted) return;
        setDesk(opened);
        setWearer(found);
      },
      (cause: unknown) => wanted && setFault(cause),
    );
    return () => {
      wanted = false;
    };
  }, [store, badge]);
  const run: Run = useCallback(
    (work) => {
      setFault(undefined);
      work.catch(setFault).then(async () => setWearer(await desk?.wearer(badge)));
    },
    [desk, badge],
  );
  return { desk, wearer, fault, run };
}

function WearerSaid({ wearer }: { readonly wearer: Wearer }) {
  const { say, moment } = useSpeech();
  switch (wearer.is) {
    case 'known':
      return (
        <p className="strong">
          <bdi>{wearer.texts.join(', ')}</bdi>
        </p>
      );
    case 'erased':
      return <p className="strong">{say('wearer.erased', { at: moment(wearer.at) })}</p>;
    case 'nobody-noted':
    case 'not-here':
      return <p>{say(`wearer.${wearer.is}`)}</p>;
  }
}

interface ActionsProps {
  readonly badge: string;
  readonly desk: PersonDesk;
  readonly wearer: Wearer;
  readonly run: Run;
}

function WearerActions({ badge, desk, wearer, run }: ActionsProps) {
  const { say } = useSpeech();
  const [typed, setTyped] = useState('');
  if (wearer.is === 'known' || wearer.is === 'not-here')
    return (
      <>
        <p>{say('wearer.erase.gone')}</p>
        <p>{say('wearer.erase.stays')}</p>
        <HoldButton note={say('wearer.erase.hold')} onHeld={() => run(desk.erase(badge))}>
          {say('wearer.erase')}
        </HoldButton>
      </>
    );
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (typed.trim() === '') return;
    run(desk.note(badge, typed.trim()));
    setTyped('');
  };
  return (
    <form className="wearer-note" onSubmit={submit}>
      <label className="find">
        {say('wearer.name')}
        <input
          type="text"
          value={typed}
          maxLength={60}
          autoComplete="off"
          onChange={({ target }) => setTyped(target.value)}
        />
      </label>
      <button type="submit" className="button">
        {say('wearer.note')}
      </button>
    </form>
  );
}
