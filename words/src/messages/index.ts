import type { Language } from '../language.ts';
import { de } from './de.ts';
import { type Catalogue, en } from './en.ts';
import { es } from './es.ts';

export type { MessageKey } from './en.ts';

/**
 * All sentences by language. A new area of sentences is added to `en.ts`, `de.ts` and `es.ts`, or to
 * `first-en.ts` and its like when the list of lines says some of them.
 */
export const catalogues: Readonly<Record<Language, Catalogue>> = { en, de, es };
