import { isLanguage, type Language, type UnitSystem, unitSystems } from '@loopwright/words';

// A reader who landed in a foreign language must recognise his own, so these are never translated.
export const languageNames: Readonly<Record<Language, string>> = { en: 'English', de: 'Deutsch', es: 'Español' };

export const themes = ['system', 'day', 'night'] as const;
export type Theme = (typeof themes)[number];

/** What a reader chose on this device. */
export interface Settings {
  readonly language: Language;
  readonly units: UnitSystem;
  readonly theme: Theme;
  /** Asked once; absent until somebody answers. */
  readonly people?: 1 | 2;
  /** The press chosen by hand; empty means the first whose check is in date. */
  readonly press: string;
  /** In a press run one tap a step, or one a group of steps for somebody who knows the work; absent: a step. */
  readonly pace?: 'steps' | 'groups';
}

const key = 'loopwright.settings';

/** Settings before anyone chose: the browser's language, inches only where the browser is set to US English. */
export function settingsFor(browserLanguages: readonly string[]): Settings {
  const spoken = browserLanguages.map((tag) => tag.slice(0, 2).toLowerCase()).find(isLanguage);
  const units = browserLanguages[0]?.toLowerCase() === 'en-us' ? 'us' : 'metric';
  return { language: spoken ?? 'en', units, theme: 'system', press: '' };
}

/** Reads stored settings; whatever is not one of the choices is left at its default. */
export function parseSettings(stored: string | null, fallback: Settings): Settings {
  const read = readObject(stored);
  const { language, units, theme, people, press, pace } = read;
  return {
    language: typeof language === 'string' && isLanguage(language) ? language : fallback.language,
    units: unitSystems.find((system) => system === units) ?? fallback.units,
    theme: themes.find((name) => name === theme) ?? fallback.theme,
    ...(people === 1 || people === 2 ? { people } : {}),
    press: typeof press === 'string' ? press : fallback.press,
    ...(pace === 'steps' || pace === 'groups' ? { pace } : {}),
  };
}

function readObject(stored: string | null): Readonly<Record<string, unknown>> {
  if (stored === null) return {};
  try {
    const value: unknown = JSON.parse(stored);
    return typeof value === 'object' && value !== null ? { ...value } : {};
  } catch {
    return {};
  }
}

/** The settings of this device. A browser that forbids storage gets the defaults. */
export function loadSettings(): Settings {
  const fallback = settingsFor(navigator.languages);
  try {
    return parseSettings(localStorage.getItem(key), fallback);
  } catch {
    return fallback;
  }
}

/** Keeps the settings; where storage is forbidden they last until the page is closed. */
export function storeSettings(settings: Settings): void {
  try {
    localStorage.setItem(key, JSON.stringify(settings));
  } catch {
    return;
  }
}
