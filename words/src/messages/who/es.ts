import type { whoEn } from './en.ts';

export const whoEs: Readonly<Record<keyof typeof whoEn, string>> = {
  'who.title': '¿Quién trabaja aquí?',
  'who.nobody': '¿Quién trabaja?',
  'who.none': 'Aún no hay distintivos. Un distintivo es una figura y una palabra, nunca un nombre.',
};
