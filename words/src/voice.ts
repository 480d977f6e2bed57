import type { Language } from './language.ts';
import { catalogues } from './messages/index.ts';
import { speak, type Voice } from './speak.ts';
import type { UnitSystem } from './units.ts';

export { joined, type Params, type Voice } from './speak.ts';

/** The voice for one language and one unit system. */
export function voice(language: Language, units: UnitSystem): Voice {
  return speak({ language, units, sentences: () => catalogues[language] });
}

/** Resolves when `voice` can say in a language what comes first. Here all is there from the start; a browser fetches it. */
export async function readyLanguage(_language: Language): Promise<void> {}

/** Resolves when every sentence of a language is there; here that is from the start. */
export async function wholeLanguage(_language: Language): Promise<void> {}

/** The same for every language that `readyLanguage` was asked for. */
export async function wholeLanguages(): Promise<void> {}
