import type { placesEn } from './en.ts';

export const placesEs: Readonly<Record<keyof typeof placesEn, string>> = {
  'card.title': 'Ficha de empalme',
  'card.revolutions': 'La correa hizo',
  'card.cut.endless': 'Sin fin, sin tensión',
  'stores.title': 'Existencias',
  'stores.new.badges': 'Anotar un distintivo',
};
