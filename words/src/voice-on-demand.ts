import type { Language } from './language.ts';
import type { Catalogue } from './messages/en.ts';
import { speak, type Voice } from './speak.ts';
import type { UnitSystem } from './units.ts';

interface Source {
  /** What the list of lines says. */
  readonly first: () => Promise<Partial<Catalogue>>;
  readonly whole: () => Promise<Catalogue>;
}

const sources: Readonly<Record<Language, Source>> = {
  en: {
    first: async () => (await import('./messages/first-en.ts')).firstEn,
    whole: async () => (await import('./messages/en.ts')).en,
  },
  de: {
    first: async () => (await import('./messages/first-de.ts')).firstDe,
    whole: async () => (await import('./messages/de.ts')).de,
  },
  es: {
    first: async () => (await import('./messages/first-es.ts')).firstEs,
    whole: async () => (await import('./messages/es.ts')).es,
  },
};

const fetched = new Map<Language, Partial<Catalogue>>();

/** Fetches what the list of lines says in a language; resolves when `voice` can speak it. */
export async function readyLanguage(language: Language): Promise<void> {
  if (fetched.has(language)) return;
  const first = await sources[language].first();
  if (!fetched.has(language)) fetched.set(language, first);
}

/** Fetches all sentences of a language; voices that speak it already know them from then on. */
export async function wholeLanguage(language: Language): Promise<void> {
  fetched.set(language, await sources[language].whole());
}

/** The same for every language that was asked for. */
export async function wholeLanguages(): Promise<void> {
  await Promise.all([...fetched.keys()].map(wholeLanguage));
}

/**
 * The voice for one language and one unit system.
 *
 * @throws Error when nobody waited for `readyLanguage` of it
 */
export function voice(language: Language, units: UnitSystem): Voice {
  const sentences = () => {
    const known = fetched.get(language);
    if (known === undefined)
      throw new Error(`The sentences of "${language}" are not fetched: await readyLanguage first`);
    return known;
  };
  sentences();
  return speak({ language, units, sentences });
}
