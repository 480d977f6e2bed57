import { engineVersion } from '@loopwright/engine/version';
import { useSpeech } from '../speech/use-speech.tsx';
import { installation } from '../store/storage-state.ts';
import { install } from './install.ts';
import { useAppFiles, useCanInstall } from './use-app-files.ts';
import { buildVersion } from './version.ts';

/** Which version runs, whether it starts without a network, and how to install it; among the settings. */
export function AboutApp() {
  const { say } = useSpeech();
  const { offline } = useAppFiles();
  return (
    <section className="choice" data-offline={offline}>
      <h2>{say('offline.app')}</h2>
      <p>{say('offline.version', { build: buildVersion(), engine: engineVersion })}</p>
      <p>{say(`offline.${offline}`)}</p>
      <InstallAdvice />
    </section>
  );
}

function InstallAdvice() {
  const { say } = useSpeech();
  const installable = useCanInstall();
  const now = installation();
  if (now === 'installed') return null;
  if (now === 'practice-only') return <p>{say('offline.install.ios')}</p>;
  if (!installable) return <p>{say('offline.install.menu')}</p>;
  return (
    <>
      <p>{say('offline.install.why')}</p>
      <button type="button" className="button" onClick={() => void install()}>
        {say('offline.install')}
      </button>
    </>
  );
}
