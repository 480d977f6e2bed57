import type { Language } from './language.ts';
import { catalogues } from './messages/index.ts';
import { speak, type Voice } from './speak.ts';
import type { UnitSystem } from './units.ts';

export { joined, type Params, type Voice } from './speak.ts';

/** The voice for one language and one unit system. */
export function voice(language: Language, units: UnitSystem): Voice {
  return speak({ language, units, catalogue: catalogues[language] });
}

/** Resolves when `voice` can speak a language. Here every language is there from the start; a browser fetches it. */
export async function readyLanguage(_language: Language): Promise<void> {}
