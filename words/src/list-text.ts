import type { Language } from './language.ts';

const and: Readonly<Record<Language, string>> = { en: 'and', de: 'und', es: 'y' };

/** Items as a person lists them: `die, template and press`. */
export function listText(items: readonly string[], language: Language): string {
  const last = items.at(-1);
  if (last === undefined) return '';
  if (items.length === 1) return last;
  return `${items.slice(0, -1).join(', ')} ${joint(last, language)} ${last}`;
}

// Spanish says "e" before a word that sounds with i: "troqueles e indicadores".
function joint(next: string, language: Language): string {
  return language === 'es' && /^h?i(?![ae])/i.test(next) ? 'e' : and[language];
}
