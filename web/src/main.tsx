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

void readyLanguage(loadSettings().language).then(() =>
  page.render(
    <StrictMode>
      <SettingsProvider>
        <SpeechProvider>
          <AppNotices />
          <StoreProvider opening={opening}>
            <App />
          </StoreProvider>
        </SpeechProvider>
      </SettingsProvider>
    </StrictMode>,
  ),
);

// Not before the plant is read: nothing may hold up what people wait for.
if (import.meta.env.PROD) void opening.then(() => afterFirstPaint(() => void keepAppFiles()));
