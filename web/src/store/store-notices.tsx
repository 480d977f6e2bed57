import { StartLink } from '../places/start/start-link.tsx';
import { EverythingLink } from '../places/stores/everything-link.tsx';
import { useSpeech } from '../speech/use-speech.tsx';
import { noticesOf } from './notices.ts';
import { useStore } from './use-store.tsx';

/** What must be known about what is kept, and that the plant is invented. */
export function StoreNotices() {
  const { say } = useSpeech();
  const { state, store } = useStore();
  const urgent = noticesOf(state).filter((notice) => notice.urgent);
  return (
    <>
      {state.demo ? (
        <div className="demo-note">
          <p className="soft">{say('store.demo')}</p>
          <StartLink begun={false} />
        </div>
      ) : null}
      {urgent.map(({ code, data }) => (
        <p key={code} role="status" data-notice={code}>
          {say(`store.notice.${code}`, data)}
        </p>
      ))}
      {state.lost === undefined ? null : (
        <button type="button" className="button" onClick={() => store.forgetLoss()}>
          {say('store.lost.read')}
        </button>
      )}
    </>
  );
}

/** How safely this device keeps what is entered, in full; among the settings. */
export function DeviceNotices() {
  const { say } = useSpeech();
  const { state, store } = useStore();
  const asks = state.storage.persisted === false && state.storage.asksPerson;
  return (
    <section className="choice">
      <h2>{say('store.device')}</h2>
      {noticesOf(state).map(({ code, data }) => (
        <p key={code}>{say(`store.notice.${code}`, data)}</p>
      ))}
      {asks ? (
        <button type="button" className="button" onClick={() => void store.askToPersist()}>
          {say('store.persist')}
        </button>
      ) : null}
      <EverythingLink />
    </section>
  );
}
