import type { cardEn } from './en.ts';

export const cardEs: Readonly<Record<keyof typeof cardEn, string>> = {
  'card.title': 'Ficha de empalme',
};
