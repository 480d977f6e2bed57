import { languages } from '@loopwright/words';
import { languageNames, themes } from '../../settings/settings.ts';
import { useSettings } from '../../settings/use-settings.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';
import { Tiles } from './tiles.tsx';

/** Language and light, changed in the middle of a run. */
export function LanguageTiles({ onBack }: { readonly onBack: () => void }) {
  const { say } = useSpeech();
  const { settings, change } = useSettings();
  const tiles = [
    ...languages.map((language) => ({
      key: language,
      shown: <span lang={language}>{languageNames[language]}</span>,
      now: language === settings.language,
      onTap: () => change({ language }),
    })),
    ...themes.map((theme) => ({
      key: theme,
      shown: say(`app.theme.${theme}`),
      now: theme === settings.theme,
      onTap: () => change({ theme }),
    })),
  ];
  return <Tiles title={say('runs.speech')} tiles={tiles} onBack={onBack} />;
}
