import '@fontsource-variable/atkinson-hyperlegible-next/wght.css';
import './style/style.css';
import { readyLanguage } from '@loopwright/words';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { loadSettings } from './settings/settings.ts';
import { SettingsProvider } from './settings/use-settings.tsx';
import { App } from './shell/app.tsx';
import { SpeechProvider } from './speech/use-speech.tsx';
import { startStore } from './store/start-store.ts';
import { StoreProvider } from './store/use-store.tsx';

const root = document.getElementById('root');
if (root === null) throw new Error('index.html has no element with the id root');

const opening = startStore();
await readyLanguage(loadSettings().language);

createRoot(root).render(
  <StrictMode>
    <SettingsProvider>
      <SpeechProvider>
        <StoreProvider opening={opening}>
          <App />
        </StoreProvider>
      </SpeechProvider>
    </SettingsProvider>
  </StrictMode>,
);
