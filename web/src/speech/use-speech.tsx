import { type Language, readyLanguage, type Voice, voice } from '@loopwright/words';
import { createContext, type ReactNode, useContext, useEffect, useMemo, useState } from 'react';
import { useSettings } from '../settings/use-settings.tsx';

const SpeechContext = createContext<Voice | undefined>(undefined);

/**
 * Gives every component below the voice of the reader's language and units, and tells the browser the language.
 * The language of the settings must be ready when it is mounted; one chosen later is fetched first.
 */
export function SpeechProvider({ children }: { readonly children: ReactNode }) {
  const { settings } = useSettings();
  const language = useReady(settings.language);
  const spoken = useMemo(() => voice(language, settings.units), [language, settings.units]);
  useEffect(() => {
    document.documentElement.lang = language;
  }, [language]);
  return <SpeechContext value={spoken}>{children}</SpeechContext>;
}

/** The language asked for, once its sentences are there; until then, and when they cannot be fetched, the one before. */
function useReady(asked: Language): Language {
  const [ready, setReady] = useState(asked);
  useEffect(() => {
    let current = true;
    readyLanguage(asked).then(
      () => current && setReady(asked),
      () => undefined,
    );
    return () => {
      current = false;
    };
  }, [asked]);
  return ready;
}

/** The voice of the reader. */
export function useSpeech(): Voice {
  const spoken = useContext(SpeechContext);
  if (spoken === undefined) throw new Error('useSpeech stands outside of SpeechProvider');
  return spoken;
}
