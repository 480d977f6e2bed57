import { type Language, type Voice, voice, wholeLanguage } from '@loopwright/words';
import { createContext, type ReactNode, useContext, useEffect, useMemo, useState } from 'react';
import { afterFirstPaint } from '../offline/after-first-paint.ts';
import { useSettings } from '../settings/use-settings.tsx';

const SpeechContext = createContext<Voice | undefined>(undefined);

/**
 * Gives every component below the voice of the reader's language and units, and tells the browser the language. What the
 * settings' language says first must be ready when it is mounted; the rest, and a language chosen later, is fetched.
 */
export function SpeechProvider({ children }: { readonly children: ReactNode }) {
  const { settings } = useSettings();
  const fetched = useFetched(settings.language);
  const spoken = useMemo(() => voice(fetched.language, settings.units), [fetched, settings.units]);
  useEffect(() => {
    document.documentElement.lang = fetched.language;
  }, [fetched]);
  return <SpeechContext value={spoken}>{children}</SpeechContext>;
}

/**
 * The language asked for, once its sentences are there; until then, and when they cannot be fetched, the one before.
 * Another object when more of it can be said, so that it is said then.
 */
function useFetched(asked: Language): { readonly language: Language } {
  const [fetched, setFetched] = useState({ language: asked });
  useEffect(() => {
    let current = true;
    const show = () => current && setFetched({ language: asked });
    afterFirstPaint(() => void wholeLanguage(asked).then(show, () => undefined));
    return () => {
      current = false;
    };
  }, [asked]);
  return fetched;
}

/** The voice of the reader. */
export function useSpeech(): Voice {
  const spoken = useContext(SpeechContext);
  if (spoken === undefined) throw new Error('useSpeech stands outside of SpeechProvider');
  return spoken;
}
