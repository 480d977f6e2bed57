import type { Language } from './language.ts';

// Own names, because the platform's abbreviations change from one release to the next.
const months: Readonly<Record<Language, readonly string[]>> = {
  en: ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'],
  de: ['Jan.', 'Feb.', 'März', 'April', 'Mai', 'Juni', 'Juli', 'Aug.', 'Sept.', 'Okt.', 'Nov.', 'Dez.'],
  es: ['ene', 'feb', 'mar', 'abr', 'may', 'jun', 'jul', 'ago', 'sep', 'oct', 'nov', 'dic'],
};

/** A calendar day in words no two countries read differently: `2 Mar 2026`, `2. März 2026`, `2 mar 2026`. */
export function dayText(iso: string, language: Language): string {
  const [, year, month, day] = /^(\d{4})-(\d{2})-(\d{2})/.exec(iso) ?? [];
  const name = months[language][Number(month) - 1];
  if (name === undefined) return iso;
  return `${Number(day)}${language === 'de' ? '.' : ''}\u00a0${name}\u00a0${year}`;
}

/** A moment in UTC, said as such: `25 Nov 2026, 02:04 UTC`. */
export function momentText(iso: string, language: Language): string {
  const clock = /T(\d{2}:\d{2})(?::\d{2}(?:\.\d+)?)?Z$/.exec(iso)?.[1];
  return clock === undefined ? dayText(iso, language) : `${dayText(iso, language)}, ${clock}\u00a0UTC`;
}
