import '@fontsource-variable/atkinson-hyperlegible-next/wght.css';
import './style/style.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { SettingsProvider } from './settings/use-settings.tsx';
import { App } from './shell/app.tsx';
import { SpeechProvider } from './speech/use-speech.tsx';

const root = document.getElementById('root');
if (root === null) throw new Error('index.html has no element with the id root');

createRoot(root).render(
  <StrictMode>
    <SettingsProvider>
      <SpeechProvider>
        <App />
      </SpeechProvider>
    </SettingsProvider>
  </StrictMode>,
);
