import { type Voice, voice } from '@loopwright/words';
import { createContext, type ReactNode, useContext, useEffect, useMemo } from 'react';
import { useSettings } from '../settings/use-settings.tsx';

const SpeechContext = createContext<Voice>(voice('en', 'metric'));

/** Gives every component below the voice of the reader's language and units, and tells the browser the language. */
export function SpeechProvider({ children }: { readonly children: ReactNode }) {
  const { settings } = useSettings();
  const spoken = useMemo(() => voice(settings.language, settings.units), [settings.language, settings.units]);
  useEffect(() => {
    document.documentElement.lang = settings.language;
  }, [settings.language]);
  return <SpeechContext value={spoken}>{children}</SpeechContext>;
}

/** The voice of the reader. */
export function useSpeech(): Voice {
  return useContext(SpeechContext);
}
