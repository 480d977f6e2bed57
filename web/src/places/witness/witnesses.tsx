import { useEffect, useState } from 'react';
import { useSpeech } from '../../speech/use-speech.tsx';
import { useStore } from '../../store/use-store.tsx';
import type { WitnessDesk } from '../../store/witness/witness-desk.ts';
import { arrive } from '../stores/arrive.ts';
import { MeetAnother } from './meet-another.tsx';
import { OwnRecords } from './own-records.tsx';

/** Who has seen the records of this device, and whose it has seen. */
export function Witnesses() {
  const { say } = useSpeech();
  const { store } = useStore();
  const [desk, setDesk] = useState<WitnessDesk | 'none'>();
  useEffect(() => {
    let wanted = true;
    store.witnessDesk().then(
      (opened) => wanted && setDesk(opened),
      () => wanted && setDesk('none'),
    );
    return () => {
      wanted = false;
    };
  }, [store]);
  return (
    <article className="thing-form witness">
      <h1 tabIndex={-1} ref={arrive} className="thing-title">
        {say('seen.title')}
      </h1>
      <p>{say('seen.about')}</p>
      {desk === undefined ? <p role="status">{say('app.reading')}</p> : null}
      {desk === 'none' ? <p className="strong">{say('seen.nothing-kept')}</p> : null}
      {typeof desk === 'object' ? (
        <>
          <OwnRecords desk={desk} />
          <MeetAnother desk={desk} />
        </>
      ) : null}
    </article>
  );
}
