import { useState } from 'react';
import { useLocation } from 'wouter';
import { useSpeech } from '../speech/use-speech.tsx';
import { install } from './install.ts';
import { takeNewer } from './update.ts';
import { useAppFiles, useCanInstall, useIsBusy } from './use-app-files.ts';

/** Above everything else: what the app itself has to say, and never while something goes on. */
export function AppNotices() {
  const { newer } = useAppFiles();
  const busy = useIsBusy();
  const installable = useCanInstall();
  const [place] = useLocation();
  if (busy) return null;
  if (newer) return <NewerNotice />;
  return installable && place === '/' ? <InstallNotice /> : null;
}

function NewerNotice() {
  const { say } = useSpeech();
  const [elsewhere, setElsewhere] = useState(false);
  const take = async () => setElsewhere(!(await takeNewer()));
  return (
    <div className="app-notice" role="status">
      <p>{say(elsewhere ? 'offline.newer.busy' : 'offline.newer')}</p>
      <button type="button" className="button" onClick={() => void take()}>
        {say('offline.newer.take')}
      </button>
    </div>
  );
}

function InstallNotice() {
  const { say } = useSpeech();
  const [later, setLater] = useState(false);
  if (later) return null;
  return (
    <div className="app-notice" role="status">
      <p>{say('offline.install.why')}</p>
      <button type="button" className="button" onClick={() => void install()}>
        {say('offline.install')}
      </button>
      <button type="button" className="button" onClick={() => setLater(true)}>
        {say('offline.later')}
      </button>
    </div>
  );
}
