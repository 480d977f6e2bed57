import type { Language } from './language.ts';
import type { Catalogue } from './messages/en.ts';
import { speak, type Voice } from './speak.ts';
import type { UnitSystem } from './units.ts';

const sources: Readonly<Record<Language, () => Promise<Catalogue>>> = {
  en: async () => (await import('./messages/en.ts')).en,
  de: async () => (await import('./messages/de.ts')).de,
  es: async () => (await import('./messages/es.ts')).es,
};

const fetched = new Map<Language, Catalogue>();

/** Fetches the sentences of a language; resolves when `voice` can speak it. */
export async function readyLanguage(language: Language): Promise<void> {
  if (!fetched.has(language)) fetched.set(language, await sources[language]());
}

/**
 * The voice for one language and one unit system.
 *
 * @throws Error when nobody waited for `readyLanguage` of it
 */
export function voice(language: Language, units: UnitSystem): Voice {
  const catalogue = fetched.get(language);
  if (catalogue === undefined)
    throw new Error(`The sentences of "${language}" are not fetched: await readyLanguage first`);
  return speak({ language, units, catalogue });
}
