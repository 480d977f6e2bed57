export const cardEn = {
  'card.title': 'Splice card',
} as const;
