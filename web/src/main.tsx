import '@fontsource-variable/atkinson-hyperlegible-next/wght.css';
import './style/style.css';
import './style/offline.css';
import { readyLanguage } from '@loopwright/words';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { afterFirstPaint } from './offline/after-first-paint.ts';
import { AppNotices } from './offline/app-notices.tsx';
import { waitForInstallQuestion } from './offline/install.ts';
import { keepAppFiles } from './offline/update.ts';
import { loadSettings } from './settings/settings.ts';
import { SettingsProvider } from './settings/use-settings.tsx';
import { App } from './shell/app.tsx';
import { SpeechProvider } from './speech/use-speech.tsx';
import { startStore } from './store/start-store.ts';
import { StoreProvider } from './store/use-store.tsx';

const root = document.getElementById('root');
if (root === null) throw new Error('index.html has no element with the id root');

waitForInstallQuestion();
const opening = startStore();
const page = createRoot(root);

/** How long an empty page waits for the plant before it says that it reads [ms]: drawing twice takes longer. */
const patience_ms = 400;
const openedSoon = Promise.race([opening, new Promise<undefined>((tell) => setTimeout(tell, patience_ms))]);

void Promise.all([openedSoon, readyLanguage(loadSettings().language)]).then(([opened]) =>
  page.render(
    <StrictMode>
      <SettingsProvider>
        <SpeechProvider>
          <AppNotices />
          <StoreProvider opening={opening} opened={opened}>
            <App />
          </StoreProvider>
        </SpeechProvider>
      </SettingsProvider>
    </StrictMode>,
  ),
);

// Not before the plant is read: nothing may hold up what people wait for.
if (import.meta.env.PROD) void opening.then(() => afterFirstPaint(() => void keepAppFiles()));
