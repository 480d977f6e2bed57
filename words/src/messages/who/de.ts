import type { whoEn } from './en.ts';

export const whoDe: Readonly<Record<keyof typeof whoEn, string>> = {
  'who.title': 'Wer arbeitet hier?',
  'who.nobody': 'Wer arbeitet?',
  'who.none': 'Noch keine Abzeichen. Ein Abzeichen ist eine Form und ein Wort, nie ein Name.',
};
