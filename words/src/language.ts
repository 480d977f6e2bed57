/** Languages the product speaks. */
export const languages = ['en', 'de', 'es'] as const;
export type Language = (typeof languages)[number];

/** True for a language the product speaks; narrows what a person or a browser asked for. */
export function isLanguage(text: string): text is Language {
  return languages.some((language) => language === text);
}
