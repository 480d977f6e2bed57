import type { cardEn } from './en.ts';

export const cardDe: Readonly<Record<keyof typeof cardEn, string>> = {
  'card.title': 'Verbindungskarte',
};
