import { createContext, type ReactNode, useContext, useEffect, useMemo, useState } from 'react';
import { colourBrowserBar } from './browser-bar.ts';
import { loadSettings, type Settings, settingsFor, storeSettings } from './settings.ts';

interface SettingsChoice {
  readonly settings: Settings;
  readonly change: (chosen: Partial<Settings>) => void;
}

const SettingsContext = createContext<SettingsChoice>({ settings: settingsFor([]), change: () => undefined });

/** Holds the settings of this device, keeps each change, and puts the theme on the page. */
export function SettingsProvider({ children }: { readonly children: ReactNode }) {
  const [settings, setSettings] = useState(loadSettings);
  useEffect(() => {
    storeSettings(settings);
    document.documentElement.dataset['theme'] = settings.theme;
    colourBrowserBar(settings.theme);
  }, [settings]);
  const choice = useMemo(
    () => ({ settings, change: (chosen: Partial<Settings>) => setSettings((now) => ({ ...now, ...chosen })) }),
    [settings],
  );
  return <SettingsContext value={choice}>{children}</SettingsContext>;
}

/** The settings and the way to change them. */
export function useSettings(): SettingsChoice {
  return useContext(SettingsContext);
}
